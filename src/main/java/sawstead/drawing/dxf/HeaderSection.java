package sawstead.drawing.dxf;

/**
 * Version, units, bounds and the next free handle (REF-FIL-03 to REF-FIL-05). R12 has no variable
 * for the unit, so a comment says it there.
 */
final class HeaderSection {
  private final Tags tags;

  HeaderSection(Tags tags) {
    this.tags = tags;
  }

  void write(Extents extents, DxfUnit unit, Handles handles) {
    DxfVersion version = tags.version();
    tags.put(999, "Sawstead, unit " + unit.symbol());
    tags.put(0, "SECTION").put(2, "HEADER");
    variable("$ACADVER").put(1, version.code());
    if (version.isLinked()) {
      variable("$DWGCODEPAGE").put(3, "ANSI_1252");
      variable("$HANDSEED").put(5, handles.seed());
      variable("$INSUNITS").put(70, unit.insertionUnits());
      variable("$MEASUREMENT").put(70, unit.measurement());
    }
    double lowU = unit.from(extents.lowU());
    double lowV = unit.from(extents.lowV());
    double highU = unit.from(extents.highU());
    double highV = unit.from(extents.highV());
    variable("$EXTMIN").putPoint(10, lowU, lowV);
    variable("$EXTMAX").putPoint(10, highU, highV);
    variable("$LIMMIN").putFlatPoint(10, lowU, lowV);
    variable("$LIMMAX").putFlatPoint(10, highU, highV);
    variable("$LUNITS").put(70, 2);
    tags.put(0, "ENDSEC");
  }

  private Tags variable(String name) {
    return tags.put(9, name);
  }
}
