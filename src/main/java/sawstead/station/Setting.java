package sawstead.station;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import sawstead.solid.Placement;

/**
 * How things stand while something moves, where that is not how the station rests.
 *
 * @param set applied to the moved bodies where the station has them, before the motion: a sled that
 *     is stored beside the saw is set on the table; the identity where nothing is
 * @param aside ids of bodies put away meanwhile: a guard, a fence
 * @param others parameters of other movers meanwhile, by id, mm or degrees: the fence at its end, a
 *     lid up
 * @param guests bodies that are there only in this motion and move with what it moves: a board, a
 *     plug; placed in the station's frame as they are at the motion's rest
 */
public record Setting(
    Placement set, List<String> aside, Map<String, Double> others, List<Part> guests) {

  /** Everything as the station rests. */
  public static final Setting PLAIN =
      new Setting(Placement.identity(), List.of(), Map.of(), List.of());

  /** Refuses a guest that comes twice. */
  public Setting {
    aside = List.copyOf(aside);
    others = java.util.Collections.unmodifiableMap(new TreeMap<>(others));
    guests = List.copyOf(guests);
    Set<String> ids = new HashSet<>();
    for (Part guest : guests) {
      if (!ids.add(guest.id())) {
        throw new IllegalArgumentException("a guest comes twice: " + guest.id());
      }
    }
  }

  /** Only the bodies put away. */
  public static Setting aside(List<String> ids) {
    return PLAIN.without(ids);
  }

  /** Only the parameters of other movers. */
  public static Setting meanwhile(Map<String, Double> others) {
    return PLAIN.and(others);
  }

  /** Only the guests. */
  public static Setting guests(List<Part> guests) {
    return PLAIN.with(guests);
  }

  /** The same, with what moves set elsewhere first. */
  public Setting set(Placement placement) {
    return new Setting(placement, aside, others, guests);
  }

  /** The same, with these bodies put away and no others. */
  public Setting without(List<String> ids) {
    return new Setting(set, ids, others, guests);
  }

  /** The same, with these parameters of other movers and no others. */
  public Setting and(Map<String, Double> parameters) {
    return new Setting(set, aside, parameters, guests);
  }

  /** The same, with these guests and no others. */
  public Setting with(List<Part> those) {
    return new Setting(set, aside, others, those);
  }

  /** Whether everything stands as the station rests. */
  public boolean isPlain() {
    return equals(PLAIN);
  }
}
