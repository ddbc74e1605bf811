package sawstead.house.flawed.cli;

/** The one part of this house that may print, and does. */
final class Door {
  void open() {
    System.out.println("open");
  }
}
