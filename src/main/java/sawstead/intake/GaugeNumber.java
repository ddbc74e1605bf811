package sawstead.intake;

/** Reads the gauge number of a wood screw. */
final class GaugeNumber {
  /** Beyond ten only even numbers are made (REF-FAS-12). */
  private static final int LAST_ODD = 10;

  private GaugeNumber() {}

  /** The number; notes a problem if no screw has it, and reads on with the next smaller one. */
  static int of(Section screw) {
    int number = screw.count("gauge");
    if (number <= LAST_ODD || number % 2 == 0) {
      return number;
    }
    screw.problem(
        "gauge",
        "no wood screw has the number " + number,
        "write 4 to 10, 12 or 14, as on its box");
    return number - 1;
  }
}
