package sawstead.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import sawstead.layout.packing.Labour;
import sawstead.layout.packing.PackedSheet;

/**
 * The labour of cutting the sheets of one board: what has to be set or marked first (settings of
 * fence or stop, cuts along the rail), then all cuts.
 */
final class GroupLabour implements Labour {
  /** By kind of sheet; each knows the best trim of its sheet, which is worth finding once. */
  private final List<Dissection> dissections;

  GroupLabour(CutRequest request, BoardGroup group) {
    Set<Integer> matched = Set.copyOf(group.matched());
    CuttingRules rules = new CuttingRules(request.limits(), request.kerfs(), group.board());
    dissections =
        IntStream.range(0, group.problem().sheets().size())
            .mapToObj(kind -> new Dissection(rules, group.room(), matched, group.stock(kind)))
            .toList();
  }

  /** One sheet taken apart. */
  SawNode tree(PackedSheet sheet) {
    return dissections.get(sheet.kind()).sheet(sheet.tile());
  }

  @Override
  public long of(List<PackedSheet> sheets) {
    List<SawNode> trees = new ArrayList<>(sheets.size());
    sheets.forEach(sheet -> trees.add(tree(sheet)));
    Sequence sequence = Sequence.quick(trees);
    return (((long) sequence.settings() + sequence.marked()) << 20) + sequence.made();
  }
}
