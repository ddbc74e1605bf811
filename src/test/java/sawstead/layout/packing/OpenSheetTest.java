package sawstead.layout.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OpenSheetTest {
  private static final SheetKind SHEET = new SheetKind(100, 60, 1, true, 0);

  @Test
  void insertAndRemove_inAnyOrder_keepTheTreeSound() {
    for (long seed = 1; seed <= 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      OpenSheet sheet = OpenSheet.empty(0, SHEET);
      int[] taken = new int[1];
      for (int step = 0; step < 100; step++) {
        if (random.nextInt(3) > 0) {
          insert(sheet, random);
        } else if (!sheet.pieces.isEmpty()) {
          List<Block> blocks = new ArrayList<>(sheet.pieces);
          blocks.addAll(sheet.groups);
          sheet.remove(blocks.get(random.nextInt(blocks.size())), taken);
        }
        assertSound(sheet, "seed " + seed + ", step " + step);
        assertSound(sheet.copy(), "copy, seed " + seed + ", step " + step);
      }
    }
  }

  private static void insert(OpenSheet sheet, SplittableRandom random) {
    Block group = sheet.groups.get(random.nextInt(sheet.groups.size()));
    if (group.slack == 0) {
      return;
    }
    boolean beyond = group.beyond() > 0 && random.nextBoolean();
    int along = 1 + random.nextInt(group.slack);
    int across =
        beyond
            ? group.cross() + 1 + random.nextInt(group.beyond())
            : 1 + random.nextInt(group.cross());
    int length = group.alongLength ? along : across;
    int width = group.alongLength ? across : along;
    if (beyond) {
      sheet.insertAcross(group, Block.piece(0, false, length, width));
      return;
    }
    sheet.insert(group, Block.piece(0, false, length, width), random.nextBoolean());
  }

  private static void assertSound(OpenSheet sheet, String when) {
    Set<Block> seen = new HashSet<>();
    long area = assertSound(sheet.root, seen, when);
    Set<Block> listed = new HashSet<>(sheet.pieces);
    listed.addAll(sheet.groups);
    assertEquals(seen, listed, when);
    assertEquals(SHEET.area() - area, sheet.free, when);
  }

  private static long assertSound(Block block, Set<Block> seen, String when) {
    assertTrue(seen.add(block), when);
    if (!block.isGroup()) {
      return (long) block.length * block.width;
    }
    long area = 0;
    int sum = block.slack;
    assertTrue(block.slack >= 0, when);
    for (int i = 0; i < block.count; i++) {
      Block part = block.parts[i];
      assertSame(block, part.parent, when);
      assertEquals(block.cross(), part.extent(!block.alongLength), when);
      assertTrue(!part.isGroup() || part.alongLength != block.alongLength, when);
      assertTrue(!part.isGroup() || part.count > 1 || part.slack > 0, when);
      sum += part.extent(block.alongLength);
      area += assertSound(part, seen, when);
    }
    assertEquals(block.extent(block.alongLength), sum, when);
    return area;
  }

  @Test
  void on_largerSheet_leavesTheRestAtTheFarEnd() {
    OpenSheet sheet = OpenSheet.empty(0, SHEET);
    sheet.insert(sheet.root, Block.piece(0, false, 100, 60), true);
    OpenSheet larger = sheet.on(1, new SheetKind(120, 70, 1, true, 0));
    assertEquals(120 * 70 - 100 * 60, larger.free);
    assertEquals(120, larger.root.length);
    assertEquals(70, larger.root.width);
    assertEquals(1, larger.pieces.size());
    assertNotSame(sheet.pieces.get(0), larger.pieces.get(0));
  }
}
