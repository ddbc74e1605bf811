package sawstead.layout;

import java.util.OptionalDouble;

/**
 * One cut through one piece of a sheet, from edge to edge. Coordinates are those of the sheet, mm:
 * a cut along the length runs at one width {@code at} from one length to another.
 *
 * @param order place in the sequence of all cuts of the plan, from 1
 * @param guide what leads it
 * @param along direction in which the cut runs
 * @param at near side of the kerf, which takes from here to {@code at + kerf}
 * @param from where the cut begins
 * @param to where it ends
 * @param setting distance from fence or stop to blade, mm; none for a cut along the rail
 */
public record Cut(
    int order,
    Guide guide,
    Direction along,
    double at,
    double from,
    double to,
    OptionalDouble setting) {}
