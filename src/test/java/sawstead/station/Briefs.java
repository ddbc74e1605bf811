package sawstead.station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.Brief;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;

/** Briefs for tests: from text, from the demos, and made up. */
public final class Briefs {

  /** A saw without wings, outfeed, vac and casters: lines for the station follow. */
  public static final String SAW =
      """
      name: test
      units: mm
      saw:
        table: {width: 640, depth: 480, height: 330}
        body: {left: 260, right: 300, front: 30, rear: 440}
        feet: {left: 250, right: 290, front: 40, rear: 430, settling: 0}
        bottom: closed
        blade: {leftEdge: 300, arbor: 230}
        slots: [{at: -120, width: 19, depth: 9.5}]
        fence: {kind: one-end, right: 320}
      stock:
        - {name: ply, length: 2440, width: 1220, thickness: 18}
      """;

  /** Nothing but the stand. */
  public static final String BARE = "  wings: {left: none, right: none}\n  outfeed: none\n";

  private Briefs() {}

  /** Reads the text of a brief that is known to be right. */
  public static Brief of(String text) {
    try {
      return BriefReader.read("test.yaml", text.getBytes(StandardCharsets.UTF_8));
    } catch (BriefException e) {
      throw new AssertionError(e.getMessage() + "\n" + text, e);
    }
  }

  /** The demo briefs. */
  public static List<Path> demos() {
    try (Stream<Path> files = Files.list(Path.of("models"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
