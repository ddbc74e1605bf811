package sawstead.preview.window;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import sawstead.check.Finding;
import sawstead.preview.bench.Bearing;
import sawstead.preview.bench.Latest;
import sawstead.station.Station;

/** Finds out, away from the window's thread, which values bear on a finding, and shows them. */
final class Trials implements AutoCloseable {
  private final BriefDrawer brief;
  private final TopBar top;
  private final NewsLine news;
  private final Latest thread = new Latest(0, fault -> Platform.runLater(this::failed));

  Trials(BriefDrawer brief, TopBar top, NewsLine news) {
    this.brief = brief;
    this.top = top;
    this.news = news;
  }

  /** At once what is written for the bodies of the finding; in a while what was found by trying. */
  void about(String file, Finding finding, Station station) {
    brief.showForm();
    String text = brief.text().textProperty().get();
    List<String> about = finding.about();
    List<String> lengths = brief.form().lengths();
    List<String> written = Bearing.written(text, station, about, brief.form().values());
    brief.form().bearing(finding.remedy(), written);
    top.trying(true);
    thread.ask(
        wanted -> {
          List<String> tried = Bearing.tried(file, text, station, about, lengths, wanted);
          Platform.runLater(() -> found(finding, written, tried, wanted));
        });
  }

  private void failed() {
    top.trying(false);
    news.mind("what bears on it was not found: a fault of the program; change what its tag says");
  }

  private void found(
      Finding finding, List<String> written, List<String> tried, BooleanSupplier wanted) {
    if (!wanted.getAsBoolean()) {
      return;
    }
    top.trying(false);
    List<String> all = sorted(written, tried);
    brief.form().bearing(finding.remedy(), all);
    if (all.isEmpty()) {
      news.note("no single length of the brief bears on this; see what its tag says");
    }
  }

  /**
   * What is written for the bodies and was seen to move them comes first, then what else moves
   * them. Corners of outlines come last among their like: one rather moves a board than cuts it.
   */
  static List<String> sorted(List<String> written, List<String> tried) {
    Set<String> all = new LinkedHashSet<>(tried);
    all.addAll(written);
    return all.stream()
        .sorted(
            Comparator.comparing((String p) -> !(written.contains(p) && tried.contains(p)))
                .thenComparing(p -> !tried.contains(p))
                .thenComparing(p -> p.contains(".outline[")))
        .toList();
  }

  @Override
  public void close() {
    thread.close();
  }
}
