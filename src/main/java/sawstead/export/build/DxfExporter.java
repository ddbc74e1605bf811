package sawstead.export.build;

import java.io.IOException;
import java.io.OutputStream;
import sawstead.check.Report;
import sawstead.export.Draft;
import sawstead.export.FileName;
import sawstead.export.dxf.DxfUnit;
import sawstead.export.dxf.DxfVersion;
import sawstead.export.dxf.DxfWriter;
import sawstead.joinery.Board;
import sawstead.measure.Unit;

/** {@code dxf/<id>.dxf}: each panel flat, in the brief's unit. */
final class DxfExporter implements Exporter {

  @Override
  public void write(Report report, Draft folder) throws IOException {
    boolean inch = report.station().brief().units() == Unit.INCH;
    DxfWriter writer = DxfWriter.of(inch ? DxfUnit.INCH : DxfUnit.MM).in(DxfVersion.R2000);
    for (Board board : report.station().boards().values()) {
      try (OutputStream out = folder.open(FileName.of("dxf", board.id(), "dxf"))) {
        writer.write(board.id(), board.panel(), out);
      }
    }
  }
}
