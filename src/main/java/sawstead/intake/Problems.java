package sawstead.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects what is wrong with a brief, so that one run reports it all. The first word on a path is
 * kept: whoever comes later has usually stumbled over the same stone.
 */
final class Problems {

  private static final int MOST = 100;

  private final List<BriefProblem> found = new ArrayList<>();
  private final Set<String> paths = new HashSet<>();

  void add(int line, String path, String what, String remedy) {
    if (paths.add(path)) {
      found.add(new BriefProblem(line, path, what, remedy));
    }
  }

  /** Whether there is a problem at a section around this path. */
  boolean hasAbove(String path) {
    for (int i = path.length() - 1; i > 0; i--) {
      boolean joint = path.charAt(i) == '.' || path.charAt(i) == '[';
      if (joint && paths.contains(path.substring(0, i))) {
        return true;
      }
    }
    return false;
  }

  /** Whether there is a problem at this path or below it. */
  boolean hasBelow(String path) {
    return paths.stream()
        .anyMatch(
            other ->
                other.equals(path)
                    || path.isEmpty()
                    || other.startsWith(path + ".")
                    || other.startsWith(path + "["));
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  /** In the order of the file, the first hundred. */
  List<BriefProblem> inOrder() {
    return found.stream()
        .sorted(Comparator.comparingInt(BriefProblem::line).thenComparing(BriefProblem::path))
        .limit(MOST)
        .toList();
  }
}
