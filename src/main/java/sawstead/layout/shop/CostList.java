package sawstead.layout.shop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import sawstead.brief.Sheet;
import sawstead.layout.Stock;

/**
 * What the sheets cost at the user's own prices. Offcuts are free; what has no price is listed
 * without one, never as 0.
 */
public final class CostList {
  private CostList() {}

  /** A line for each kind of sheet and each offcut used. */
  public static List<CostLine> of(Breakdown breakdown) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    breakdown.plan().sheets().forEach(s -> counts.merge(s.stock(), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(e -> new CostLine(e.getKey(), e.getValue(), price(breakdown, e.getKey())))
        .toList();
  }

  /** The sum; empty when a price is missing. */
  public static OptionalDouble sum(List<CostLine> lines) {
    return lines.stream().allMatch(line -> line.each().isPresent())
        ? OptionalDouble.of(lines.stream().mapToDouble(l -> l.sum().orElseThrow()).sum())
        : OptionalDouble.empty();
  }

  /** The sum in words, and what is not in it for want of a price. */
  public static String words(List<CostLine> lines) {
    List<String> without =
        lines.stream().filter(l -> l.each().isEmpty()).map(CostLine::stock).toList();
    if (without.size() == lines.size()) {
      return "not known: no sheet has a `price`";
    }
    double sum = lines.stream().mapToDouble(l -> l.sum().orElse(0)).sum();
    return String.format(Locale.ROOT, "%.2f", sum)
        + (without.isEmpty() ? "" : ", and " + String.join(", ", without) + " without a price");
  }

  private static OptionalDouble price(Breakdown breakdown, String name) {
    Stock stock = breakdown.stock(name);
    if (stock.offcut()) {
      return OptionalDouble.of(0);
    }
    Sheet sheet = breakdown.station().brief().sheet(stock.board());
    return sheet.price().isPresent()
        ? OptionalDouble.of(sheet.price().get())
        : OptionalDouble.empty();
  }
}
