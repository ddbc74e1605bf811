package sawstead.layout.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.layout.CutPlanWriter;
import sawstead.layout.shop.Breakdown;
import sawstead.measure.Unit;

/** Writes every file of a breakdown. */
public final class BreakdownFiles {
  private BreakdownFiles() {}

  /** Where files go. */
  @FunctionalInterface
  public interface Folder {
    /** Opens a new file of that name; the caller closes it. */
    OutputStream open(String name) throws IOException;
  }

  /** Content of one file. */
  @FunctionalInterface
  private interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** Writes all files. */
  public static void write(Breakdown breakdown, Folder folder) throws IOException {
    boolean inches = breakdown.station().brief().units() == Unit.INCH;
    SheetDxfWriter dxf = new SheetDxfWriter(inches ? DxfUnit.INCH : DxfUnit.MM);
    file(folder, "cut-list.csv", out -> ListWriter.cutList(breakdown, out));
    file(folder, "hardware.csv", out -> ListWriter.hardware(breakdown, out));
    file(folder, "cost.csv", out -> ListWriter.cost(breakdown, out));
    file(
        folder,
        "breakdown.json",
        out -> out.write(CutPlanWriter.json(breakdown.plan()).getBytes(StandardCharsets.UTF_8)));
    for (int number = 1; number <= breakdown.plan().sheets().size(); number++) {
      SheetScene scene = SheetScene.of(breakdown, number);
      file(folder, "sheet-" + number + ".svg", out -> SheetSvgWriter.write(scene, out));
      file(folder, "sheet-" + number + ".dxf", out -> dxf.write(scene, out));
    }
    file(folder, "shop-sheet.pdf", out -> ShopSheetWriter.sheet(breakdown, out));
    file(folder, "sheet-book.pdf", out -> ShopSheetWriter.book(breakdown, out));
  }

  private static void file(Folder folder, String name, Content content) throws IOException {
    try (OutputStream out = folder.open(name)) {
      content.writeTo(out);
    }
  }
}
