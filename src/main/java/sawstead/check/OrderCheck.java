package sawstead.check;

import java.util.Comparator;
import java.util.List;
import sawstead.assembly.BuildPlan;

/**
 * {@code order-impossible} (stop): some parts cannot be put on in any order, by translations of the
 * groups, units and single parts that were tried. It says what is in the way of each; a part that
 * leaves only tipped is found, too; {@code order-undecided} (mind): neither an order nor its
 * absence was proven.
 */
final class OrderCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    List<BuildPlan.Stuck> stuck = scene.plan().stuck();
    if (stuck.isEmpty()) {
      return Outcome.of(List.of());
    }
    BuildPlan.Stuck first =
        stuck.stream()
            .min(
                Comparator.comparingDouble(BuildPlan.Stuck::lacks)
                    .thenComparing(x -> x.behind().size()))
            .orElseThrow();
    List<String> names = stuck.stream().map(BuildPlan.Stuck::name).toList();
    String remedy =
        "make "
            + Words.some(first.behind())
            + " removable, or leave it out: then "
            + first.name()
            + " has a way"
            + (Double.isFinite(first.lacks())
                ? "; or make that way "
                    + scene.words().length(first.lacks())
                    + " "
                    + first.opening()
                : "");
    boolean decided = stuck.stream().allMatch(BuildPlan.Stuck::decided);
    return Outcome.of(
        List.of(
            decided
                ? Finding.general(
                    Severity.STOP,
                    "order-impossible",
                    names,
                    "no order of building was found for "
                        + Words.some(names)
                        + ": there is no way without tilting past each other, and none was found with it",
                    remedy)
                : Finding.general(
                    Severity.MIND,
                    "order-undecided",
                    names,
                    "no order of building was found for "
                        + Words.some(names)
                        + ", nor proven that there is none",
                    "try it in a dry fit, or " + remedy)));
  }
}
