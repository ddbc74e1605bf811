package sawstead.layout.packing;

import java.util.List;

/** Says how laborious a packing is to cut; only differences matter, less is better. */
public interface Labour {
  /** The labour of cutting these sheets. */
  long of(List<PackedSheet> sheets);
}
