package sawstead.check;

import java.util.List;

/**
 * What is said once to everybody who stands at a saw: {@code kickback}, {@code dust} and {@code
 * electricity} (notes). They defer to the saw's manual, local codes and licensed practice.
 */
final class SafetyCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    if (scene.brief().saw().isEmpty()) {
      return Outcome.of(List.of());
    }
    return Outcome.of(List.of(kickback(), dust(), electricity(scene)));
  }

  /** REF-SAF-01, REF-SAF-04. */
  private static Finding kickback() {
    return Finding.general(
        Severity.NOTE,
        "kickback",
        List.of("saw/guard"),
        "nothing of the station takes the place of guard and riving knife",
        "keep both on for every cut that allows them, and follow the saw's own manual");
  }

  /** REF-SAF-07: limits by law and advice for wood dust, a potential carcinogen. */
  private static Finding dust() {
    return Finding.general(
        Severity.NOTE,
        "dust",
        List.of("saw"),
        "fine wood dust harms lungs, and a vac does not catch all of it",
        "run the vac, wear a mask, and air the room; local rules on wood dust come first");
  }

  /** REF-SAF-11, from memory: backs words, never a verdict. */
  private static Finding electricity(Scene scene) {
    String both = scene.brief().vac().isPresent() ? "saw and vac together" : "a saw";
    return Finding.general(
        Severity.NOTE,
        "electricity",
        List.of("saw"),
        both + " can take more than one circuit gives; long thin cords get hot",
        "compare the plates of the machines with the circuit, and ask an electrician: local codes"
            + " rule");
  }
}
