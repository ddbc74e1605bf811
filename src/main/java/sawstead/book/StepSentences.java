package sawstead.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sawstead.assembly.Approach;
import sawstead.assembly.BenchStep;
import sawstead.assembly.BuildStep;
import sawstead.assembly.Driving;
import sawstead.assembly.ThingNames;
import sawstead.check.FastenerWords;
import sawstead.check.Report;
import sawstead.check.Words;

/** A step in words: what comes, from where, how it is held, with what, and what to mind. */
final class StepSentences {
  private final Map<String, Driving> drivings = new LinkedHashMap<>();
  private final Words words;

  StepSentences(Report report) {
    words = new Words(report.station().brief().units());
    report.drivings().forEach(d -> drivings.put(d.fastener().id(), d));
  }

  List<Sentence> of(BuildStep step) {
    List<Sentence> said = new ArrayList<>();
    said.add(Sentence.title(step.number() + ". " + step.name()));
    String from = Approach.words(step.direction(), step.path().size());
    if (step.number() > 1) {
      said.add(
          from.isEmpty()
              ? Sentence.mind("no way was found by which it comes to its place")
              : Sentence.of("It comes " + from + "."));
    }
    said.add(Sentence.of(sentence(step.fixing())));
    List<String> parts = names(step.places());
    if (parts.size() > 1) {
      said.add(Sentence.of("Parts: " + String.join(", ", parts) + "."));
    }
    bench(step).forEach(line -> said.add(Sentence.of(line)));
    List<String> onBench = step.bench().stream().flatMap(b -> b.fasteners().stream()).toList();
    List<String> inPlace = step.fasteners().stream().filter(f -> !onBench.contains(f)).toList();
    if (!inPlace.isEmpty()) {
      said.add(Sentence.of("In its place: " + counted(inPlace) + "."));
    }
    if (!step.tools().isEmpty()) {
      said.add(Sentence.of("Tools: " + String.join(", ", step.tools()) + "."));
    }
    if (step.mass() > 0) {
      String people = step.hands() == 1 ? "one person" : step.hands() + " people";
      said.add(Sentence.of("To lift: " + words.mass(step.mass()) + ", " + people + "."));
    }
    step.cautions().forEach(c -> said.add(Sentence.mind(c)));
    return said;
  }

  private List<String> bench(BuildStep step) {
    List<String> lines = new ArrayList<>();
    if (step.bench().size() < 2) {
      return lines;
    }
    lines.add("First on the bench: " + names(step.bench().get(0).places()).get(0) + ";");
    for (BenchStep turn : step.bench().subList(1, step.bench().size())) {
      String from = Approach.words(turn.direction(), 1);
      String held = turn.fasteners().isEmpty() ? "" : ", " + counted(turn.fasteners());
      lines.add(
          "then "
              + Words.some(names(turn.places()))
              + (from.isEmpty() ? "" : " " + from)
              + held
              + ";");
    }
    String last = lines.remove(lines.size() - 1);
    lines.add(last.substring(0, last.length() - 1) + ".");
    return lines;
  }

  private String counted(List<String> fasteners) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (String id : fasteners) {
      Driving driving = drivings.get(id);
      String pilot =
          driving.fastener().pilot() > 0
              ? ", pilot " + words.length(driving.fastener().pilot())
              : "";
      counts.merge(FastenerWords.item(driving.fastener(), words) + pilot, 1, Integer::sum);
    }
    return counts.entrySet().stream()
        .map(e -> e.getValue() + " x " + e.getKey())
        .collect(Collectors.joining("; "));
  }

  /** The things, without the name of the unit of the first. */
  private static List<String> names(List<String> ids) {
    List<String> things = ThingNames.of(ids);
    String unit = things.get(0).replaceAll("/.*", "/");
    return things.stream()
        .map(
            id ->
                id.startsWith(unit) && id.length() > unit.length()
                    ? id.substring(unit.length())
                    : id)
        .toList();
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
