package sawstead.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sawstead.brief.InsertWish;
import sawstead.brief.OwnedBlade;
import sawstead.brief.Saw;
import sawstead.brief.Sheet;

/** Reads {@code inserts}. A blank is the thinnest sheet that leaves a rim on the throat's ledge. */
final class InsertsMapper {

  /** Wood of a blank beyond the depth of the ledge (common practice, no source). */
  private static final double BEYOND_LEDGE = 1;

  private final Section brief;
  private final Saw saw;
  private final List<OwnedBlade> blades;
  private final SheetNames sheets;

  InsertsMapper(Section brief, Saw saw, List<OwnedBlade> blades, SheetNames sheets) {
    this.brief = brief;
    this.saw = saw;
    this.blades = blades;
    this.sheets = sheets;
  }

  List<InsertWish> inserts() {
    Duplicates ids = new Duplicates();
    List<InsertWish> inserts = new ArrayList<>();
    for (Section insert : brief.sections("inserts")) {
      inserts.add(
          new InsertWish(
              ids.fresh(insert, "id"),
              blade(insert),
              sheets.named(insert, "sheet").orElseGet(this::blank),
              insert.measure("fit"),
              insert.flag("knifeSlot")));
    }
    return inserts;
  }

  private String blade(Section insert) {
    List<String> known = blades.stream().map(OwnedBlade::id).toList();
    String mounted =
        blades.stream().filter(OwnedBlade::mounted).map(OwnedBlade::id).findFirst().orElse("");
    String id = insert.text("blade").orElse(mounted);
    if (!known.contains(id) && !insert.reading().problems().hasBelow("blades")) {
      insert.problem(
          "blade",
          "no blade is called `" + id + "`",
          "write " + Nearest.to(id, known).orElse(String.join(" or ", known)));
    }
    return id;
  }

  private String blank() {
    double least = saw.throat().ledge().nominal() + BEYOND_LEDGE;
    return sheets.sheets().stream()
        .filter(s -> s.thickness().nominal() >= least)
        .min(Comparator.comparingDouble(s -> s.thickness().nominal()))
        .map(Sheet::name)
        .orElse(sheets.standard());
  }
}
