package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FindingTest {
  @Test
  void new_withoutWords_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> finding(Severity.STOP, "clash", " ", "do"));
    assertThrows(IllegalArgumentException.class, () -> finding(Severity.STOP, "clash", "is", ""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "Clash", "screw edge", "screw_edge", "-screw", "screw-", "screw--edge"})
  void new_withARuleThatIsNoCode_isRefused(String rule) {
    assertThrows(
        IllegalArgumentException.class, () -> finding(Severity.NOTE, rule, "it is so", "do it"));
  }

  @Test
  void worstFirst_ordersBySeverityThenRule() {
    List<Finding> findings =
        new ArrayList<>(
            List.of(
                finding(Severity.NOTE, "dust", "a", "b"),
                finding(Severity.STOP, "tips", "a", "b"),
                finding(Severity.MIND, "vac-air", "a", "b"),
                finding(Severity.STOP, "clash", "a", "b")));
    findings.sort(Finding.WORST_FIRST);
    assertEquals(
        List.of("clash", "tips", "vac-air", "dust"), findings.stream().map(Finding::rule).toList());
  }

  @Test
  void word_ofEachSeverity_isTheReports() {
    assertEquals("stop", Severity.STOP.word());
    assertEquals("mind", Severity.MIND.word());
    assertEquals("note", Severity.NOTE.word());
  }

  private static Finding finding(Severity severity, String rule, String says, String remedy) {
    return new Finding(severity, rule, List.of("x"), Optional.empty(), says, remedy);
  }
}
