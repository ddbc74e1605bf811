package sawstead.layout;

/**
 * A part to be cut, in finished size.
 *
 * @param name how the shop calls it
 * @param length finished length, mm
 * @param width finished width, mm
 * @param quantity copies wanted
 * @param grain how its length lies to the grain
 * @param board name of the {@link Board} it is made of
 * @param where where the part is written down, for messages (for example {@code list.csv:3})
 */
public record Part(
    String name,
    double length,
    double width,
    int quantity,
    Grain grain,
    String board,
    String where) {}
