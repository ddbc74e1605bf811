package sawstead.cli;

/** Starts Sawstead from the command line. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.out.println("sawstead");
  }
}
