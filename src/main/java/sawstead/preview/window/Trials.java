package sawstead.preview.window;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import sawstead.check.Finding;
import sawstead.preview.bench.Dial;
import sawstead.preview.bench.Latest;
import sawstead.preview.bench.Mending;
import sawstead.preview.bench.Snapshot;
import sawstead.preview.bench.Trial;
import sawstead.preview.bench.Written;

/** Tries out, away from the window's thread, which values mend a finding, and shows them. */
final class Trials implements AutoCloseable {
  private final BriefDrawer brief;
  private final BusySign busy;
  private final NewsLine news;
  private final Latest thread = new Latest(0, fault -> Platform.runLater(this::failed));

  Trials(BriefDrawer brief, BusySign busy, NewsLine news) {
    this.brief = brief;
    this.busy = busy;
    this.news = news;
  }

  /** Shows what mends a finding, value by value as it is found. */
  void about(String file, Finding finding, Snapshot judged) {
    brief.showForm();
    brief.form().tryOut(finding.remedy());
    List<Dial> dials = inOrder(brief.form().dials(), new Written(judged.text(), finding.about()));
    busy.trying(true);
    thread.ask(wanted -> find(Mending.of(file, judged, finding), dials, wanted));
  }

  /** Gives up what is still being tried: the brief is another one now. */
  void giveUp() {
    if (busy.isTrying()) {
      thread.ask(wanted -> {});
      ended(false);
    }
  }

  private void find(Optional<Mending> mending, List<Dial> dials, BooleanSupplier wanted) {
    boolean mended = false;
    int tried = 0;
    for (Dial dial : dials) {
      boolean firm = firmness(dial.path()) > 1;
      if (mending.isEmpty() || !wanted.getAsBoolean() || mended && firm) {
        break;
      }
      Trial trial = trial(mending.get(), dial, wanted);
      mended |= trial.mends() && !firm;
      tried++;
      String share = tried + " of " + dials.size() + " tried";
      Platform.runLater(() -> found(trial, share, wanted));
    }
    Platform.runLater(
        () -> {
          if (wanted.getAsBoolean()) {
            ended(true);
          }
        });
  }

  private static Trial trial(Mending mending, Dial dial, BooleanSupplier wanted) {
    Trial trial = mending.by(dial, wanted);
    boolean left = trial.worth() == Trial.Worth.BEARS && dial instanceof Dial.Rule;
    return left && firmness(dial.path()) == 0
        ? mending.byLeaving(dial.path()).orElse(trial)
        : trial;
  }

  private void found(Trial trial, String share, BooleanSupplier wanted) {
    if (wanted.getAsBoolean()) {
      busy.tried(share);
      brief.form().tried(trial);
    }
  }

  private void ended(boolean all) {
    busy.trying(false);
    brief.form().triedAll(all);
  }

  private void failed() {
    ended(false);
    news.mind("what mends it was not found: a fault of the program; change what its tag says");
  }

  /**
   * Wishes first, of them what is nearest to the bodies of the finding; then what was bought and
   * measured; at last the saw and the sheets, which are as they are: those are tried only when
   * nothing else mends it. What shapes a board comes last among its like: one rather moves a board
   * than cuts it.
   */
  static List<Dial> inOrder(List<Dial> dials, Written written) {
    return dials.stream()
        .sorted(
            Comparator.comparingInt((Dial d) -> firmness(d.path()))
                .thenComparing(d -> isShape(d.path()))
                .thenComparing(d -> written.distance(d.path())))
        .toList();
  }

  /** Whether it is of a cut or of a corner of an outline, of the user's own boards or of others. */
  private static boolean isShape(String path) {
    return path.contains(".outline[") || path.startsWith("cuts[") || path.contains(".cuts[");
  }

  /** How little one can do about a value: a wish, a thing that could be another one, the saw. */
  private static int firmness(String path) {
    String section = path.replaceAll("[.\\[].*", "");
    return switch (section) {
      case "saw", "stock" -> 2;
      case "vac", "casters", "room", "blades", "tools", "alignment", "workshop" -> 1;
      default -> 0;
    };
  }

  @Override
  public void close() {
    thread.close();
  }
}
