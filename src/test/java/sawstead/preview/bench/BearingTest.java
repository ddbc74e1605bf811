package sawstead.preview.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.station.Station;

class BearingTest {
  private static String text(String model) throws Exception {
    return Files.readString(Path.of("models/flawed/" + model + ".yaml"));
  }

  private static Station station(String text) {
    return Bench.design("model", text).station().orElseThrow();
  }

  @Test
  void tried_findsWhatMovesTheTwoApart_wishesFirst() throws Exception {
    String text = text("shelf-over-lid");
    List<String> lengths =
        List.of(
            "saw.cord.plug", "saw.table.height", "station.workingHeight", "station.outfeed.depth");
    List<String> found =
        Bearing.tried(
            "model.yaml",
            text,
            station(text),
            List.of("outfeed/lid-opens", "outfeed/lid", "shelf/over"),
            lengths,
            () -> true);
    assertEquals("station.workingHeight", found.get(0));
    assertTrue(found.contains("station.outfeed.depth"));
    assertFalse(found.contains("saw.cord.plug"));
  }

  @Test
  void tried_stopsWhenNobodyWantsItAnyMore() throws Exception {
    String text = text("shelf-over-lid");
    assertEquals(
        List.of(),
        Bearing.tried(
            "model.yaml",
            text,
            station(text),
            List.of("outfeed/lid"),
            List.of("station.outfeed.depth"),
            () -> false));
  }

  @Test
  void written_findsTheItemThatBearsTheName_andTheSection() throws Exception {
    String text = text("big-router");
    List<String> values =
        List.of(
            "station.wings.right.contents[0].height",
            "station.workingHeight",
            "saw.switch.x",
            "stock[0].length");
    assertEquals(
        List.of("station.wings.right.contents[0].height"),
        Bearing.written(text, station(text), List.of("wing-right/router-case"), values));
    assertEquals(
        List.of("saw.switch.x"),
        Bearing.written(text, station(text), List.of("saw/switch"), values));
  }
}
