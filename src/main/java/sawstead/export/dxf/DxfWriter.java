package sawstead.export.dxf;

import java.io.IOException;
import java.io.OutputStream;
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
    PanelDrawing drawing = PanelDrawing.of(id, panel, version, unit);
    Handles handles = new Handles();
    Tags body = new Tags(version);
    TablesSection tables = new TablesSection(body, handles);
    tables.write(drawing.layers(), drawing.extents(), unit);
    if (version.isLinked()) {
      new BlocksSection(body, handles).write(tables.modelSpace(), tables.paperSpace());
    }
    new EntitiesSection(body, handles, unit, tables.modelSpace()).write(drawing);
    if (version.isLinked()) {
      new ObjectsSection(body, handles).write();
    }
    // The header comes first in the file but names a handle beyond all others.
    Tags file = new Tags(version);
    new HeaderSection(file).write(drawing.extents(), unit, handles);
    if (version.isLinked()) {
      file.put(0, "SECTION").put(2, "CLASSES").put(0, "ENDSEC");
    }
    file.append(body);
    file.put(0, "EOF");
    out.write(file.toString().getBytes(version.charset()));
    out.flush();
  }
}
