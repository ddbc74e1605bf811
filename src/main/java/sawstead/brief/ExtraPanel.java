package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * A panel of the user's own.
 *
 * @param id path
 * @param stock name of its sheet
 * @param outline corners, mm, u along the grain
 * @param cuts what is taken away
 * @param turns in order, about the fixed axes of the station
 * @param at where its local origin goes after turning, mm
 * @param screws screws from this panel into others
 */
public record ExtraPanel(
    String id,
    String stock,
    List<Point> outline,
    List<Cut> cuts,
    List<Turn> turns,
    Place at,
    List<ExtraScrew> screws) {
  public ExtraPanel {
    requireNonNull(id, "id");
    requireNonNull(stock, "stock");
    outline = List.copyOf(outline);
    cuts = List.copyOf(cuts);
    turns = List.copyOf(turns);
    requireNonNull(at, "at");
    screws = List.copyOf(screws);
  }
}
