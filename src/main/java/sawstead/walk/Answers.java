package sawstead.walk;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sawstead.measure.Unit;

/** The answers so far, in the order in which they were given. */
final class Answers {
  private final Map<String, Answer> byPath = new LinkedHashMap<>();

  Answers(Collection<Answer> answers) {
    answers.forEach(a -> byPath.put(a.path(), a));
  }

  List<Answer> all() {
    return List.copyOf(byPath.values());
  }

  Optional<Answer> at(String path) {
    return Optional.ofNullable(byPath.get(path));
  }

  boolean has(String path) {
    return byPath.containsKey(path);
  }

  /** What the brief says at a path; empty if it is not answered or left out. */
  String written(String path) {
    return at(path).map(Answer::written).orElse("");
  }

  /** That of the tape in hand, as far as it is known. */
  Unit unit() {
    return Unit.of(written("units")).orElse(Unit.MM);
  }

  Answers with(Answer answer) {
    Answers more = new Answers(byPath.values());
    more.byPath.put(answer.path(), answer);
    return more;
  }

  /** Without a thing and all that was answered about what is in it. */
  Answers without(String path) {
    List<Answer> kept =
        byPath.values().stream()
            .filter(a -> !a.path().equals(path))
            .filter(a -> !a.path().startsWith(path + ".") && !a.path().startsWith(path + "["))
            .toList();
    return new Answers(kept);
  }

  /** Without the last one. */
  Answers shorter() {
    List<Answer> all = all();
    return new Answers(all.subList(0, Math.max(0, all.size() - 1)));
  }
}
