package sawstead.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sawstead.solid.Body;
import sawstead.solid.Vec;
import sawstead.station.Remark;

/**
 * Passes on what the units said about their own design, under their rules and weights. Remarks of
 * one rule that forbid nothing and ask for the same remedy become one finding: twelve joints that
 * want a longer screw are one walk to the shop.
 */
final class RemarkCheck implements Check {
  private record Kind(Remark.Weight weight, String rule, String remedy, String own) {}

  @Override
  public Outcome judge(Scene scene) {
    Map<Kind, List<Remark>> kinds = new LinkedHashMap<>();
    for (Remark remark : new LinkedHashSet<>(scene.station().remarks())) {
      kinds.computeIfAbsent(kind(remark), k -> new ArrayList<>()).add(remark);
    }
    return Outcome.of(kinds.values().stream().map(r -> finding(scene, r)).toList());
  }

  private static Kind kind(Remark remark) {
    boolean alone = remark.grave() == Remark.Weight.STOP;
    String own = alone ? remark.says() + remark.about() : "";
    return new Kind(remark.grave(), remark.rule(), remark.remedy(), own);
  }

  private static Finding finding(Scene scene, List<Remark> remarks) {
    Remark first = remarks.get(0);
    Set<String> about = new LinkedHashSet<>();
    remarks.forEach(r -> about.addAll(r.about()));
    String more =
        remarks.size() == 1 ? "" : " (and " + (remarks.size() - 1) + " more of this kind)";
    Severity severity =
        switch (first.grave()) {
          case STOP -> Severity.STOP;
          case MIND -> Severity.MIND;
          case NOTE -> Severity.NOTE;
        };
    return new Finding(
        severity,
        first.rule(),
        List.copyOf(about),
        place(scene, about),
        first.says() + more,
        first.remedy().isBlank() ? "nothing need be done" : first.remedy());
  }

  private static Optional<Vec> place(Scene scene, Set<String> about) {
    return about.stream().flatMap(id -> scene.body(id).map(Body::centroid).stream()).findFirst();
  }
}
