package sawstead.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import sawstead.layout.packing.Labour;
import sawstead.layout.packing.PackedSheet;
import sawstead.layout.packing.Tile;

/**
 * The labour of cutting the sheets of one board: what has to be set or marked first (settings of
 * fence or stop, cuts along the rail), then all cuts.
 */
final class GroupLabour implements Labour {
  private final CuttingRules rules;
  private final int room;
  private final Set<Integer> matched;
  private final List<Stock> stock;

  /** By kind of sheet; the best trim of a sheet is worth finding once. */
  private final List<Sawable> sheets;

  private final Optional<SellerStage> seller;

  GroupLabour(CutRequest request, BoardGroup group) {
    matched = Set.copyOf(group.matched());
    room = group.room();
    rules = new CuttingRules(request.limits(), request.kerfs(), group.board());
    stock = IntStream.range(0, group.problem().sheets().size()).mapToObj(group::stock).toList();
    sheets = stock.stream().map(Sawable::of).toList();
    seller =
        request
            .carry()
            .map(
                carry ->
                    new SellerStage(
                        carry, group.board(), rules.kerf(Guide.SELLER), room, this::atHome));
  }

  private SawNode atHome(Sawable work, Tile tile) {
    return new Dissection(rules, room, matched, work).of(tile);
  }

  /** How many cuts of a sheet are the seller's. */
  int sellersCuts(PackedSheet sheet) {
    return sellersCuts(tree(sheet));
  }

  private static int sellersCuts(SawNode node) {
    return node instanceof SawNode.Sawn sawn && sawn.how().guide() == Guide.SELLER
        ? 1 + sellersCuts(sawn.near()) + sellersCuts(sawn.far())
        : 0;
  }

  /** How many pieces of a sheet are too large to be carried home. */
  int tooLarge(PackedSheet sheet) {
    return sellerOf(sheet).map(s -> s.tooLarge(tree(sheet))).orElse(0);
  }

  /** One sheet taken apart. */
  SawNode tree(PackedSheet sheet) {
    Sawable work = sheets.get(sheet.kind());
    return sellerOf(sheet)
        .map(s -> s.of(work, sheet.tile()))
        .orElseGet(() -> atHome(work, sheet.tile()));
  }

  /** Who cuts a sheet first; nobody where whole sheets come home, or it is at home already. */
  private Optional<SellerStage> sellerOf(PackedSheet sheet) {
    return seller.filter(s -> !stock.get(sheet.kind()).offcut());
  }

  @Override
  public long of(List<PackedSheet> sheets) {
    List<SawNode> trees = new ArrayList<>(sheets.size());
    sheets.forEach(sheet -> trees.add(tree(sheet)));
    Sequence sequence = Sequence.quick(trees);
    return (((long) sequence.settings() + sequence.marked()) << 20) + sequence.made();
  }
}
