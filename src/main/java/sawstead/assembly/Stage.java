package sawstead.assembly;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Body;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * The things of a station that are never taken apart, counted from 0, and which of them each
 * fastener holds. Sets of things are bit sets of their numbers.
 */
final class Stage {
  private final Station station;
  private final double play;
  private final List<Thing> things = new ArrayList<>();
  private final Map<String, Integer> thingOf = new HashMap<>();
  private final List<int[]> joins = new ArrayList<>();

  Stage(Station station, double contact) {
    this.station = station;
    play = contact / 2;
    Map<String, List<Part>> clusters = new TreeMap<>();
    for (Part part : station.parts().values()) {
      if (part.isRoom()) {
        continue;
      }
      clusters.computeIfAbsent(Thing.nameOf(part.id()), k -> new ArrayList<>()).add(part);
    }
    clusters.forEach(
        (name, parts) -> {
          parts.forEach(p -> thingOf.put(p.id(), things.size()));
          things.add(new Thing(name, parts));
        });
    station.fasteners().forEach(f -> joins.add(held(f)));
  }

  /** What a fastener holds together; a bolt that names one part only holds down the saw. */
  private int[] held(Fastener fastener) {
    Map<Integer, Boolean> found = new LinkedHashMap<>();
    fastener.joins().stream().filter(thingOf::containsKey).forEach(id -> found.put(of(id), true));
    if (fastener.kind() == FastenerKind.BOLT && found.size() == 1) {
      for (int i = 0; i < things.size(); i++) {
        if (things.get(i).name().equals(Thing.SAW)) {
          found.put(i, true);
        }
      }
    }
    return found.keySet().stream().mapToInt(Integer::intValue).toArray();
  }

  Station station() {
    return station;
  }

  /**
   * Depth that is allowed on the way, mm: half the contact tolerance, so that something between two
   * faces is allowed the tolerance in all.
   */
  double play() {
    return play;
  }

  List<Thing> things() {
    return things;
  }

  Thing thing(int number) {
    return things.get(number);
  }

  /** Number of the thing that a part belongs to. */
  int of(String partId) {
    return thingOf.get(partId);
  }

  boolean has(String partId) {
    return thingOf.containsKey(partId);
  }

  List<Fastener> fasteners() {
    return station.fasteners();
  }

  /** Numbers of the things that a fastener holds. */
  int[] joins(int fastener) {
    return joins.get(fastener);
  }

  BitSet all() {
    BitSet all = new BitSet();
    all.set(0, things.size());
    return all;
  }

  /** Names of things, in the order of their numbers. */
  List<String> names(BitSet set) {
    return set.stream().mapToObj(i -> things.get(i).name()).toList();
  }

  /** Bodies of what does not bend. */
  List<Body> rigid(BitSet set) {
    return set.stream()
        .mapToObj(things::get)
        .filter(t -> !t.isFlexible())
        .flatMap(t -> t.bodies().stream())
        .toList();
  }

  double mass(BitSet set) {
    return set.stream().mapToDouble(i -> things.get(i).mass()).sum();
  }

  /** Whether the saw or the vac is in the set: then nothing is turned over any more. */
  boolean standsForGood(BitSet set) {
    return set.stream()
        .mapToObj(things::get)
        .anyMatch(t -> t.name().equals(Thing.SAW) || t.name().equals(Thing.VAC));
  }
}
