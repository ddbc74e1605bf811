package sawstead.assembly;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import sawstead.station.Step;

/**
 * Things that a person would put on together, if that can be done.
 *
 * @param name unit or thing, for people
 * @param things their numbers, in the order in which they are built
 * @param told the step in which the unit tells of them; empty for what no step names
 */
record Group(String name, List<Integer> things, Optional<Step> told) {
  Group {
    things = List.copyOf(things);
  }

  /** What of it is in a set. */
  BitSet in(BitSet set) {
    BitSet in = new BitSet();
    things.stream().filter(set::get).forEach(in::set);
    return in;
  }
}
