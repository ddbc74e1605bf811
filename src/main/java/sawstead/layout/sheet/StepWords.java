package sawstead.layout.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sawstead.brief.GoodSide;
import sawstead.check.Words;
import sawstead.layout.Carry;
import sawstead.layout.Direction;
import sawstead.layout.Guide;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.CutPiece;
import sawstead.layout.shop.ShopStep;
import sawstead.measure.LengthFormat;
import sawstead.measure.Unit;

/**
 * What the shop sheet says of a cut, and what must be minded at it. The rules of safety are common
 * practice, no source; those of the saw's manual come first.
 */
final class StepWords {
  /** Below this between fence and blade the hand stays away, mm. */
  private static final double PUSH_BLOCK = 150;

  /** A mark nearer to the edge than this only straightens the edge, mm. */
  private static final double TRIM = 20;

  private final Breakdown breakdown;
  private final Words words;

  StepWords(Breakdown breakdown) {
    this.breakdown = breakdown;
    this.words = breakdown.words();
  }

  /** Which face lies up or down at a cut; empty when it does not matter. */
  String face(ShopStep step) {
    if (step.isSellers()) {
      return "";
    }
    GoodSide good = breakdown.good(step.sheet());
    return step.isMarked() ? good.atGuidedSaw() : good.atTableSaw();
  }

  /** The same after other words. */
  String thenFace(ShopStep step) {
    String face = face(step);
    return face.isEmpty() ? "" : ", " + face;
  }

  /** A length in the user's units, and in mm beside it for users of inches. */
  String both(double millimetres) {
    String own = words.length(millimetres);
    return words.unit() == Unit.MM
        ? own
        : own + String.format(Locale.ROOT, " (%.1f mm)", millimetres);
  }

  /** Length by width in the user's units. */
  String size(CutPiece piece) {
    return words.length(piece.length()) + " x " + words.length(piece.width());
  }

  /** Where fence or stop stand. */
  String setting(ShopStep step) {
    String at = both(step.cut().setting().orElse(0));
    return switch (step.cut().guide()) {
      case SELLER -> "at the seller's";
      case RAIL, PACKED_RAIL -> "guided saw";
      case FENCE -> "fence at " + at;
      case SLED -> "sled, stop at " + at;
    };
  }

  /** Which tool, for a heading. */
  String tool(ShopStep step) {
    return switch (step.cut().guide()) {
      case SELLER -> "At the seller's, before it goes home";
      case RAIL, PACKED_RAIL -> "Guided saw, work flat on the floor";
      case FENCE -> "Table saw, fence";
      case SLED -> "Table saw, sled";
    };
  }

  /** What to mind at such cuts, one line. */
  String safety(ShopStep step) {
    return switch (step.cut().guide()) {
      case SELLER ->
          "rough: "
              + words.length(breakdown.request().carry().map(Carry::oversize).orElse(0.0))
              + " is cut away again on both sides; check the first piece before the next cut";
      case RAIL, PACKED_RAIL ->
          "boards under both sides, rail clamped; the blade runs beyond the mark";
      case FENCE ->
          "guard and knife on; stand aside of the kerf"
              + (step.cut().setting().orElse(0) < PUSH_BLOCK
                  ? "; push block, no hand beside the blade"
                  : "");
      case SLED -> "stop block on the sled, never the fence as a stop; hands 150 mm away";
    };
  }

  /** The same in few words, for a narrow column. */
  String mark(ShopStep step) {
    boolean along = step.cut().along() == Direction.LENGTH;
    String mark = where(step, along ? "bottom" : "left");
    return mark + (step.cut().guide() == Guide.PACKED_RAIL ? ", strip beside it" : "");
  }

  private String where(ShopStep step, String edge) {
    if (step.rough() && step.mark() < TRIM && step.near().kind() == CutPiece.Kind.WASTE) {
      return "trim " + words.length(step.mark() + step.kerf()) + " off " + edge;
    }
    if (step.mark() < 0.5) {
      return "run the blade off " + edge;
    }
    if (step.isSellers()) {
      return coarse(step.mark()) + " from " + edge;
    }
    return step.rough()
        ? "rough, " + coarse(step.mark()) + " from " + edge
        : both(step.mark()) + " from " + edge;
  }

  /** As near as a rough cut needs it: 1 mm or 1/16 in. */
  private String coarse(double millimetres) {
    return words.unit() == Unit.MM
        ? words.length(Math.rint(millimetres))
        : LengthFormat.inches(16).withUnit(millimetres);
  }

  /** What a setting wants minded beside what holds for all; empty for nothing. */
  String mind(ShopStep step) {
    return step.cut().guide() == Guide.FENCE && step.cut().setting().orElse(0) < PUSH_BLOCK
        ? "push block"
        : "";
  }

  /** How the work is laid for this cut. */
  String how(ShopStep step) {
    if (!step.isMarked()) {
      return step.work().words() + thenFace(step) + ", " + size(step.work());
    }
    boolean along = step.cut().along() == Direction.LENGTH;
    String mark = where(step, along ? "its lower edge" : "its left end");
    String packed =
        step.cut().guide() == Guide.PACKED_RAIL ? "; strip as thick beside it, clamp" : "";
    return step.work().words() + thenFace(step) + ": " + mark + packed;
  }

  /** What comes off, panels with their size; empty where nothing but waste does. */
  List<CutPiece> comesOff(ShopStep step) {
    List<CutPiece> pieces = new ArrayList<>();
    CutPiece first = step.isMarked() ? step.near() : step.measured();
    CutPiece second = step.isMarked() ? step.far() : step.other();
    for (CutPiece piece : List.of(first, second)) {
      if (piece.kind() != CutPiece.Kind.WASTE) {
        pieces.add(piece);
      }
    }
    return pieces;
  }
}
