package sawstead.check;

import java.util.ArrayList;
import java.util.List;

/**
 * What one check has to say.
 *
 * @param findings in any order
 * @param margins in any order
 */
record Outcome(List<Finding> findings, List<Margin> margins) {
  Outcome {
    findings = List.copyOf(findings);
    margins = List.copyOf(margins);
  }

  static Outcome of(List<Finding> findings) {
    return new Outcome(findings, List.of());
  }

  /** Gathers while a check looks round. */
  static final class Notes {
    private final List<Finding> findings = new ArrayList<>();
    private final List<Margin> margins = new ArrayList<>();

    void add(Finding finding) {
      findings.add(finding);
    }

    void add(Margin margin) {
      margins.add(margin);
    }

    Outcome outcome() {
      return new Outcome(findings, margins);
    }
  }
}
