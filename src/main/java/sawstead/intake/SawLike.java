package sawstead.intake;

/**
 * Kinds of saws, with what is typical of each: the table of typical saws in the trade notes, common
 * practice, no source. Millimetres and kilograms.
 */
enum SawLike {
  /** A light portable saw with an extending fence. */
  JOBSITE(79, 340, 25, 5),
  /** A small metric bench saw. */
  BENCHTOP(75, 300, 21, 4),
  /** A heavy cast table with a motor that hangs out behind. */
  CONTRACTOR(79, 362, 118, 20);

  final double bladeHeight;
  final double throatLength;
  final double mass;
  final double massBand;

  SawLike(double bladeHeight, double throatLength, double mass, double massBand) {
    this.bladeHeight = bladeHeight;
    this.throatLength = throatLength;
    this.mass = mass;
    this.massBand = massBand;
  }
}
