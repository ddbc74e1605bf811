package sawstead.layout.packing;

/**
 * What a load may cost at most.
 *
 * @param counted most sheets that count
 * @param price highest total price, in money steps
 */
record Goal(int counted, long price) {
  static final Goal NONE = new Goal(Integer.MAX_VALUE, Long.MAX_VALUE);

  boolean admits(Load load) {
    return load.counted <= counted && load.price <= price;
  }

  /** Whether one more sheet of this kind may be opened. */
  boolean admits(Load load, int kind) {
    SheetKind sheet = load.problem.sheets().get(kind);
    if (sheet.counted() && load.counted + 1 > counted) {
      return false;
    }
    if (load.price > price - sheet.price()) {
      return false;
    }
    return sheet.supply() == SheetKind.ENDLESS || load.used(kind) < sheet.supply();
  }
}
