package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.GoodSide;
import sawstead.brief.Sheet;
import sawstead.brief.SheetDefect;
import sawstead.brief.SheetOffcut;
import sawstead.measure.LengthFormat;
import sawstead.measure.Measured;
import sawstead.measure.Measured.Origin;

/** Reads the {@code stock} section. */
final class StockMapper {

  private final Section brief;

  StockMapper(Section brief) {
    this.brief = brief;
  }

  List<Sheet> sheets() {
    Duplicates names = new Duplicates();
    List<Sheet> sheets = new ArrayList<>();
    for (Section sheet : brief.sections("stock")) {
      Measured thickness = thickness(sheet);
      sheets.add(
          new Sheet(
              names.fresh(sheet, "name"),
              sheet.measure("length"),
              sheet.measure("width"),
              sheet
                  .text("nominal")
                  .orElseGet(
                      () -> LengthFormat.of(brief.reading().units()).withUnit(thickness.nominal())),
              thickness,
              sheet.measure("density"),
              sheet.text("grain").filter("width"::equals).isEmpty(),
              sheet.word("good", GoodSide.class),
              sheet.number("price"),
              sheet.measure("trim"),
              sheet.number("quantity").map(Double::intValue),
              offcuts(sheet, names)));
    }
    return sheets;
  }

  private static List<SheetOffcut> offcuts(Section sheet, Duplicates names) {
    List<SheetOffcut> offcuts = new ArrayList<>();
    for (Section offcut : sheet.sections("offcuts")) {
      offcuts.add(
          new SheetOffcut(
              names.fresh(offcut, "name"),
              offcut.plain("length"),
              offcut.plain("width"),
              offcut.plain("trim"),
              defects(offcut)));
    }
    return offcuts;
  }

  private static List<SheetDefect> defects(Section offcut) {
    List<SheetDefect> defects = new ArrayList<>();
    for (Section defect : offcut.sections("defects")) {
      defects.add(
          new SheetDefect(
              defect.plain("x"), defect.plain("y"), defect.plain("length"), defect.plain("width")));
    }
    return defects;
  }

  private static Measured thickness(Section sheet) {
    MeasureReader reader = sheet.measureOf("thickness");
    if (reader.isGiven()) {
      return reader.value(Fallback.none());
    }
    Optional<NominalThickness> nominal =
        sheet.text("nominal").flatMap(text -> NominalThickness.of(text, sheet.reading().units()));
    if (nominal.isEmpty()) {
      sheet.problem(
          "thickness",
          "the thickness of this sheet is not given, and its nominal thickness does not tell it",
          "measure it, or write `nominal: 18 mm` or `nominal: 3/4`");
      return Measured.of(sheet.pathOf("thickness"), 18);
    }
    NominalThickness band = nominal.get();
    return new Measured(
        sheet.pathOf("thickness"),
        band.nominal(),
        band.minus(),
        band.plus(),
        sheet.is("thickness", "unknown") ? Origin.UNKNOWN : Origin.DEFAULT);
  }
}
