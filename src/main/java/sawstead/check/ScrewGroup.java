package sawstead.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sawstead.joinery.Fastener;
import sawstead.solid.Vec;

/**
 * Gathers what is wrong with the fasteners of one joint under one rule, so that twelve screws of a
 * row that all break through are one finding and not twelve.
 */
final class ScrewGroup {
  private record Key(Severity severity, String rule, List<String> with) {}

  private record Entry(Fastener fastener, Vec at, double worst) {}

  private final Map<Key, List<Entry>> groups = new LinkedHashMap<>();

  /** Words for a group. */
  interface Told {
    /**
     * What is so.
     *
     * @param who the subject of the sentence
     * @param many whether it is more than one
     * @param worst the greatest value of the group
     */
    String says(String who, boolean many, double worst);
  }

  private final Map<Key, Told> words = new LinkedHashMap<>();
  private final Map<Key, String> remedies = new LinkedHashMap<>();

  /**
   * Adds a fastener to its group.
   *
   * @param with the parts that it is about; a group is all fasteners of one rule with these
   * @param worst how bad it is; the group tells the greatest
   */
  void add(
      Severity severity,
      String rule,
      List<String> with,
      Fastener fastener,
      Vec at,
      double worst,
      Told told,
      String remedy) {
    Key key = new Key(severity, rule, with);
    groups.computeIfAbsent(key, k -> new ArrayList<>()).add(new Entry(fastener, at, worst));
    words.putIfAbsent(key, told);
    remedies.putIfAbsent(key, remedy);
  }

  /** One finding a group. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    groups.forEach((key, entries) -> findings.add(finding(key, entries)));
    return findings;
  }

  private Finding finding(Key key, List<Entry> entries) {
    Entry worst = entries.get(0);
    List<String> about = new ArrayList<>(key.with());
    for (Entry entry : entries) {
      about.add(entry.fastener().id());
      if (entry.worst() > worst.worst()) {
        worst = entry;
      }
    }
    String kind = worst.fastener().kind().word().replace('-', ' ');
    String who = entries.size() == 1 ? "a " + kind : entries.size() + " " + kind + "s";
    return new Finding(
        key.severity(),
        key.rule(),
        about,
        Optional.of(worst.at()),
        words.get(key).says(who, entries.size() > 1, worst.worst()),
        remedies.get(key));
  }
}
