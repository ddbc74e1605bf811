package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.Brief;

/** Briefs for tests, as text and as trees. */
final class Briefs {

  static final Path CASES = Path.of("src/test/resources/cases/intake");
  static final Path MODELS = Path.of("models");

  /** The least that a brief with a saw must say, in mm. */
  static final String LEAST =
      """
      name: Least
      units: mm
      saw:
        table: {width: 640, depth: 480, height: 330}
        bottom: closed
        feet: {left: 250, right: 290, front: 40, rear: 430}
        blade: {leftEdge: 300, arbor: 230}
        slots: []
        fence: {kind: one-end, right: 320}
      stock:
        - {name: birch-18, length: 2440, width: 1220, thickness: 17.7}
      """;

  private Briefs() {}

  static Brief read(String yaml) {
    try {
      return BriefReader.read("test.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    } catch (BriefException wrong) {
      throw new AssertionError(wrong.getMessage(), wrong);
    }
  }

  /** {@link #LEAST} with one piece of text replaced. */
  static Brief least(String was, String is) {
    if (!LEAST.contains(was)) {
      throw new IllegalArgumentException("the least brief has no `" + was + "`");
    }
    return read(LEAST.replace(was, is));
  }

  /** {@link #LEAST} with more keys in the saw's section, one a line. */
  static Brief withSaw(String... lines) {
    return least("  bottom: closed\n", "  bottom: closed\n  " + String.join("\n  ", lines) + "\n");
  }

  /** {@link #LEAST} with more sections at its end. */
  static Brief with(String... lines) {
    return read(LEAST + String.join("\n", lines) + "\n");
  }

  static List<BriefProblem> problems(String yaml) {
    try {
      BriefReader.read("test.yaml", yaml.getBytes(StandardCharsets.UTF_8));
      return List.of();
    } catch (BriefException wrong) {
      return wrong.problems();
    }
  }

  static ObjectNode tree(Path file) {
    try {
      return (ObjectNode) YamlTree.read(Files.readString(file)).json();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (YamlException broken) {
      throw new AssertionError(broken);
    }
  }

  /** A tree as YAML text: JSON is YAML. */
  static byte[] bytes(JsonNode tree) {
    return tree.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The demo briefs, and those that have every key. */
  static List<Path> good() {
    return Stream.of(MODELS, CASES).flatMap(Briefs::yamlIn).toList();
  }

  static Stream<Path> yamlIn(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
