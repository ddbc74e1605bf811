package sawstead.layout.packing;

import java.util.Arrays;

/**
 * A rectangle of a sheet being planned: either one piece, or a group of blocks that follow one
 * another and share their extent across. What is left of a group's extent is its slack, a free
 * rectangle at the group's end. Groups in groups alternate in direction.
 *
 * <p>Because waste is kept as one number per group, pieces can be taken out and put in anywhere
 * without ever losing the property that the sheet can be cut apart from edge to edge.
 */
final class Block {
  /** Kind of a block that is a group. */
  static final int GROUP = -1;

  final int kind;
  final boolean turned;

  /** Direction in which the blocks of a group follow one another; unused for a piece. */
  final boolean alongLength;

  int length;
  int width;
  int slack;
  Block parent;
  Block[] parts;
  int count;

  /** The copy made last of this block; tells where a place found before copying is after it. */
  Block twin;

  private Block(int kind, boolean turned, boolean alongLength, int length, int width) {
    this.kind = kind;
    this.turned = turned;
    this.alongLength = alongLength;
    this.length = length;
    this.width = width;
  }

  static Block piece(int kind, boolean turned, int length, int width) {
    return new Block(kind, turned, false, length, width);
  }

  /** An empty group: all slack. */
  static Block group(boolean alongLength, int length, int width) {
    Block group = new Block(GROUP, false, alongLength, length, width);
    group.slack = alongLength ? length : width;
    group.parts = new Block[4];
    return group;
  }

  boolean isGroup() {
    return kind == GROUP;
  }

  /** Extent in the given direction. */
  int extent(boolean along) {
    return along ? length : width;
  }

  /** Extent shared by all blocks of this group. */
  int cross() {
    return alongLength ? width : length;
  }

  /** How far this group's slack could be widened into the slack of the group around it. */
  int beyond() {
    return parent == null || count == 0 ? 0 : parent.slack;
  }

  /** Appends a block and takes its extent from the slack. */
  void add(Block block) {
    if (count == parts.length) {
      parts = Arrays.copyOf(parts, count * 2);
    }
    parts[count++] = block;
    block.parent = this;
    slack -= block.extent(alongLength);
  }

  /** Takes a block out and gives its extent back to the slack. */
  void remove(Block block) {
    int at = indexOf(block);
    System.arraycopy(parts, at + 1, parts, at, count - at - 1);
    parts[--count] = null;
    block.parent = null;
    slack += block.extent(alongLength);
  }

  /** Puts the only block of a full group, or that block's own blocks, in the group's place. */
  void dissolve(Block inner) {
    Block only = inner.parts[0];
    int at = indexOf(inner);
    inner.parent = null;
    if (!only.isGroup()) {
      parts[at] = only;
      only.parent = this;
      return;
    }
    System.arraycopy(parts, at + 1, parts, at, count - at - 1);
    parts[--count] = null;
    slack += inner.extent(alongLength);
    for (int i = 0; i < only.count; i++) {
      add(only.parts[i]);
    }
  }

  private int indexOf(Block block) {
    for (int i = 0; i < count; i++) {
      if (parts[i] == block) {
        return i;
      }
    }
    throw new IllegalStateException("block is not in its group");
  }

  /** A deep copy without parent. */
  Block copy() {
    Block copy = new Block(kind, turned, alongLength, length, width);
    twin = copy;
    copy.slack = slack;
    copy.count = count;
    if (parts != null) {
      copy.parts = new Block[Math.max(4, parts.length)];
      for (int i = 0; i < count; i++) {
        Block part = parts[i].copy();
        part.parent = copy;
        copy.parts[i] = part;
      }
    }
    return copy;
  }
}
