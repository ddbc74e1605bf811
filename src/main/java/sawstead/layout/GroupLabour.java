package sawstead.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import sawstead.layout.packing.Labour;
import sawstead.layout.packing.PackedSheet;

/**
 * The labour of cutting the sheets of one board: what has to be set or marked first (settings of
 * fence or stop, cuts along the rail), then all cuts.
 */
final class GroupLabour implements Labour {
  private final BoardGroup group;
  private final CuttingRules rules;
  private final Set<Integer> matched;

  GroupLabour(CutRequest request, BoardGroup group) {
    this.group = group;
    this.matched = Set.copyOf(group.matched());
    this.rules = new CuttingRules(request.limits(), request.kerfs(), group.board());
  }

  /** One sheet taken apart. */
  SawNode tree(PackedSheet sheet) {
    Stock stock = group.stock(sheet.kind());
    return new Dissection(rules, group.room(), matched, stock).sheet(sheet.tile());
  }

  @Override
  public long of(List<PackedSheet> sheets) {
    List<SawNode> trees = new ArrayList<>(sheets.size());
    sheets.forEach(sheet -> trees.add(tree(sheet)));
    Sequence sequence = Sequence.quick(trees);
    return (((long) sequence.settings() + sequence.marked()) << 20) + sequence.made();
  }
}
