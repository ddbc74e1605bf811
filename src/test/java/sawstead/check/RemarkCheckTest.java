package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.station.Remark;
import sawstead.station.Station;

class RemarkCheckTest {
  private static Outcome judge(Remark... remarks) {
    Station station =
        new Station(
            Sample.brief(),
            Optional.empty(),
            Map.of(),
            Map.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Map.of(),
            List.of(),
            List.of(remarks));
    return new RemarkCheck().judge(new Scene(station));
  }

  private static Remark remark(Remark.Weight weight, String about) {
    return new Remark(
        weight, "joint-short", List.of(about), about + " is short", "buy longer ones");
  }

  @Test
  void judge_ofRemarksOfOneKind_isOneFinding() {
    Outcome outcome =
        judge(
            remark(Remark.Weight.MIND, "a"),
            remark(Remark.Weight.MIND, "b"),
            remark(Remark.Weight.MIND, "c"));
    assertEquals(List.of("mind joint-short"), Sample.rules(outcome));
    assertEquals(List.of("a", "b", "c"), outcome.findings().get(0).about());
    assertEquals("a is short (and 2 more of this kind)", outcome.findings().get(0).says());
  }

  @Test
  void judge_ofRemarksThatForbidCutting_keepsEach() {
    Outcome outcome = judge(remark(Remark.Weight.STOP, "a"), remark(Remark.Weight.STOP, "b"));
    assertEquals(List.of("stop joint-short", "stop joint-short"), Sample.rules(outcome));
  }

  @Test
  void judge_ofTheSameRemarkTwice_saysItOnce() {
    Outcome outcome = judge(remark(Remark.Weight.MIND, "a"), remark(Remark.Weight.MIND, "a"));
    assertEquals("a is short", outcome.findings().get(0).says());
  }

  @Test
  void judge_ofARemarkWithoutARemedy_hasOne() {
    Outcome outcome = judge(new Remark(Remark.Weight.NOTE, "so", List.of("a"), "it is so", ""));
    assertTrue(outcome.findings().get(0).remedy().contains("nothing"));
  }
}
