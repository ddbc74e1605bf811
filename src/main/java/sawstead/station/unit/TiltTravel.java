package sawstead.station.unit;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sawstead.brief.Protrusion;
import sawstead.brief.Saw;
import sawstead.brief.Side;
import sawstead.brief.Trunnion;
import sawstead.solid.Box;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.SawPlace;
import sawstead.station.Setting;
import sawstead.station.Unit;

/**
 * The blade tilts, and with it as one whatever swings behind the table, such as a motor, and the
 * hand-wheel with the space that its handle sweeps. The axis runs along y in the plane of the
 * table's top and of the blade, so the blade leans to its side and what is below swings to the
 * other and up.
 *
 * <p>The rest of the saw is put aside: that its own parts pass each other is its maker's affair,
 * and boxes around them would not tell. The trunnion, where it is told, is there only in this
 * motion: upright it is inside the body.
 */
final class TiltTravel implements Unit {

  static final String ID = "saw/tilts";

  private final SawPlace place;

  TiltTravel(SawPlace place) {
    this.place = place;
  }

  @Override
  public void place(Draft draft) {}

  @Override
  public void join(Draft draft) {
    Saw saw = place.saw();
    double degrees = saw.tilt().degrees().nominal();
    if (degrees <= 0) {
      return;
    }
    Set<String> swinging =
        Stream.concat(
                Stream.of("saw/blade", "saw/hand-wheel"),
                saw.behind().stream().filter(Protrusion::swings).map(p -> "saw/" + p.id()))
            .collect(Collectors.toSet());
    List<String> all =
        draft.bodies().stream().filter(p -> p.unit().equals("saw")).map(Part::id).toList();
    // By the right hand about +y, up turns to the right.
    double sense = saw.tilt().side() == Side.RIGHT ? 1 : -1;
    draft.mover(
        new Mover(
            ID,
            all.stream().filter(swinging::contains).toList(),
            new Turn(new Vec(0, 0, place.top()), new Vec(0, sense, 0), 0, degrees, 0),
            List.of(),
            Setting.aside(all.stream().filter(id -> !swinging.contains(id)).toList())
                .with(saw.tilt().trunnion().map(this::trunnion).stream().toList())));
  }

  private Part trunnion(Trunnion trunnion) {
    double table = place.top();
    double under = table - place.saw().table().thickness().nominal();
    Box box = Area.of(trunnion.area()).between(table - trunnion.bottom().nominal(), under);
    return Part.box(PartKind.ENVELOPE, "saw/trunnion", box, 0);
  }
}
