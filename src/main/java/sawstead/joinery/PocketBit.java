package sawstead.joinery;

/**
 * Geometry of a pocket hole at {@link #SLANT} degrees to the face that leaves the end of a board in
 * the middle of its thickness (REF-TRD-04, REF-TRD-05), mm.
 *
 * @param thickness of the board, mm
 */
record PocketBit(double thickness) {
  /** Angle between the bit and the face, degrees (REF-TRD-04). */
  static final double SLANT = 15;

  /** Diameter of the bit, mm: 3/8 in (REF-TRD-04). */
  static final double DIAMETER = 9.525;

  /** Wood left between the pocket's floor and the end, along the bit, at least, mm. */
  static final double LEAST_WEB = 10;

  /** The middle of the floor lies at least this deep under the face, mm (common practice). */
  private static final double LEAST_SEAT = 3;

  static final double COS = Math.cos(Math.toRadians(SLANT));
  static final double SIN = Math.sin(Math.toRadians(SLANT));

  /** Where the bit's axis meets the face, from the end of the board: (t/2) / tan 15. */
  double entry() {
    return thickness / 2 / SIN * COS;
  }

  /** From there along the bit to the end of the board: (t/2) / sin 15. */
  double run() {
    return thickness / 2 / SIN;
  }

  /** The thickest web that still has the head's seat under the face. */
  double greatestWeb() {
    return run() - LEAST_SEAT / SIN;
  }

  /**
   * The web for a screw: {@link #LEAST_WEB}, or as much as keeps its tip {@link
   * ScrewShelf#TIP_COVER} short of the mate's far side.
   *
   * @param length of the screw, mm
   * @param mate wood of the mate square to the end, mm
   */
  double web(double length, double mate) {
    return Math.max(LEAST_WEB, length - (mate - ScrewShelf.TIP_COVER) / COS);
  }

  /** How far a screw goes into the mate, square to the end: (S - web) cos 15. */
  static double into(double length, double web) {
    return (length - web) * COS;
  }

  /** How far its tip is beside the middle of the thickness: (S - web) sin 15. */
  static double aside(double length, double web) {
    return (length - web) * SIN;
  }
}
