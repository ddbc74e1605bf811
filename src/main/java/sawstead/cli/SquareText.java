package sawstead.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sawstead.measure.Unit;
import sawstead.squaring.Adjustment;
import sawstead.squaring.Hand;
import sawstead.squaring.Squareness;

/**
 * What {@code square} answers. Amounts this small are told in thousandths: of a millimetre, or of
 * an inch.
 *
 * @param unit of the user
 * @param found the fence's error
 * @param adjustment what removes it
 * @param stack leaves of feeler gauges for the move, mm
 * @param board width of a board to tell the error over, mm
 */
record SquareText(
    Unit unit, Squareness found, Adjustment adjustment, List<Double> stack, double board) {

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (adjustment.isNoise()) {
      lines.add("do not move the fence: the error is inside the noise of the measurement");
      lines.add(error());
      lines.add(
          "over a board of %s it may be off by up to %s: measure finer, or on a longer strip, to know more"
              .formatted(plain(board), fine(found.over(board) + adjustment.unsureOver(board))));
      return lines;
    }
    String screwEnd = adjustment.pivot() == Hand.LEFT ? "right" : "left";
    boolean away = adjustment.awayFromOperator();
    lines.add(
        "move the fence's %s end %s by %s, measured %s from the pivot"
            .formatted(
                screwEnd,
                away ? "away from you" : "toward you",
                fine(Math.abs(adjustment.move())),
                plain(adjustment.distance())));
    lines.add(error());
    lines.add("the move is sure to %s either way".formatted(fine(adjustment.band())));
    double sum = stack.stream().mapToDouble(t -> t).sum();
    if (stack.isEmpty()) {
      lines.add(
          "feeler gauges: no leaf is nearly that thin; use thinner ones, or leave the fence as it is");
    } else {
      lines.add(
          "feeler gauges: %s = %s"
              .formatted(
                  stack.stream().map(this::bare).collect(Collectors.joining(" + ")), fine(sum)));
      lines.add(
          away
              ? "clamp a block to the sled that touches the fence from your side at that place; loosen"
                  + " the squaring screw, slip the leaves between block and fence, tighten"
              : "clamp a block to the sled on your side of the fence with the leaves between them at"
                  + " that place; loosen the squaring screw, take the leaves out, close the gap,"
                  + " tighten");
    }
    lines.add(
        "over a board of %s: off by %s now, by %s after that, and no surer than %s"
            .formatted(
                plain(board),
                fine(found.over(board)),
                fine(adjustment.leftOver(sum, board)),
                fine(adjustment.unsureOver(board))));
    lines.add("then cut five sides again: a wrong sign doubles the error, and only a cut tells");
    return lines;
  }

  private String error() {
    String way = found.error() > 0 ? "counter-clockwise" : "clockwise";
    return String.format(
        Locale.ROOT,
        "the fence is turned %.4f degrees %s, seen from above, give or take %.4f",
        Math.abs(found.degrees()),
        way,
        Math.toDegrees(Squareness.COVERAGE * found.uncertainty()));
  }

  private String fine(double millimetres) {
    return bare(millimetres) + (unit == Unit.MM ? " mm" : " in");
  }

  private String bare(double millimetres) {
    return unit == Unit.MM
        ? String.format(Locale.ROOT, "%.3f", millimetres)
        : String.format(Locale.ROOT, "%.4f", millimetres / 25.4);
  }

  private String plain(double millimetres) {
    return unit == Unit.MM
        ? String.format(Locale.ROOT, "%.0f mm", millimetres)
        : String.format(Locale.ROOT, "%.2f in", millimetres / 25.4);
  }

  /** The figures, mm and degrees; {@code move} is positive away from the operator. */
  String json() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "sawstead-square/1");
    root.put("degrees", found.degrees());
    root.put("degreesUncertainty", Math.toDegrees(Squareness.COVERAGE * found.uncertainty()));
    root.put("move", adjustment.move());
    root.put("moveUncertainty", adjustment.band());
    root.put("noise", adjustment.isNoise());
    stack.forEach(root.putArray("leaves")::add);
    double sum = stack.stream().mapToDouble(t -> t).sum();
    root.put("board", board);
    root.put("offNow", found.over(board));
    root.put("offAfter", adjustment.leftOver(adjustment.isNoise() ? 0 : sum, board));
    root.put("unsure", adjustment.unsureOver(board));
    return root.toPrettyString();
  }
}
