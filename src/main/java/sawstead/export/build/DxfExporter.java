package sawstead.export.build;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sawstead.check.Report;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.export.Draft;
import sawstead.export.FileName;
import sawstead.export.dxf.DxfWriter;
import sawstead.measure.Unit;
import sawstead.solid.Face;
import sawstead.solid.Mark;
import sawstead.solid.Panel;
import sawstead.solid.Vec;
import sawstead.station.Entry;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Station;

/** {@code dxf/<id>.dxf}: each panel flat in its own frame, in the unit of the brief. */
final class DxfExporter implements Exporter {

  /** Half a cross, mm. */
  private static final double ARM = 3;

  @Override
  public void write(Report report, Draft folder) throws IOException {
    boolean inches = report.station().brief().units() == Unit.INCH;
    DxfWriter writer = DxfWriter.of(inches ? DxfUnit.INCH : DxfUnit.MM);
    for (Part part : report.station().parts().values()) {
      if (part.kind() == PartKind.PANEL && part.body().solid() instanceof Panel panel) {
        try (OutputStream out = folder.open(FileName.of("dxf", part.id(), "dxf"))) {
          writer.write(part.id(), marked(report.station(), part, panel), out);
        }
      }
    }
  }

  /** The panel with a pencil cross wherever a screw or brad goes in square to one of its faces. */
  private static Panel marked(Station station, Part part, Panel panel) {
    Map<Face, List<Mark.Stroke>> crosses = new EnumMap<>(Face.class);
    for (Entry entry : Entry.of(station, part)) {
      Vec at = entry.at();
      List<Mark.Stroke> strokes = crosses.computeIfAbsent(entry.face(), face -> new ArrayList<>());
      strokes.add(new Mark.Stroke(at.x() - ARM, at.y(), at.x() + ARM, at.y()));
      strokes.add(new Mark.Stroke(at.x(), at.y() - ARM, at.x(), at.y() + ARM));
    }
    Panel marked = panel;
    for (Map.Entry<Face, List<Mark.Stroke>> face : crosses.entrySet()) {
      marked = marked.with(new Mark("", face.getKey(), face.getValue()));
    }
    return marked;
  }
}
