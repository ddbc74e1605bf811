/**
 * The files that are carried into the garage.
 *
 * <p><b>Enters:</b> a {@link sawstead.layout.shop.Breakdown}. <b>Leaves:</b> {@code
 * breakdown.json}, {@code cut-list.csv}, {@code hardware.csv}, {@code cost.csv}, {@code
 * shop-sheet.pdf} (the whole job on one page), {@code sheet-book.pdf} (large drawings) and for each
 * sheet {@code sheet-N.svg} and {@code sheet-N.dxf}. <b>Guaranteed:</b> all are written from the
 * one plan; pieces, offcuts and kerfs lie in every drawing where {@link
 * sawstead.layout.sheet.SheetScene} has them, in their true size. <b>Knows nothing of</b> how the
 * plan was found and of where the files will lie.
 *
 * <p>The origin of a sheet is its lower left corner; x runs along its length, which is the grain.
 */
package sawstead.layout.sheet;
