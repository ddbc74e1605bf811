package sawstead.drawing.dxf;

import java.io.IOException;
import java.io.OutputStream;

/** Writes a drawing as one file; coordinates to 12 decimals. Streams are flushed, not closed. */
public final class DxfFile {
  private DxfFile() {}

  /** Writes a drawing in one version and unit. */
  public static void write(DxfDrawing drawing, DxfVersion version, DxfUnit unit, OutputStream out)
      throws IOException {
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
