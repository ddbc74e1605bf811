package sawstead.preview.tape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.preview.tape.Captions.Room;

class CaptionsTest {
  private static final double SIGN = 7;

  @Test
  void wideTape_hasTheThumbLeft_andTheWayRight() {
    Captions captions = Captions.of(800, OptionalDouble.of(300), 40, 40, 250);
    assertEquals(6, captions.reads().orElseThrow().from());
    assertEquals(794, captions.says().orElseThrow().to());
    assertEquals(250, captions.says().orElseThrow().width(), 1e-9);
  }

  @Test
  void signNearTheRight_putsTheWayLeftOfIt_whole() {
    Captions captions = Captions.of(500, OptionalDouble.of(450), 40, 40, 250);
    assertTrue(captions.says().orElseThrow().to() < 450);
    assertEquals(250, captions.says().orElseThrow().width(), 1e-9);
  }

  @Test
  void anything_neverOverlaps_norLeavesTheTape() {
    long seed = 20261126;
    Random random = new Random(seed);
    int shown = 0;
    for (int k = 0; k < 20_000; k++) {
      double width = 120 + 1500 * random.nextDouble();
      OptionalDouble sign =
          random.nextBoolean()
              ? OptionalDouble.of(18 + (width - 36) * random.nextDouble())
              : OptionalDouble.empty();
      double says = 400 * random.nextDouble();
      double reads = 160 * random.nextDouble();
      Captions captions = Captions.of(width, sign, reads, Math.min(reads, 70), says);
      List<Room> rooms = new ArrayList<>();
      captions.reads().ifPresent(rooms::add);
      captions.says().ifPresent(rooms::add);
      shown += rooms.size();
      sign.ifPresent(x -> rooms.add(new Room(x - SIGN, x + SIGN)));
      for (Room room : rooms) {
        String what = "seed " + seed + ", " + k + ": " + rooms + " on " + width;
        assertTrue(room.width() >= 0 && room.from() >= 0 && room.to() <= width, what);
        assertTrue(
            rooms.stream()
                .filter(r -> r != room)
                .allMatch(r -> r.to() <= room.from() || r.from() >= room.to()),
            what);
      }
    }
    assertTrue(shown > 35_000, "nearly always both are there: " + shown);
  }
}
