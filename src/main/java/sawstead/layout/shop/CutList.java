package sawstead.layout.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.brief.Brief;
import sawstead.brief.GoodSide;
import sawstead.brief.Sheet;
import sawstead.joinery.Board;
import sawstead.solid.Box;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.station.Part;
import sawstead.station.Station;

/** All panels of a station, alike ones of a unit in one line, largest first within a unit. */
public final class CutList {
  /** Sizes nearer than this are one setting of a fence, mm. */
  private static final double ALIKE = 0.05;

  private record Key(
      String unit, String sheet, long length, long width, long mass, String joints) {}

  private CutList() {}

  /** The list. */
  public static List<CutListLine> of(Station station) {
    Map<Key, List<Board>> groups = new LinkedHashMap<>();
    for (Board board : station.boards().values()) {
      Box plan = board.outline().bounds();
      Key key =
          new Key(
              Part.unit(board.id()),
              board.stock(),
              Math.round(plan.size().x() / ALIKE),
              Math.round(plan.size().y() / ALIKE),
              Math.round(board.mass() * 1000),
              joints(board));
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(board);
    }
    List<CutListLine> lines = new ArrayList<>();
    EdgeBands edges = new EdgeBands(station.boards().values());
    groups.forEach((key, boards) -> lines.add(line(station, key, boards, edges)));
    lines.sort(
        java.util.Comparator.comparing(CutListLine::unit)
            .thenComparing(line -> -line.length() * line.width()));
    return lines;
  }

  /** Mass of all panels by unit, kg. */
  public static Map<String, Double> masses(Station station) {
    Map<String, Double> masses = new TreeMap<>();
    station.boards().values().forEach(b -> masses.merge(Part.unit(b.id()), b.mass(), Double::sum));
    return masses;
  }

  private static CutListLine line(Station station, Key key, List<Board> boards, EdgeBands edges) {
    Board first = boards.get(0);
    Box plan = first.outline().bounds();
    return new CutListLine(
        key.unit,
        boards.stream().map(Board::id).toList(),
        plan.size().x(),
        plan.size().y(),
        first.thickness(),
        key.sheet,
        good(station.brief(), key.sheet),
        first.mass(),
        key.joints,
        bands(boards, edges));
  }

  private static String bands(List<Board> boards, EdgeBands edges) {
    Map<String, List<String>> by = new LinkedHashMap<>();
    for (Board board : boards) {
      by.computeIfAbsent(edges.of(board).words(), w -> new ArrayList<>())
          .add(board.id().substring(board.id().lastIndexOf('/') + 1));
    }
    if (by.size() == 1) {
      return by.keySet().iterator().next();
    }
    List<String> words = new ArrayList<>();
    by.forEach(
        (what, ids) -> words.add(String.join(" ", ids) + ": " + (what.isEmpty() ? "none" : what)));
    return String.join("; ", words);
  }

  /** Which face of the panels of a sheet is the good one. */
  static GoodSide good(Brief brief, String sheet) {
    return brief.stock().stream()
        .filter(s -> s.name().equals(sheet))
        .findFirst()
        .map(Sheet::good)
        .orElse(GoodSide.BOTH);
  }

  private static String joints(Board board) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Feature feature : board.features()) {
      if (!(feature instanceof Mark)) {
        counts.merge(feature.operation(), 1, Integer::sum);
      }
    }
    List<String> words = new ArrayList<>();
    counts.forEach((operation, n) -> words.add(n + " " + operation));
    return String.join(", ", words);
  }
}
