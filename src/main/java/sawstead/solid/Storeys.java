package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * What each ring does at each level: step 1 and 2 of the slab engine. A level is the space between
 * two neighbouring heights at which the section changes.
 */
final class Storeys {
  private record Role(int ring, int first, int last, boolean adds) {}

  private final double[] heights;
  private final List<Ring> rings = new ArrayList<>();
  private final List<Role> roles = new ArrayList<>();
  private final Map<BitSet, BitSet> columns = new HashMap<>();

  Storeys(List<Prism> prisms) {
    TreeSet<Double> cuts = new TreeSet<>();
    for (Prism prism : prisms) {
      if (Slabs.snap(prism.low()) < Slabs.snap(prism.high())) {
        cuts.add(Slabs.snap(prism.low()));
        cuts.add(Slabs.snap(prism.high()));
      }
    }
    heights = cuts.stream().mapToDouble(Double::doubleValue).toArray();
    Map<Ring, Integer> known = new HashMap<>();
    for (Prism prism : prisms) {
      int first = cuts.headSet(Slabs.snap(prism.low())).size();
      int last = cuts.headSet(Slabs.snap(prism.high())).size();
      Ring ring = Ring.of(prism.outline(), prism.adds());
      if (first < last && ring.size() >= 3) {
        Integer index = known.putIfAbsent(ring, rings.size());
        if (index == null) {
          index = rings.size();
          rings.add(ring);
        }
        roles.add(new Role(index, first, last, prism.adds()));
      }
    }
  }

  /** Heights between the levels, ascending, mm. */
  double[] heights() {
    return heights;
  }

  List<Ring> rings() {
    return rings;
  }

  /** The levels at which there is material inside exactly these rings. */
  BitSet column(BitSet inside) {
    return columns.computeIfAbsent((BitSet) inside.clone(), this::worked);
  }

  private BitSet worked(BitSet inside) {
    BitSet column = new BitSet();
    for (Role role : roles) {
      if (role.adds && inside.get(role.ring)) {
        column.set(role.first, role.last);
      }
    }
    for (Role role : roles) {
      if (!role.adds && inside.get(role.ring)) {
        column.clear(role.first, role.last);
      }
    }
    return column;
  }
}
