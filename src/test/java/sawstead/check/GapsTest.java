package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.intake.BriefReader;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.unit.Units;

class GapsTest {
  private static final double CONTACT = 0.05;

  private static Part box(PartKind kind, String id, double x, double size) {
    Body body = new Body(id, Solids.box(size, size, size), Placement.at(new Vec(x, 0, 0)));
    return new Part(kind, Optional.empty(), 1, body);
  }

  @Test
  void of_anEnvelopeBetweenTwoBodies_isTheAirOnBothSides() {
    List<Part> parts =
        List.of(
            box(PartKind.PANEL, "left", -130, 100),
            box(PartKind.ENVELOPE, "middle", 0, 100),
            box(PartKind.PANEL, "right", 112, 100));
    Gap gap = Gaps.of(parts, CONTACT).get(0);
    assertEquals("middle", gap.id());
    assertEquals(30, gap.way(Way.LEFT).orElseThrow().way(), 1e-9);
    assertEquals("left", gap.way(Way.LEFT).orElseThrow().to());
    assertEquals(12, gap.way(Way.RIGHT).orElseThrow().way(), 1e-9);
    assertTrue(gap.way(Way.UP).isEmpty());
  }

  @Test
  void of_whatIsFurtherThanTheReach_isNone() {
    List<Part> parts =
        List.of(
            box(PartKind.ENVELOPE, "a", 0, 100),
            box(PartKind.PANEL, "near", 599, 100),
            box(PartKind.PANEL, "far", -600.1, 100));
    Gap gap = Gaps.of(parts, CONTACT).get(0);
    assertEquals(499, gap.way(Way.RIGHT).orElseThrow().way(), 1e-9);
    assertEquals(Optional.of("near"), gap.way(Way.RIGHT).map(Gap.Free::to));
    assertTrue(gap.way(Way.LEFT).isEmpty(), gap.toString());
  }

  /** The loophole: enlarged by the gap plus 0.06 mm it clashes, plus 0.04 mm it does not. */
  @ParameterizedTest
  @ValueSource(strings = {"first-brief", "lantern-alley", "quay-shed", "granary-loft"})
  void of_aDemo_isWhereAnEnlargedBoxBeginsToClash(String name) throws Exception {
    List<Part> parts =
        List.copyOf(
            Units.station(BriefReader.read(Path.of("models/" + name + ".yaml"))).parts().values());
    int tried = 0;
    for (Gap gap : Gaps.of(parts, CONTACT)) {
      Body body = body(parts, gap.id());
      Box box = body.box();
      double volume = box.size().x() * box.size().y() * box.size().z();
      if (Math.abs(body.volume() - volume) > 1e-6 * volume) {
        continue;
      }
      for (Way way : Way.values()) {
        if (gap.way(way).isPresent()) {
          tried++;
          Gap.Free free = gap.way(way).get();
          String label = gap.id() + " " + way.key() + " " + free;
          List<String> before = clashing(parts, gap.id(), grown(box, way, 0));
          List<String> less = clashing(parts, gap.id(), grown(box, way, free.way() + 0.04));
          List<String> more = clashing(parts, gap.id(), grown(box, way, free.way() + 0.06));
          assertEquals(before, less, label);
          assertTrue(more.contains(free.to()), label + " meets " + more);
        }
      }
    }
    assertTrue(tried >= 10, "only " + tried + " ways");
  }

  private static Body body(List<Part> parts, String id) {
    return parts.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow().body();
  }

  private static Box grown(Box box, Way way, double by) {
    Vec step = way.direction().scale(by);
    Box moved = new Box(box.low().plus(step), box.high().plus(step));
    return box.union(moved);
  }

  private static List<String> clashing(List<Part> parts, String id, Box box) {
    Vec size = box.size();
    Body grown = new Body(id, Solids.box(size.x(), size.y(), size.z()), Placement.at(box.low()));
    List<String> met = new ArrayList<>();
    for (Part part : parts) {
      if (!part.id().equals(id)
          && Overlap.between(grown, part.body()).filter(o -> o.depth() > CONTACT).isPresent()) {
        met.add(part.id());
      }
    }
    return met;
  }
}
