package sawstead.export.build;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import sawstead.check.Report;
import sawstead.export.Draft;
import sawstead.export.FileName;
import sawstead.export.stl.StlForm;
import sawstead.export.stl.StlWriter;
import sawstead.solid.Body;
import sawstead.station.Part;

/**
 * {@code stl/<id>.stl}: each panel flat, each envelope, piece of hardware and guest of a motion, in
 * its local frame; {@code stl/station.stl}: every body at its place, without the room.
 */
final class StlExporter implements Exporter {
  private static final FileName ASSEMBLED = FileName.parse("stl/station.stl");

  private final StlWriter writer;

  StlExporter(StlForm form) {
    writer = StlWriter.of(form);
  }

  @Override
  public void write(Report report, Draft folder) throws IOException {
    List<Part> parts = new ArrayList<>(report.station().parts().values());
    report.passages().forEach(p -> parts.addAll(p.mover().setting().guests()));
    for (Part part : parts) {
      try (OutputStream out = folder.open(FileName.of("stl", part.id(), "stl"))) {
        writer.write(part.id(), part.body().solid().mesh(), out);
      }
    }
    List<Body> bodies =
        report.station().parts().values().stream()
            .filter(p -> !p.isRoom())
            .map(Part::body)
            .toList();
    try (OutputStream out = folder.open(ASSEMBLED)) {
      writer.writeAssembled(report.station().brief().slug(), bodies, out);
    }
  }
}
