package sawstead.layout.packing;

import java.util.ArrayList;
import java.util.List;

/** A sheet being filled: a tree of blocks, with its groups and pieces listed for quick scanning. */
final class OpenSheet {
  final int kind;
  final Block root;
  final List<Block> groups = new ArrayList<>();
  final List<Block> pieces = new ArrayList<>();
  long free;
  private long largestPlace = -1;

  private OpenSheet(int kind, Block root, long free) {
    this.kind = kind;
    this.root = root;
    this.free = free;
    list(root);
  }

  /** An empty sheet. */
  static OpenSheet empty(int kind, SheetKind sheet) {
    return new OpenSheet(kind, Block.group(true, sheet.length(), sheet.width()), sheet.area());
  }

  /**
   * The same blocks on a sheet of another kind, at least as long and as wide; what it is larger is
   * left at its far end.
   */
  OpenSheet on(int otherKind, SheetKind sheet) {
    Block whole = lengthened(root.copy(), false, sheet.width());
    whole = lengthened(whole, true, sheet.length());
    return new OpenSheet(otherKind, whole, free + sheet.area() - (long) root.length * root.width);
  }

  /** The same blocks in a group that is longer in one direction; groups go on alternating. */
  private static Block lengthened(Block whole, boolean along, int extent) {
    int more = extent - whole.extent(along);
    if (more == 0) {
      return whole;
    }
    if (whole.alongLength != along) {
      Block outer =
          along ? Block.group(true, extent, whole.width) : Block.group(false, whole.length, extent);
      outer.add(whole);
      return outer;
    }
    whole.length += along ? more : 0;
    whole.width += along ? 0 : more;
    whole.slack += more;
    return whole;
  }

  OpenSheet copy() {
    return new OpenSheet(kind, root.copy(), free);
  }

  private void list(Block block) {
    if (!block.isGroup()) {
      pieces.add(block);
      return;
    }
    groups.add(block);
    for (int i = 0; i < block.count; i++) {
      list(block.parts[i]);
    }
  }

  /** Area of the largest free rectangle that is left over when the sheet is cut as it is. */
  long largestLeftover() {
    long area = 0;
    for (int i = 0; i < groups.size(); i++) {
      Block group = groups.get(i);
      area = Math.max(area, (long) group.slack * group.cross());
    }
    return area;
  }

  /** No piece of a larger area than this can be put anywhere on the sheet. */
  long largestPlace() {
    if (largestPlace < 0) {
      largestPlace = 0;
      for (int i = 0; i < groups.size(); i++) {
        Block group = groups.get(i);
        long across = group.cross() + group.beyond();
        largestPlace = Math.max(largestPlace, group.slack * across);
      }
    }
    return largestPlace;
  }

  /**
   * Puts a piece at the slack of a group; it must fit there.
   *
   * @param keepAcross whether the waste beside the piece keeps the group's whole extent across;
   *     otherwise the waste above it keeps the slack's whole extent along
   */
  void insert(Block group, Block piece, boolean keepAcross) {
    largestPlace = -1;
    boolean along = group.alongLength;
    int across = group.cross();
    int pieceAlong = piece.extent(along);
    int pieceAcross = piece.extent(!along);
    if (pieceAcross == across) {
      group.add(piece);
    } else {
      boolean whole = !keepAcross && pieceAlong < group.slack;
      int stripAlong = whole ? group.slack : pieceAlong;
      Block strip = newGroup(!along, stripAlong, across, along);
      group.add(strip);
      if (whole) {
        Block row = newGroup(along, stripAlong, pieceAcross, along);
        strip.add(row);
        row.add(piece);
      } else {
        strip.add(piece);
      }
    }
    pieces.add(piece);
    free -= (long) pieceAlong * pieceAcross;
  }

  /**
   * Puts a piece at the slack of a group and of the group around it together: the group's blocks
   * are cut apart from what lies beyond them first, over both widths. The piece must fit that.
   */
  void insertAcross(Block group, Block piece) {
    largestPlace = -1;
    Block outer = group.parent;
    boolean along = outer.alongLength;
    int wide = group.cross() + outer.slack;
    int kept = outer.cross() - group.slack;
    outer.remove(group);
    Block whole = newGroup(!along, wide, outer.cross(), along);
    outer.add(whole);
    Block row = newGroup(along, wide, kept, along);
    whole.add(row);
    moveInto(row, group, kept);
    if (piece.extent(along) == wide) {
      whole.add(piece);
    } else {
      Block strip = newGroup(along, wide, piece.extent(!along), along);
      whole.add(strip);
      strip.add(piece);
    }
    pieces.add(piece);
    free -= (long) piece.length * piece.width;
    if (outer.count == 1 && outer.parent != null) {
      outer.parent.dissolve(outer);
      groups.remove(outer);
      groups.remove(whole);
    }
  }

  /** Puts a group without its slack into a row; a group of one block is replaced by that block. */
  private void moveInto(Block row, Block group, int kept) {
    if (group.count > 1) {
      group.slack = 0;
      group.length = group.alongLength ? kept : group.length;
      group.width = group.alongLength ? group.width : kept;
      row.add(group);
      return;
    }
    groups.remove(group);
    Block only = group.parts[0];
    if (!only.isGroup()) {
      row.add(only);
      return;
    }
    groups.remove(only);
    for (int i = 0; i < only.count; i++) {
      row.add(only.parts[i]);
    }
  }

  private Block newGroup(boolean direction, int extentAlong, int extentAcross, boolean along) {
    Block group =
        along
            ? Block.group(direction, extentAlong, extentAcross)
            : Block.group(direction, extentAcross, extentAlong);
    groups.add(group);
    return group;
  }

  /**
   * Takes a block and all in it out, counting the pieces taken, and tidies what is left: no group
   * but the root is empty, and no group is filled by a single block.
   */
  void remove(Block block, int[] taken) {
    largestPlace = -1;
    drop(block, taken);
    Block group = block.parent;
    if (group == null) {
      root.slack = root.extent(root.alongLength);
      root.count = 0;
      groups.add(root);
      return;
    }
    group.remove(block);
    while (group.parent != null) {
      Block outer = group.parent;
      if (group.count == 0) {
        outer.remove(group);
        groups.remove(group);
      } else if (group.count == 1 && group.slack == 0) {
        if (group.parts[0].isGroup()) {
          groups.remove(group.parts[0]);
        }
        outer.dissolve(group);
        groups.remove(group);
      } else {
        return;
      }
      group = outer;
    }
  }

  private void drop(Block block, int[] taken) {
    if (!block.isGroup()) {
      taken[block.kind]++;
      pieces.remove(block);
      free += (long) block.length * block.width;
      return;
    }
    groups.remove(block);
    for (int i = 0; i < block.count; i++) {
      drop(block.parts[i], taken);
    }
  }
}
