package sawstead.station.unit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sawstead.brief.Brief;
import sawstead.brief.CutFace;
import sawstead.brief.OwnParts;
import sawstead.brief.OwnUnit;
import sawstead.brief.OwnUnitException;
import sawstead.brief.Place;
import sawstead.joinery.JoineryException;
import sawstead.joinery.Joint;
import sawstead.joinery.PocketJoint;
import sawstead.solid.Box;
import sawstead.solid.Face;
import sawstead.solid.Motion;
import sawstead.solid.Slide;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Contact;
import sawstead.station.DesignException;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.PartKind;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Unit;

/** A unit of the user's own, drawn by its unit file from the dimensions of the station. */
final class DrawnUnit implements Unit {

  /** How far beside what turns a hinge's pin may be, mm; common practice, no source. */
  private static final double HINGE = 100;

  private final Brief brief;
  private final Optional<Site> site;
  private final int number;
  private final OwnUnit unit;
  private OwnParts parts;

  DrawnUnit(Brief brief, Optional<Site> site, int number) {
    this.brief = brief;
    this.site = site;
    this.number = number;
    this.unit = brief.own().get(number);
  }

  /** One for each use of a unit file, in the order of the brief. */
  static List<Unit> of(Brief brief, Optional<Site> site) {
    return IntStream.range(0, brief.own().size())
        .<Unit>mapToObj(i -> new DrawnUnit(brief, site, i))
        .toList();
  }

  @Override
  public void place(Draft draft) {
    try {
      Map<String, Object> names = StationNames.of(brief, site, draft);
      parts = unit.design().drawn(names);
    } catch (OwnUnitException broken) {
      throw new DesignException(path(), broken.getMessage(), broken.remedy());
    }
    parts.panels().forEach(p -> draft.board(ExtraUnit.board(brief, p, path())));
    for (OwnParts.OwnBody body : parts.bodies()) {
      Vec low = vec(body.at());
      draft.box(
          body.bought() ? PartKind.HARDWARE : PartKind.ENVELOPE,
          body.id(),
          new Box(low, low.plus(vec(body.size()))),
          body.mass());
    }
    parts.motions().forEach(m -> draft.mover(mover(draft, m)));
    for (List<String> pair : parts.touches()) {
      draft.touch(known(draft, pair.get(0)), known(draft, pair.get(1)));
    }
    steps(draft);
    for (OwnParts.OwnRemark remark : parts.remarks()) {
      draft.remark(
          remark.stops() ? Remark.Weight.STOP : Remark.Weight.MIND,
          "own-demand",
          parts.panels().stream().map(p -> p.id()).limit(1).toList(),
          remark.says(),
          remark.remedy());
    }
  }

  private void steps(Draft draft) {
    if (parts.steps().isEmpty()) {
      List<String> all =
          Stream.concat(
                  parts.panels().stream().map(p -> p.id()),
                  parts.bodies().stream().map(b -> b.id()))
              .toList();
      draft.step(all, "as its joints say", new Vec(0, 0, -1), List.of());
    }
    for (OwnParts.OwnStep step : parts.steps()) {
      step.places().forEach(id -> known(draft, id));
      draft.step(step.places(), step.fixing(), vec(step.direction()).unit(), step.cautions());
    }
  }

  @Override
  public void join(Draft draft) {
    for (OwnParts.OwnJoint joint : parts.joints()) {
      for (String id : List.of(joint.from(), joint.into())) {
        if (!draft.hasBoard(id)) {
          throw new DesignException(
              path(),
              unit.id() + " (" + unit.file() + "): there is no panel " + id + " to join",
              "write the id of a panel, as the report lists them");
        }
      }
      try {
        draft.join(joint(joint), joint.from(), joint.into());
      } catch (JoineryException broken) {
        throw new DesignException(
            path(),
            unit.id()
                + " ("
                + unit.file()
                + "): "
                + joint.from()
                + " into "
                + joint.into()
                + ": "
                + broken.getMessage(),
            "see that they touch, or choose another joint");
      }
    }
  }

  private static Joint joint(OwnParts.OwnJoint joint) {
    return switch (joint.kind()) {
      case SCREW -> Joints.screwed(joint.removable());
      case POCKET ->
          new PocketJoint(
              joint.face() == CutFace.FRONT ? Face.FRONT : Face.BACK, !joint.removable());
      default -> new Joints(joint.kind()).corner(true);
    };
  }

  private Mover mover(Draft draft, OwnParts.OwnMotion motion) {
    motion.moves().forEach(id -> known(draft, id));
    try {
      Vec direction = vec(motion.direction());
      Motion way =
          motion.at().isEmpty()
              ? new Slide(direction, motion.from(), motion.to(), 0)
              : new Turn(vec(motion.at().get()), direction, motion.from(), motion.to(), 0);
      if (motion.at().isPresent()) {
        onIt(draft, motion);
      }
      List<Contact> contacts =
          motion.touches().stream()
              .flatMap(t -> motion.moves().stream().map(m -> new Contact(m, known(draft, t))))
              .toList();
      return new Mover(motion.id(), motion.moves(), way, contacts);
    } catch (IllegalArgumentException broken) {
      throw new DesignException(
          path(), motion.id() + ": " + broken.getMessage(), "correct it in " + unit.file());
    }
  }

  /** A hinge sits at what it moves; anything further off is a slip of the pen. */
  private void onIt(Draft draft, OwnParts.OwnMotion motion) {
    Vec axis = vec(motion.at().orElseThrow());
    Vec direction = vec(motion.direction());
    boolean near =
        motion.moves().stream()
            .map(draft::boxOf)
            .anyMatch(box -> box.grown(HINGE).isMetBy(axis, direction));
    if (!near) {
      throw new DesignException(
          path(),
          motion.id()
              + ": its axis passes more than "
              + draft.length(HINGE)
              + " beside everything that turns about it: no hinge carries that",
          "put `at` where the pin is, or name what reaches there in `moves`, in " + unit.file());
    }
  }

  private String known(Draft draft, String id) {
    if (!draft.hasBoard(id) && !draft.hasBody(id)) {
      throw new DesignException(
          path(),
          unit.id() + " (" + unit.file() + "): there is no " + id,
          "write the id of a panel or a body, as the report lists them");
    }
    return id;
  }

  private String path() {
    return "own[" + number + "]";
  }

  private static Vec vec(Place place) {
    return new Vec(place.x(), place.y(), place.z());
  }
}
