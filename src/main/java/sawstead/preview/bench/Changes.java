package sawstead.preview.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sawstead.check.Words;
import sawstead.solid.Panel;
import sawstead.station.Figure;
import sawstead.station.Part;
import sawstead.station.Station;

/** What differs between two stations, in words: {@code leg-1-face and 3 more 470 -> 462 mm}. */
public final class Changes {
  /** Less than this is the same size, mm. */
  private static final double SAME = 0.01;

  private Changes() {}

  /** Sentences without full stops: figures first, then panels; empty when nothing differs. */
  public static List<String> between(Station before, Station after) {
    Words words = new Words(after.brief().units());
    List<String> changes = new ArrayList<>();
    for (Figure now : after.figures().values()) {
      Figure then = before.figures().get(now.name());
      if (then != null && Math.abs(then.nominal() - now.nominal()) > SAME) {
        changes.add(spaced(now.name()) + " " + arrow(words, then.nominal(), now.nominal()));
      }
    }
    sizes(before, after, words)
        .forEach((change, ids) -> changes.add(Words.some(ids) + ": " + change));
    Set<String> gone = new LinkedHashSet<>(before.parts().keySet());
    gone.removeAll(after.parts().keySet());
    Set<String> come = new LinkedHashSet<>(after.parts().keySet());
    come.removeAll(before.parts().keySet());
    if (!come.isEmpty()) {
      changes.add("new: " + Words.some(List.copyOf(come)));
    }
    if (!gone.isEmpty()) {
      changes.add("gone: " + Words.some(List.copyOf(gone)));
    }
    return changes;
  }

  private static Map<String, List<String>> sizes(Station before, Station after, Words words) {
    Map<String, List<String>> sizes = new LinkedHashMap<>();
    for (Part now : after.parts().values()) {
      Part then = before.parts().get(now.id());
      if (then != null
          && then.body().solid() instanceof Panel was
          && now.body().solid() instanceof Panel is) {
        note(sizes, now.id(), "length", was.length(), is.length(), words);
        note(sizes, now.id(), "width", was.width(), is.width(), words);
        note(sizes, now.id(), "thickness", was.thickness(), is.thickness(), words);
      }
    }
    return sizes;
  }

  private static void note(
      Map<String, List<String>> sizes, String id, String what, double was, double is, Words words) {
    if (Math.abs(was - is) > SAME) {
      sizes.computeIfAbsent(what + " " + arrow(words, was, is), k -> new ArrayList<>()).add(id);
    }
  }

  private static String arrow(Words words, double was, double is) {
    return words.bare(was) + " \u2192 " + words.length(is);
  }

  /** {@code workingHeight} as a person says it: {@code working height}. */
  static String spaced(String camel) {
    return camel.replaceAll("([A-Z])", " $1").toLowerCase(java.util.Locale.ROOT);
  }
}
