package sawstead.intake;

import java.util.Optional;
import sawstead.brief.Blade;
import sawstead.brief.Fence;
import sawstead.brief.FenceKind;
import sawstead.brief.Rail;
import sawstead.brief.SawTable;
import sawstead.measure.Measured;

/** Reads {@code saw.fence}. */
final class FenceMapper {

  private final Section fence;
  private final double leftEdge;
  private final double rightEdge;

  FenceMapper(Section fence, SawTable table, Blade blade) {
    this.fence = fence;
    this.leftEdge = blade.leftEdge().nominal();
    this.rightEdge = table.width().nominal() - leftEdge;
  }

  Fence fence() {
    FenceKind kind = fence.word("kind", FenceKind.class, FenceKind.SLIDING);
    Measured right = fence.measure("right");
    Optional<Rail> front = rail("front", true);
    return new Fence(
        kind,
        right,
        fence.measure("left"),
        fence.measure("width"),
        fence.measure("height"),
        front,
        rail("rear", kind != FenceKind.ONE_END && front.isPresent()),
        runOut(kind, right, front),
        fence.measure("clampOut"),
        fence.measure("clampBelow"));
  }

  private Optional<Rail> rail(String key, boolean unlessTold) {
    Section rail = fence.section(key);
    if (fence.is(key, "none") || !fence.has(key) && !unlessTold) {
      return Optional.empty();
    }
    return Optional.of(
        new Rail(
            rail.measure("out"),
            rail.measure("below"),
            rail.measure("height"),
            rail.measure("left", leftEdge),
            rail.measure("right", rightEdge)));
  }

  private Measured runOut(FenceKind kind, Measured right, Optional<Rail> front) {
    if (kind != FenceKind.EXTENDING) {
      return fence.measure("runOut", 0, 0);
    }
    double end = front.map(rail -> rail.right().nominal()).orElse(rightEdge);
    return fence.measure("runOut", Math.max(0, right.nominal() - end));
  }
}
