package sawstead.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import sawstead.layout.Favour;

/** What a breakdown is told on the command line; a brief tells all but the last three itself. */
final class BreakdownOptions {
  @Option(
      names = "--sheet",
      paramLabel = "LxW",
      description = "Size of a sheet, grain along L, for example 2440x1220. May be repeated.")
  private List<String> sheets = List.of();

  @Option(
      names = "--offcut",
      paramLabel = "NAME=LxW",
      description = "An offcut at hand, used before a new sheet. May be repeated.")
  private List<String> offcuts = List.of();

  @Option(
      names = "--defect",
      paramLabel = "NAME=X,Y,LxW",
      description = "A place of an offcut that no part may have. May be repeated.")
  private List<String> defects = List.of();

  @Option(names = "--kerf", paramLabel = "MM", description = "Width of a cut (3.2).")
  private String kerf;

  @Option(
      names = "--trim",
      paramLabel = "MM",
      description = "What is cut off each factory edge, the blade included (0).")
  private String trim;

  @Option(
      names = "--thickness",
      paramLabel = "MM",
      description = "Thickness, for the mass of what is lifted (18).")
  private String thickness;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description = "How long to search, counted in work (${DEFAULT-VALUE}).")
  private String seconds = "1";

  @Option(names = "--seed", paramLabel = "N", description = "Seed (${DEFAULT-VALUE}).")
  private long seed = 1;

  @Option(
      names = "--little-labour",
      description = "Few settings and few cuts to mark come before a large leftover.")
  private boolean littleLabour;

  Favour favour() {
    return littleLabour ? Favour.LABOUR : Favour.LEFTOVER;
  }

  List<String> sheets() {
    return sheets;
  }

  List<String> offcuts() {
    return offcuts;
  }

  List<String> defects() {
    return defects;
  }

  String kerf() {
    return kerf == null ? "3.2" : kerf;
  }

  String trim() {
    return trim == null ? "0" : trim;
  }

  String thickness() {
    return thickness == null ? "18" : thickness;
  }

  String seconds() {
    return seconds;
  }

  long seed() {
    return seed;
  }

  /** The options given that only make sense for a list. */
  List<String> ofLists() {
    List<String> given = new ArrayList<>();
    if (!sheets.isEmpty()) {
      given.add("--sheet");
    }
    if (!offcuts.isEmpty()) {
      given.add("--offcut");
    }
    if (!defects.isEmpty()) {
      given.add("--defect");
    }
    if (kerf != null) {
      given.add("--kerf");
    }
    if (trim != null) {
      given.add("--trim");
    }
    if (thickness != null) {
      given.add("--thickness");
    }
    return given;
  }
}
