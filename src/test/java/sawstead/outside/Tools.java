package sawstead.outside;

import java.util.List;

/** The outside programs that the tests call. */
final class Tools {
  static final Tool ADMESH =
      new Tool("admesh", List.of("admesh"), List.of("--version"), "Run: apt-get install admesh");

  // Debian's package serves Debian's own Python, which need not be the first one on the path.
  static final Tool PYTHON =
      new Tool(
          "python3 with ezdxf",
          List.of("python3", "/usr/bin/python3"),
          List.of("-c", "import ezdxf"),
          "Run: apt-get install python3-ezdxf");

  static final Tool NODE =
      new Tool(
          "node with the packages of src/test/node",
          List.of("node"),
          List.of(OutsideTool.project().resolve("src/test/node/trial.mjs").toString()),
          "Install Node 18 or later, then run: npm ci --prefix src/test/node");

  private Tools() {}
}
