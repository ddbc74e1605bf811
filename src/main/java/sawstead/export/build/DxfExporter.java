package sawstead.export.build;

import java.io.IOException;
import java.io.OutputStream;
import sawstead.check.Report;
import sawstead.export.Draft;
import sawstead.export.FileName;
import sawstead.export.dxf.DxfUnit;
import sawstead.export.dxf.DxfWriter;
import sawstead.measure.Unit;
import sawstead.solid.Panel;
import sawstead.station.Part;
import sawstead.station.PartKind;

/** {@code dxf/<id>.dxf}: each panel flat in its own frame, in the unit of the brief. */
final class DxfExporter implements Exporter {
  @Override
  public void write(Report report, Draft folder) throws IOException {
    boolean inches = report.station().brief().units() == Unit.INCH;
    DxfWriter writer = DxfWriter.of(inches ? DxfUnit.INCH : DxfUnit.MM);
    for (Part part : report.station().parts().values()) {
      if (part.kind() == PartKind.PANEL && part.body().solid() instanceof Panel panel) {
        try (OutputStream out = folder.open(FileName.of("dxf", part.id(), "dxf"))) {
          writer.write(part.id(), panel, out);
        }
      }
    }
  }
}
