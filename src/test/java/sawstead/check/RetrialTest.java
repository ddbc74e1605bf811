package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RetrialTest {
  private static Finding finding(Severity severity, String rule, String... about) {
    return new Finding(
        severity, rule, List.of(about), Optional.empty(), rule + " is so", "mend " + rule);
  }

  private static Finding stop(String rule, String... about) {
    return finding(Severity.STOP, rule, about);
  }

  @Test
  void newStops_ofWhatStoodBefore_areNone() {
    List<Finding> before = List.of(stop("screw-edge", "a", "b"), stop("proud", "c"));
    List<Finding> after = List.of(stop("proud", "c"), stop("screw-edge", "b", "a"));
    assertEquals(List.of(), Retrial.newStops(before, after));
  }

  @Test
  void whatWasOnlyToBeMinded_isNewAsAStop() {
    Finding worse = stop("clearance", "lid");
    assertEquals(
        List.of(worse),
        Retrial.newStops(List.of(finding(Severity.MIND, "clearance", "lid")), List.of(worse)));
  }

  @Test
  void secondOfItsKind_isNew() {
    Finding stop = stop("screw-edge", "a", "b");
    assertEquals(List.of(stop), Retrial.newStops(List.of(stop), List.of(stop, stop)));
  }

  @Test
  void stopAboutAnotherBody_isNew_butAboutFewerIsNot() {
    List<Finding> before = List.of(stop("clash", "lid", "shelf"));
    Finding other = stop("clash", "lid", "wall");
    assertEquals(List.of(other), Retrial.newStops(before, List.of(other)));
    assertEquals(List.of(), Retrial.newStops(before, List.of(stop("clash", "lid"))));
  }

  @Test
  void stopAboutFewerBodies_doesNotTakeThePlaceOfTheOneItself() {
    List<Finding> before = List.of(stop("clash", "lid", "shelf"), stop("clash", "lid"));
    List<Finding> after = List.of(stop("clash", "lid"), stop("clash", "shelf", "lid"));
    assertEquals(List.of(), Retrial.newStops(before, after));
  }
}
