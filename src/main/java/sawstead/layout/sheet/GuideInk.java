package sawstead.layout.sheet;

import sawstead.drawing.page.Ink;
import sawstead.layout.Guide;

/** The colour of what guides a cut. */
final class GuideInk {
  private GuideInk() {}

  static Ink of(Guide guide) {
    return switch (guide) {
      case SELLER -> Ink.MOSS;
      case RAIL, PACKED_RAIL -> Ink.INK;
      case FENCE -> Ink.COBALT;
      case SLED -> Ink.OCHRE;
    };
  }
}
