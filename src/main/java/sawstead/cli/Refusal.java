package sawstead.cli;

import java.util.List;

/** Carries what is wrong with the input to the one place that prints it. */
final class Refusal extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Trouble> troubles;

  Refusal(List<Trouble> troubles) {
    super(troubles.get(0).what());
    this.troubles = List.copyOf(troubles);
  }

  List<Trouble> troubles() {
    return troubles;
  }
}
