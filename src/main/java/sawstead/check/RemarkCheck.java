package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.Vec;
import sawstead.station.Remark;

/** Passes on what the units said about their own design, under their rules and weights. */
final class RemarkCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    return Outcome.of(
        scene.station().remarks().stream().distinct().map(r -> finding(scene, r)).toList());
  }

  private static Finding finding(Scene scene, Remark remark) {
    Severity severity =
        switch (remark.grave()) {
          case STOP -> Severity.STOP;
          case MIND -> Severity.MIND;
          case NOTE -> Severity.NOTE;
        };
    String remedy = remark.remedy().isBlank() ? "nothing need be done" : remark.remedy();
    return new Finding(
        severity, remark.rule(), remark.about(), place(scene, remark.about()), remark.says(), remedy);
  }

  private static Optional<Vec> place(Scene scene, List<String> about) {
    return about.stream().flatMap(id -> scene.body(id).map(Body::centroid).stream()).findFirst();
  }
}
