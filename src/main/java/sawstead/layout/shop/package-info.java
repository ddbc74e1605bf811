/**
 * From a station to what is carried into the garage: which panel comes from which sheet by which
 * cut, what to buy, what it costs.
 *
 * <p><b>Enters:</b> a {@link sawstead.check.Report}. <b>Leaves:</b> a {@link
 * sawstead.layout.shop.Breakdown}, from which every list and drawing is written. <b>Guaranteed:</b>
 * every panel of the station is cut exactly once, at the length of its outline along the grain and
 * its width across it. <b>Knows nothing of</b> file formats.
 *
 * <p>{@code StationRequest} asks, {@link sawstead.layout.CutPlanner} plans, {@link
 * sawstead.layout.shop.ShopStep} names every piece as it comes off, {@code CutList}, {@code
 * HardwareList} and {@code CostList} count.
 */
package sawstead.layout.shop;
