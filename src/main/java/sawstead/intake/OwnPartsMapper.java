package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sawstead.brief.CutFace;
import sawstead.brief.ExtraPanel;
import sawstead.brief.JointKind;
import sawstead.brief.OwnParts;
import sawstead.brief.Place;
import sawstead.brief.Point;
import sawstead.brief.Sheet;
import sawstead.measure.Measured;

/** Reads the parts of a unit file once its names have values. */
final class OwnPartsMapper {

  private final OwnFile unit;
  private final Reading reading;
  private final OwnAmounts amounts;
  private final Map<String, Object> known;
  private final Set<String> ids = new HashSet<>();
  private final Set<String> left = new HashSet<>();

  OwnPartsMapper(OwnFile unit, Reading reading, OwnAmounts amounts, Map<String, Object> known) {
    this.unit = unit;
    this.reading = reading;
    this.amounts = amounts;
    this.known = known;
  }

  OwnParts parts() throws OwnAmounts.Refused {
    List<OwnParts.OwnRemark> remarks = remarks();
    List<ExtraPanel> panels = panels();
    List<OwnParts.OwnBody> bodies = bodies();
    return new OwnParts(panels, bodies, joints(), motions(), touches(), steps(), remarks);
  }

  private List<OwnParts.OwnRemark> remarks() throws OwnAmounts.Refused {
    List<OwnParts.OwnRemark> remarks = new ArrayList<>();
    for (Section demand : present("demands")) {
      if (!condition(demand, "that")) {
        remarks.add(
            new OwnParts.OwnRemark(
                demand.text("severity").filter("mind"::equals).isEmpty(),
                unit.id() + ": " + demand.text("says").orElse(""),
                demand.text("remedy").orElse("")));
      }
    }
    return remarks;
  }

  private List<ExtraPanel> panels() throws OwnAmounts.Refused {
    List<ExtraPanel> panels = new ArrayList<>();
    for (Section panel : present("panels")) {
      Sheet sheet = sheet(panel);
      Section place = panel.section("place");
      panels.add(
          new ExtraPanel(
              fresh(panel),
              sheet.name(),
              outline(panel),
              new CutMapper(Optional.of(sheet.thickness())).cuts(panel),
              ExtrasMapper.turns(place),
              ExtrasMapper.at(place),
              List.of()));
    }
    return panels;
  }

  private Sheet sheet(Section panel) {
    Optional<String> role = panel.text("sheet");
    Sheet first = unit.roles().values().iterator().next();
    if (role.isEmpty()) {
      return unit.roles().getOrDefault(unit.firstRole(), first);
    }
    if (!unit.roles().containsKey(role.get())) {
      panel.problem(
          "sheet",
          "there is no sheet role `" + role.get() + "`",
          "write one of " + String.join(", ", unit.roles().keySet().stream().sorted().toList()));
    }
    return unit.roles().getOrDefault(role.get(), first);
  }

  private static List<Point> outline(Section panel) {
    if (panel.has("size") == panel.has("outline")) {
      panel.problem("the panel needs either a size or an outline", "write `size: [length, width]`");
      return List.of();
    }
    if (panel.has("outline")) {
      return OutlineReader.outline(panel);
    }
    List<Measured> size = panel.row("size", 2);
    double length = size.get(0).nominal();
    double width = size.get(1).nominal();
    if (!(length > 0 && width > 0)) {
      panel.problem(
          "size",
          "the panel would be "
              + panel.reading().inWords(length)
              + " by "
              + panel.reading().inWords(width),
          "change the parameters so that something is left of it");
    }
    return List.of(
        new Point(0, 0), new Point(length, 0), new Point(length, width), new Point(0, width));
  }

  private List<OwnParts.OwnBody> bodies() throws OwnAmounts.Refused {
    List<OwnParts.OwnBody> bodies = new ArrayList<>();
    for (Section body : present("bodies")) {
      bodies.add(
          new OwnParts.OwnBody(
              fresh(body),
              body.text("kind").filter("hardware"::equals).isPresent(),
              place(body, "at"),
              place(body, "size"),
              body.measure("mass").nominal()));
    }
    return bodies;
  }

  private List<OwnParts.OwnJoint> joints() throws OwnAmounts.Refused {
    List<OwnParts.OwnJoint> joints = new ArrayList<>();
    for (Section joint : present("joints")) {
      String from = joint.text("from").orElse("");
      String into = joint.text("into").orElse("");
      if (left.contains(from) || left.contains(into)) {
        continue;
      }
      JointKind kind = joint.word("joint", JointKind.class);
      boolean screwed = kind == JointKind.SCREW || kind == JointKind.POCKET;
      if (joint.flag("removable") && !screwed) {
        joint.problem(
            "removable",
            "a " + kind.word() + " joint is glued, so it cannot come off again",
            "join it with screws or pockets, or leave `removable` out");
      }
      joints.add(
          new OwnParts.OwnJoint(
              kind,
              whole(joint, "from", from),
              whole(joint, "into", into),
              joint.flag("removable"),
              joint.word("face", CutFace.class)));
    }
    return joints;
  }

  private List<OwnParts.OwnMotion> motions() throws OwnAmounts.Refused {
    List<OwnParts.OwnMotion> motions = new ArrayList<>();
    for (Section motion : present("motions")) {
      if (motion.has("slide") == motion.has("turn")) {
        motion.problem("a motion is either a slide or a turn", "write one of the two");
        continue;
      }
      boolean slides = motion.has("slide");
      Section way = motion.section(slides ? "slide" : "turn");
      double from = way.plain("from");
      double to = way.plain("to");
      Place direction = place(way, "direction");
      if (from == to) {
        way.problem("to", "the motion ends where it begins", "write another end");
      }
      if (direction.x() == 0 && direction.y() == 0 && direction.z() == 0) {
        way.problem("direction", "the direction has no length", "write one such as [0, -1, 0]");
        continue;
      }
      motions.add(
          new OwnParts.OwnMotion(
              unit.id() + "/" + motion.text("id").orElse(""),
              wholes(motion, "moves"),
              slides ? Optional.empty() : Optional.of(place(way, "at")),
              direction,
              from,
              to,
              wholes(motion, "touches")));
    }
    return motions;
  }

  private List<List<String>> touches() {
    List<List<String>> touches = new ArrayList<>();
    Section root = Section.of(reading, UnitSchema.FILE.expanded(), "", unit.tree());
    for (Section.Entry pair : root.entries("touches")) {
      List<String> two = new ArrayList<>();
      if (pair.item() instanceof Item.Listing list) {
        for (Item one : list.items()) {
          String name = ((Item.Scalar) one).text();
          if (!left.contains(name)) {
            two.add(whole(root, "touches", name));
          }
        }
      }
      if (two.size() == 2) {
        touches.add(two);
      }
    }
    return touches;
  }

  private List<OwnParts.OwnStep> steps() throws OwnAmounts.Refused {
    List<OwnParts.OwnStep> steps = new ArrayList<>();
    for (Section step : present("steps")) {
      List<String> cautions = new ArrayList<>();
      for (Section.Entry caution : step.entries("cautions")) {
        cautions.add(((Item.Scalar) caution.item()).text());
      }
      List<String> places = wholes(step, "places");
      if (!places.isEmpty()) {
        steps.add(
            new OwnParts.OwnStep(
                places, step.text("fixing").orElse(""), place(step, "direction"), cautions));
      }
    }
    return steps;
  }

  /** Those whose condition holds; panels and bodies that are left out are remembered. */
  private List<Section> present(String list) throws OwnAmounts.Refused {
    List<Section> present = new ArrayList<>();
    JsonNode schema = UnitSchema.items(list);
    int number = 0;
    for (Item item : unit.list(list)) {
      String path = list + "[" + number++ + "]";
      Section raw = Section.of(reading, schema, path, item);
      boolean conditional = ((Item.Table) item).members().containsKey("when");
      if (!conditional || condition(raw, "when")) {
        Item settled = amounts.settled(item, schema, path, f -> f.number(known));
        present.add(Section.of(reading, schema, path, settled));
      } else if (!list.equals("joints")) {
        raw.text("id").ifPresent(left::add);
      }
    }
    return present;
  }

  private boolean condition(Section section, String key) throws OwnAmounts.Refused {
    Item item = new Item.Scalar(section.line(), section.text(key).orElse(""), Item.Kind.TEXT);
    return amounts.holds(item, section.pathOf(key), known);
  }

  private String fresh(Section section) {
    String id = section.text("id").orElse("");
    if (!ids.add(id)) {
      section.problem("id", "`" + id + "` is used twice", "give each part a name of its own");
    }
    return unit.id() + "/" + id;
  }

  private List<String> wholes(Section section, String key) {
    List<String> wholes = new ArrayList<>();
    for (Section.Entry entry : section.entries(key)) {
      String name = ((Item.Scalar) entry.item()).text();
      if (!left.contains(name)) {
        wholes.add(whole(section, key, name));
      }
    }
    return wholes;
  }

  /** A name without a slash is of this unit. */
  private String whole(Section section, String key, String name) {
    if (name.contains("/")) {
      return name;
    }
    if (!ids.contains(name)) {
      section.problem(
          key,
          "this unit has no `" + name + "`",
          "write " + Nearest.to(name, ids).orElse("the id of a panel or a body"));
    }
    return unit.id() + "/" + name;
  }

  private static Place place(Section section, String key) {
    List<Measured> row = section.rowOrDefault(key, 3);
    return new Place(row.get(0).nominal(), row.get(1).nominal(), row.get(2).nominal());
  }
}
