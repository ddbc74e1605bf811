package sawstead.check;

import java.util.List;
import sawstead.assembly.BuildPlan;

/**
 * {@code order-impossible} (stop): some parts cannot be put on in any order, by translations of the
 * groups, units and single parts that were tried. It says what is in the way of each; a part that
 * would have to be tilted into its place is said to have no way without tilting.
 */
final class OrderCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    List<BuildPlan.Stuck> stuck = scene.plan().stuck();
    if (stuck.isEmpty()) {
      return Outcome.of(List.of());
    }
    BuildPlan.Stuck first =
        stuck.stream().min(java.util.Comparator.comparingInt(s -> s.behind().size())).orElseThrow();
    return Outcome.of(
        List.of(
            Finding.general(
                Severity.STOP,
                "order-impossible",
                stuck.stream().map(BuildPlan.Stuck::name).toList(),
                "no order of building was found for "
                    + Words.some(stuck.stream().map(BuildPlan.Stuck::name).toList())
                    + ": there is no way without tilting past each other",
                "make "
                    + Words.some(first.behind())
                    + " removable, or leave it out: then "
                    + first.name()
                    + " has a way")));
  }
}
