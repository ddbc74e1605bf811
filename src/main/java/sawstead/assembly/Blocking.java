package sawstead.assembly;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import sawstead.solid.Body;
import sawstead.solid.FreeWay;
import sawstead.solid.Vec;

/**
 * Which things stand in each other's way along straight lines. Exact in the sense of the kernel's
 * {@link FreeWay}: a thing that is passed by, or touched, by no more than the play blocks nothing.
 *
 * <p>Invariant: a blocks b along d just when b blocks a along -d.
 */
final class Blocking {
  /** A way that is free this far is free, mm. */
  static final double FAR = 20_000;

  private final Stage stage;
  private final List<Vec> directions = new ArrayList<>();
  private final List<BitSet[]> known = new ArrayList<>();
  private final List<BitSet[]> blocked = new ArrayList<>();

  Blocking(Stage stage) {
    this.stage = stage;
  }

  /** Things of the others that are in the way of something of the movers. */
  BitSet blockers(BitSet movers, Vec direction, BitSet others) {
    BitSet found = new BitSet();
    for (int m = movers.nextSetBit(0); m >= 0; m = movers.nextSetBit(m + 1)) {
      for (int o = others.nextSetBit(0); o >= 0; o = others.nextSetBit(o + 1)) {
        if (!found.get(o) && !movers.get(o) && blocks(m, direction, o)) {
          found.set(o);
        }
      }
    }
    return found;
  }

  boolean isFree(BitSet movers, Vec direction, BitSet others) {
    for (int m = movers.nextSetBit(0); m >= 0; m = movers.nextSetBit(m + 1)) {
      for (int o = others.nextSetBit(0); o >= 0; o = others.nextSetBit(o + 1)) {
        if (!movers.get(o) && blocks(m, direction, o)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether the second thing is in the way of the first. */
  boolean blocks(int mover, Vec direction, int other) {
    int way = number(direction);
    BitSet[] seen = known.get(way);
    if (!seen[mover].get(other)) {
      boolean meets = meets(stage.thing(mover), direction, stage.thing(other));
      set(way, mover, other, meets);
      set(number(direction.scale(-1)), other, mover, meets);
    }
    return blocked.get(way)[mover].get(other);
  }

  private void set(int way, int mover, int other, boolean meets) {
    known.get(way)[mover].set(other);
    blocked.get(way)[mover].set(other, meets);
  }

  private int number(Vec direction) {
    for (int i = 0; i < directions.size(); i++) {
      if (directions.get(i).distance(direction) < 1e-12) {
        return i;
      }
    }
    directions.add(direction);
    known.add(sets());
    blocked.add(sets());
    return directions.size() - 1;
  }

  private BitSet[] sets() {
    BitSet[] sets = new BitSet[stage.things().size()];
    for (int i = 0; i < sets.length; i++) {
      sets[i] = new BitSet();
    }
    return sets;
  }

  private boolean meets(Thing mover, Vec direction, Thing other) {
    if (mover.isFlexible() || other.isFlexible()) {
      return false;
    }
    for (Body a : mover.bodies()) {
      for (Body b : other.bodies()) {
        if (meets(a, direction, b)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Two bodies that are deeper than the play in each other at rest are asked again with the contact
   * tolerance; if they are deeper than that, they clash, which others report, and no way can be
   * asked of them.
   */
  private boolean meets(Body a, Vec direction, Body b) {
    double way = FreeWay.of(a, direction, b, stage.play(), FAR);
    if (way == 0) {
      way = FreeWay.of(a, direction, b, 2 * stage.play(), FAR);
    }
    return way > 0 && way <= FAR;
  }
}
