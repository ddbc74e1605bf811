package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.CircleCut;
import sawstead.brief.Cut;
import sawstead.brief.CutFace;
import sawstead.brief.GrooveCut;
import sawstead.brief.OpeningCut;
import sawstead.brief.Point;
import sawstead.brief.RecessCut;
import sawstead.measure.Measured;

/** Reads a list of {@code cuts}, and refuses cuts that no panel can have. */
final class CutMapper {

  private final Optional<Measured> thickness;

  /**
   * A reader of cuts.
   *
   * @param thickness of the panel, if it is known here
   */
  CutMapper(Optional<Measured> thickness) {
    this.thickness = thickness;
  }

  List<Cut> cuts(Section panel) {
    List<Cut> cuts = new ArrayList<>();
    for (Section cut : panel.sections("cuts")) {
      if (cut.has("circle")) {
        cuts.add(circle(cut.section("circle")));
      }
      if (cut.has("opening")) {
        cuts.add(new OpeningCut(OutlineReader.outline(cut.section("opening"))));
      }
      if (cut.has("groove")) {
        cuts.add(groove(cut.section("groove")));
      }
      if (cut.has("recess")) {
        cuts.add(recess(cut.section("recess")));
      }
    }
    return cuts;
  }

  private Cut circle(Section circle) {
    Optional<Double> depth = circle.plainIfGiven("depth");
    depth.ifPresent(deep -> lessThanThickness(circle, "a blind hole", deep));
    return new CircleCut(point(circle, "at"), circle.plain("diameter"), depth, face(circle));
  }

  private Cut groove(Section groove) {
    double depth = groove.plain("depth");
    lessThanThickness(groove, "a groove", depth);
    Point from = point(groove, "from");
    Point to = point(groove, "to");
    if (from.equals(to) && !groove.isBad("from") && !groove.isBad("to")) {
      groove.problem("to", "the groove ends where it begins", "write two different points");
    }
    return new GrooveCut(
        from,
        to,
        groove.plain("width"),
        depth,
        face(groove),
        groove.text("ends").filter("round"::equals).isPresent());
  }

  private Cut recess(Section recess) {
    double depth = recess.plain("depth");
    lessThanThickness(recess, "a recess", depth);
    return new RecessCut(OutlineReader.outline(recess), depth, face(recess));
  }

  private static CutFace face(Section cut) {
    return cut.word("face", CutFace.class);
  }

  private static Point point(Section cut, String key) {
    List<Measured> row = cut.row(key, 2);
    return new Point(row.get(0).nominal(), row.get(1).nominal());
  }

  private void lessThanThickness(Section cut, String name, double depth) {
    if (thickness.isEmpty() || depth < thickness.get().nominal() || cut.isBad("depth")) {
      return;
    }
    String limit = cut.reading().inWords(thickness.get().nominal());
    cut.problem(
        "depth",
        name
            + " is "
            + cut.reading().inWords(depth)
            + " deep in a panel that is "
            + limit
            + " thick",
        "write less than "
            + limit
            + ", or use an opening or a circle without depth to cut through");
  }
}
