package sawstead.layout.sheet;

import sawstead.layout.Guide;

/** A rectangle on a sheet, mm from the sheet's lower left corner, x along its length. */
sealed interface Shape {
  double x();

  double y();

  double length();

  double width();

  /** A finished panel. */
  record Panel(String name, double x, double y, double length, double width) implements Shape {}

  /** A defect of the sheet. */
  record Flaw(double x, double y, double length, double width) implements Shape {}

  /** Worth keeping. */
  record Rest(double x, double y, double length, double width) implements Shape {}

  /**
   * What a blade turns to dust.
   *
   * @param order number of the cut
   * @param guide what leads it
   * @param setting of fence or stop, mm; NaN along the rail
   * @param alongLength whether it runs along the sheet's length
   */
  record Kerf(
      int order,
      Guide guide,
      double setting,
      boolean alongLength,
      double x,
      double y,
      double length,
      double width)
      implements Shape {}
}
