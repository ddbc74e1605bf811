package sawstead.preview.bench;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.assembly.PocketSides;
import sawstead.brief.Brief;
import sawstead.check.Inspector;
import sawstead.intake.BriefException;
import sawstead.intake.BriefLines;
import sawstead.intake.BriefReader;
import sawstead.station.DesignException;
import sawstead.station.unit.Units;

/** Reads, designs and judges; whatever the text, a snapshot comes back. */
public final class Bench {
  private Bench() {}

  /**
   * The station of a text, not judged yet.
   *
   * @param name what messages call the text
   */
  public static Snapshot design(String name, String text) {
    return drawn(
        text,
        () -> {
          Brief brief = read(name, text);
          return PocketSides.decided(turned -> Units.station(brief, turned));
        });
  }

  /**
   * The station of a text with its pockets in the faces where an earlier one had them: in half the
   * time, for while something is dragged. Where they belong is settled by {@link #design}.
   *
   * @param turned as the snapshot before tells it
   */
  public static Snapshot sketch(String name, String text, Set<String> turned) {
    return drawn(
        text, () -> new PocketSides.Decided(Units.station(read(name, text), turned), turned));
  }

  private interface Design {
    PocketSides.Decided made() throws BriefException;
  }

  private static Brief read(String name, String text) throws BriefException {
    return BriefReader.read(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private static Snapshot drawn(String text, Design design) {
    try {
      PocketSides.Decided made = design.made();
      return new Snapshot(
          text, Optional.of(made.station()), made.turned(), Optional.empty(), List.of());
    } catch (BriefException e) {
      return flawed(
          text, e.problems().stream().map(p -> new Flaw(p.line(), p.what(), p.remedy())).toList());
    } catch (DesignException e) {
      int line = BriefLines.lineOf(text, e.path());
      return flawed(text, List.of(new Flaw(line, e.getMessage(), e.remedy())));
    } catch (RuntimeException fault) {
      return flawed(text, List.of(ours(fault)));
    }
  }

  /** The same with the station judged. */
  public static Snapshot judge(Snapshot designed) {
    if (designed.station().isEmpty()) {
      return designed;
    }
    try {
      return new Snapshot(
          designed.text(),
          designed.station(),
          designed.turned(),
          designed.station().map(Inspector::inspect),
          List.of());
    } catch (RuntimeException fault) {
      // The station is sound and stays to be looked at.
      return new Snapshot(
          designed.text(),
          designed.station(),
          designed.turned(),
          Optional.empty(),
          List.of(ours(fault)));
    }
  }

  private static Snapshot flawed(String text, List<Flaw> flaws) {
    return new Snapshot(text, Optional.empty(), Set.of(), Optional.empty(), flaws);
  }

  private static Flaw ours(RuntimeException fault) {
    return new Flaw(
        0,
        "a fault of the program, not of your brief: " + fault.getClass().getSimpleName(),
        "please report it with the brief; undo the last change to go on");
  }
}
