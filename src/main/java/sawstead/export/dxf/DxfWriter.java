package sawstead.export.dxf;

import java.io.IOException;
import java.io.OutputStream;
import sawstead.drawing.dxf.DxfFile;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.drawing.dxf.DxfVersion;
import sawstead.solid.Panel;

/**
 * Writes one panel as a flat drawing; see the package's description for what is on it.
 *
 * <p>Coordinates are the panel's own u and v, in the unit chosen, to 12 decimals. Streams are
 * flushed, not closed.
 */
public final class DxfWriter {
  private final DxfVersion version;
  private final DxfUnit unit;

  private DxfWriter(DxfVersion version, DxfUnit unit) {
    this.version = version;
    this.unit = unit;
  }

  /** A writer of the version that nearly everything reads, {@link DxfVersion#R2000}. */
  public static DxfWriter of(DxfUnit unit) {
    return new DxfWriter(DxfVersion.R2000, unit);
  }

  /** The same writer for another version. */
  public DxfWriter in(DxfVersion other) {
    return new DxfWriter(other, unit);
  }

  /**
   * Writes a panel.
   *
   * @param id what the label says first; characters that the version lacks are written in its codes
   * @param panel in mm
   */
  public void write(String id, Panel panel, OutputStream out) throws IOException {
    DxfFile.write(PanelDrawing.of(id, panel, version, unit), version, unit, out);
  }
}
