package sawstead.layout.packing;

import java.util.ArrayList;
import java.util.List;

/**
 * A complete answer: every copy of every piece on some sheet.
 *
 * @param sheets the sheets used
 * @param counted how many of them count
 * @param price their total price
 * @param interrupted whether the search was stopped before its budget of work was used
 */
public record Packing(List<PackedSheet> sheets, int counted, long price, boolean interrupted) {
  public Packing {
    sheets = List.copyOf(sheets);
  }

  static Packing of(Load load, boolean interrupted) {
    List<PackedSheet> sheets = new ArrayList<>();
    int counted = load.counted;
    long price = load.price;
    for (int i = 0; i < load.count; i++) {
      OpenSheet sheet = load.sheets[i];
      if (!sheet.pieces.isEmpty()) {
        sheets.add(new PackedSheet(sheet.kind, tile(sheet.root)));
      } else {
        SheetKind kind = load.problem.sheets().get(sheet.kind);
        counted -= kind.counted() ? 1 : 0;
        price -= kind.price();
      }
    }
    return new Packing(sheets, counted, price, interrupted);
  }

  private static Tile tile(Block block) {
    if (!block.isGroup()) {
      return new Tile.Piece(block.kind, block.turned, block.length, block.width);
    }
    List<Tile> parts = new ArrayList<>();
    for (int i = 0; i < block.count; i++) {
      parts.add(tile(block.parts[i]));
    }
    return new Tile.Row(block.alongLength, block.length, block.width, parts, block.slack);
  }
}
