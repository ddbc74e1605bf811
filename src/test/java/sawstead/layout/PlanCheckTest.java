package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A good plan made by hand, and every way to spoil it. */
class PlanCheckTest {
  private static final double KERF = 3;

  private static CutRequest request(Grain grain) {
    return new CutRequest(
        List.of(new Board("board", 18, 685)),
        List.of(
            new Part("side", 500, 200, 1, grain, "board", "hand"),
            new Part("shelf", 400, 200, 1, Grain.FREE, "board", "hand")),
        List.of(new Stock("sheet", "board", 1000, 400, 1, 0, 10, false, "hand")),
        Kerfs.both(KERF),
        SawLimits.SMALL_SAW);
  }

  private static Cut cut(int order, Direction along, double at, double from, double to) {
    return new Cut(order, Guide.RAIL, along, at, from, to, OptionalDouble.empty());
  }

  private static final List<PlacedPiece> PIECES =
      List.of(
          new PlacedPiece("side", 10, 10, 500, 200, false),
          new PlacedPiece("shelf", 513, 10, 400, 200, false));

  private static final List<Cut> CUTS =
      List.of(
          cut(1, Direction.LENGTH, 7, 0, 1000),
          cut(2, Direction.WIDTH, 7, 10, 400),
          cut(3, Direction.LENGTH, 210, 10, 1000),
          cut(4, Direction.WIDTH, 510, 10, 210),
          cut(5, Direction.WIDTH, 913, 10, 210));

  private static CutPlan plan(List<PlacedPiece> pieces, List<Cut> cuts) {
    SheetPlan sheet = new SheetPlan("sheet", 1000, 400, pieces, cuts);
    return new CutPlan(1, 1, 0, List.of(sheet), 0, List.of(), List.of(), List.of(), false);
  }

  private static List<PlacedPiece> with(int at, PlacedPiece piece) {
    List<PlacedPiece> pieces = new ArrayList<>(PIECES);
    pieces.set(at, piece);
    return pieces;
  }

  private static List<Cut> cuts(int at, Cut cut) {
    List<Cut> cuts = new ArrayList<>(CUTS);
    cuts.set(at, cut);
    return cuts;
  }

  private static void assertFault(Grain grain, List<PlacedPiece> pieces, List<Cut> cuts, String f) {
    List<String> faults = PlanCheck.faults(request(grain), plan(pieces, cuts));
    assertTrue(faults.stream().anyMatch(text -> text.contains(f)), faults.toString());
  }

  @Test
  void goodPlan_hasNoFault() {
    assertEquals(List.of(), PlanCheck.faults(request(Grain.ALONG), plan(PIECES, CUTS)));
  }

  @Test
  void missingPiece_isFound() {
    assertFault(Grain.ALONG, PIECES.subList(0, 1), CUTS, "1 of part shelf are missing");
  }

  @Test
  void pieceGivenTwice_isFound() {
    List<PlacedPiece> twice = new ArrayList<>(PIECES);
    twice.add(PIECES.get(0));
    assertFault(Grain.ALONG, twice, CUTS, "nobody asked for");
    assertFault(Grain.ALONG, twice, CUTS, "too near");
  }

  @Test
  void pieceOfWrongSize_isFound() {
    List<PlacedPiece> pieces = with(0, new PlacedPiece("side", 10, 10, 499, 200, false));
    assertFault(Grain.ALONG, pieces, CUTS, "nobody asked for");
    assertFault(Grain.ALONG, pieces, CUTS, "no cut frees side");
  }

  @Test
  void piecesNearerThanAKerf_areFound() {
    List<PlacedPiece> pieces = with(1, new PlacedPiece("shelf", 511, 10, 400, 200, false));
    assertFault(Grain.ALONG, pieces, CUTS, "too near");
  }

  @Test
  void pieceInTheTrim_isFound() {
    List<PlacedPiece> pieces = with(0, new PlacedPiece("side", 9, 10, 500, 200, false));
    assertFault(Grain.ALONG, pieces, CUTS, "reaches into the trim");
  }

  @Test
  void grainAcross_whenLaidAlong_isFound() {
    assertFault(Grain.ACROSS, PIECES, CUTS, "1 of part side are missing");
  }

  @Test
  void turnedFlagThatLies_isFound() {
    List<PlacedPiece> pieces = with(0, new PlacedPiece("side", 10, 10, 500, 200, true));
    assertFault(Grain.FREE, pieces, CUTS, "nobody asked for");
  }

  @Test
  void cutThatStopsShort_isFound() {
    assertFault(
        Grain.ALONG,
        PIECES,
        cuts(3, cut(4, Direction.WIDTH, 510, 10, 200)),
        "cut 4 on sheet 1 does not run from edge to edge");
  }

  @Test
  void cutThroughAPiece_isFound() {
    assertFault(
        Grain.ALONG, PIECES, cuts(3, cut(4, Direction.WIDTH, 505, 10, 210)), "no cut frees side");
  }

  @Test
  void cutsInAnImpossibleOrder_areFound() {
    List<Cut> cuts = cuts(2, cut(4, Direction.LENGTH, 210, 10, 1000));
    cuts.set(3, cut(3, Direction.WIDTH, 510, 10, 210));
    assertFault(Grain.ALONG, PIECES, cuts, "does not run from edge to edge");
  }

  @Test
  void cutLeftOut_isFound() {
    assertFault(Grain.ALONG, PIECES, CUTS.subList(0, 4), "no cut frees shelf");
  }

  @Test
  void numberGivenTwice_isFound() {
    assertFault(
        Grain.ALONG, PIECES, cuts(4, cut(4, Direction.WIDTH, 913, 10, 210)), "cut number 5");
  }

  @Test
  void moreSheetsThanThereAre_isFound() {
    SheetPlan sheet = new SheetPlan("sheet", 1000, 400, List.of(), List.of());
    CutPlan plan =
        new CutPlan(1, 2, 0, List.of(sheet, sheet), 0, List.of(), List.of(), List.of(), false);
    assertTrue(PlanCheck.faults(request(Grain.ALONG), plan).toString().contains("there are not 2"));
  }
}
