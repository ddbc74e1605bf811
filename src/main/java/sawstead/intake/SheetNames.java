package sawstead.intake;

import java.util.List;
import java.util.Optional;
import sawstead.brief.Sheet;

/** Knows the sheets of a brief, and refuses names that are none. */
record SheetNames(List<Sheet> sheets) {

  SheetNames {
    sheets = List.copyOf(sheets);
  }

  /**
   * The name of a sheet under a key, if there is one; a problem is noted if no sheet is called so.
   */
  Optional<String> named(Section section, String key) {
    Optional<String> name = section.text(key);
    boolean stockIsBad = section.reading().problems().hasBelow("stock");
    if (name.isPresent() && find(name.get()).isEmpty() && !stockIsBad) {
      List<String> known = sheets.stream().map(Sheet::name).toList();
      section.problem(
          key,
          "no sheet in stock is called `" + name.get() + "`",
          "write " + Nearest.to(name.get(), known).orElse(String.join(" or ", known)));
    }
    return name;
  }

  Optional<Sheet> find(String name) {
    return sheets.stream().filter(sheet -> sheet.name().equals(name)).findFirst();
  }

  /** The first sheet's name, which is used where none is named. */
  String standard() {
    return sheets.isEmpty() ? "" : sheets.get(0).name();
  }

  /** The longest sheet, mm. */
  double longest() {
    return sheets.stream()
        .mapToDouble(sheet -> Math.max(sheet.length().nominal(), sheet.width().nominal()))
        .max()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
