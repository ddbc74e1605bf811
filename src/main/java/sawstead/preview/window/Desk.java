package sawstead.preview.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import sawstead.check.Finding;
import sawstead.check.Margin;
import sawstead.check.Severity;
import sawstead.preview.bench.Changes;
import sawstead.preview.bench.Flaw;
import sawstead.preview.bench.Snapshot;
import sawstead.preview.look.Magnifier;
import sawstead.preview.look.Tokens;
import sawstead.preview.scene.Arrangement;
import sawstead.preview.scene.BuildOrder;
import sawstead.preview.scene.Glow;
import sawstead.preview.scene.Stance;
import sawstead.preview.tags.TagColumn;
import sawstead.preview.tape.Run;
import sawstead.preview.tape.TapeBar;
import sawstead.preview.view.FloorView;
import sawstead.station.Mover;
import sawstead.station.Station;

/** Puts the places of the window together and carries news between them. */
final class Desk {
  private static final double AROUND = 260;

  /** In a window narrower than that, pixels, the open brief has the room of the tags. */
  private static final double NARROW = 960;

  private final Path file;
  private final Consumer<String> title;
  private final BorderPane root = new BorderPane();
  private final Magnifier magnifier = new Magnifier(root);
  private final FloorView floor = new FloorView();
  private final TagColumn tags = new TagColumn(this::visit, this::visit, this::change);
  private final TapeBar tape = new TapeBar(this::pulled);
  private final TopBar top = new TopBar(this);
  private final BriefDrawer brief = new BriefDrawer(this::would);
  private final BusySign busy = new BusySign();
  private final NewsLine news = new NewsLine(busy);
  private final Trials trials = new Trials(brief, busy, news);
  private final Lights lights = new Lights(floor);
  private final Drafts drafts;
  private final OnDisk onDisk;
  private final WriteFiles files = new WriteFiles();
  private Tokens look = Tokens.of(false);
  private Consumer<Boolean> onDark = wanted -> {};
  private Runnable onOpen = () -> {};
  private Optional<Snapshot> shown = Optional.empty();
  private Optional<String> flawed = Optional.empty();
  private boolean wayShown;
  private boolean building;
  private int told = -1;

  Desk(Path file, Consumer<String> title) {
    this.file = file;
    this.title = title;
    drafts = new Drafts(file.toString(), this::arrived, this::judged, this::faulty);
    root.getStyleClass().add("desk");
    root.setTop(top);
    root.widthProperty().addListener(o -> places());
    root.setLeft(tags);
    root.setCenter(floor);
    root.setBottom(new VBox(news, tape));
    onDisk = new OnDisk(file, brief.text(), news, this::typed, this::unreadable);
    brief.text().textProperty().addListener((o, was, is) -> typed(is));
    onDisk.read();
    retitle();
    floor.requestFocus();
  }

  Magnifier root() {
    return magnifier;
  }

  FloorView floor() {
    return floor;
  }

  /** Shortcuts that work wherever the focus is. */
  void keys(Scene scene) {
    key(scene, KeyCode.S, this::save);
    key(scene, KeyCode.Z, brief.text()::undo);
    key(scene, KeyCode.Y, brief.text()::redo);
    key(scene, KeyCode.R, this::reload);
    key(scene, KeyCode.B, this::toggleBrief);
    key(scene, KeyCode.D, () -> onDark.accept(!look.dark()));
    key(scene, KeyCode.E, this::writeFiles);
    key(scene, KeyCode.P, tape::playOrStop);
    key(scene, KeyCode.O, this::openOther);
    scene.getAccelerators().put(new KeyCodeCombination(KeyCode.F1), Keys::show);
    scene.getAccelerators().put(new KeyCodeCombination(KeyCode.ESCAPE), this::escape);
    magnifier.keys(scene);
  }

  private static void key(Scene scene, KeyCode code, Runnable does) {
    scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), does);
  }

  /** Puts away what was taken out last: the caliper, else the brief. */
  private void escape() {
    if (floor.isMeasuring()) {
      floor.requestFocus();
      top.putCaliperAway();
    } else if (root.getRight() != null) {
      toggleBrief();
    }
  }

  /** What is shown. */
  Path file() {
    return file;
  }

  /** Is called when somebody wants another brief. */
  void onOpen(Runnable wanted) {
    onOpen = wanted;
  }

  void openOther() {
    onOpen.run();
  }

  void onDark(Consumer<Boolean> wanted) {
    onDark = wanted;
  }

  void toggleDark() {
    onDark.accept(!look.dark());
  }

  void toggleBrief() {
    boolean open = root.getRight() == null;
    if (!open && brief.isFocusWithin()) {
      floor.requestFocus();
    }
    root.setRight(open ? brief : null);
    top.briefIsOpen(open);
    places();
  }

  private void places() {
    boolean open = root.getRight() != null;
    brief.share(root.getWidth());
    boolean instead = open && root.getWidth() < NARROW;
    if (instead && tags.isFocusWithin()) {
      floor.requestFocus();
    }
    root.setLeft(instead ? null : tags);
  }

  /** Light or dark. */
  void look(Tokens tokens) {
    boolean other = look.dark() != tokens.dark();
    look = tokens;
    magnifier.look(tokens);
    tape.look(tokens);
    brief.look(tokens);
    if (other) {
      typed(brief.text().textProperty().get());
    }
  }

  /** Reads the file again. */
  void reload() {
    onDisk.readAgain();
  }

  private void unreadable(String what, String remedy) {
    news.mind(file + ": " + what + "; " + remedy);
    if (shown.isEmpty()) {
      tags.note(file + "\n" + what);
      brief.tell(List.of(new Flaw(0, what, remedy)));
    }
  }

  void save() {
    onDisk.save();
    retitle();
  }

  boolean mayClose() {
    if (!onDisk.isTyped()) {
      return true;
    }
    Alert alert =
        new Alert(
            Alert.AlertType.CONFIRMATION,
            "What was typed is not saved. Save it first?",
            ButtonType.YES,
            ButtonType.NO,
            ButtonType.CANCEL);
    alert.setHeaderText(null);
    ButtonType answer = alert.showAndWait().orElse(ButtonType.CANCEL);
    if (answer == ButtonType.YES) {
      save();
      return !onDisk.isTyped();
    }
    return answer == ButtonType.NO;
  }

  void close() {
    tape.stop();
    onDisk.close();
    drafts.close();
    trials.close();
    files.close();
  }

  private void retitle() {
    title.accept((onDisk.isTyped() ? "\u2022 " : "") + file.getFileName() + " - Sawstead");
  }

  private void typed(String text) {
    trials.giveUp();
    retitle();
    busy.checking(true);
    drafts.typed(text, look);
  }

  private void would(String text) {
    trials.giveUp();
    busy.checking(true);
    drafts.dragged(text, look);
  }

  private void faulty(RuntimeException fault) {
    busy.checking(false);
    news.mind(
        "a fault of the program, not of your brief: "
            + fault.getClass().getSimpleName()
            + "; undo the last change to go on, and please report it");
  }

  private void arrived(Drafts.Drawn drawn) {
    Snapshot snapshot = drawn.snapshot();
    brief.tell(snapshot.flaws());
    flawed = snapshot.station().isEmpty() ? Optional.of(snapshot.text()) : Optional.empty();
    if (snapshot.station().isEmpty()) {
      top.unread();
      busy.checking(false);
      news.mind(
          "this text is no station yet: "
              + snapshot.flaws().get(0).what()
              + (shown.isPresent() ? "; the floor shows the one before" : ""));
      if (shown.isEmpty()) {
        tags.note("This text is no station yet. What is wrong stands beside the brief.");
        if (root.getRight() == null) {
          toggleBrief();
        }
      }
      return;
    }
    Station station = snapshot.station().get();
    Optional<Station> before = station();
    before.ifPresent(b -> tell(Changes.between(b, station)));
    shown = Optional.of(snapshot);
    floor.show(drawn.scenery().orElseThrow());
    top.show(station);
    if (!tape.offer(station, floor.floor().order(), Optional.empty())) {
      lights.light();
    }
  }

  private void judged(Snapshot snapshot) {
    busy.checking(false);
    if (snapshot.station().isEmpty()) {
      return; // What is wrong with it was told when it arrived.
    }
    if (snapshot.report().isEmpty()) {
      brief.tell(snapshot.flaws());
      news.mind("it could not be checked: " + snapshot.flaws().get(0).what());
      return;
    }
    shown = Optional.of(snapshot);
    var report = snapshot.report().get();
    floor.floor().know(report.station(), BuildOrder.of(report.plan()));
    tags.hang(report);
    top.show(report);
    floor.hang(report.findings(), this::visit);
    tape.offer(report.station(), floor.floor().order(), Optional.of(report));
  }

  private void tell(List<String> changes) {
    if (!changes.isEmpty()) {
      news.change(changes);
    }
  }

  private Optional<Station> station() {
    return shown.flatMap(Snapshot::station);
  }

  private void visit(Finding finding) {
    Glow glow =
        switch (finding.severity()) {
          case STOP -> Glow.STOP;
          case MIND -> Glow.MIND;
          case NOTE -> Glow.NOTE;
        };
    lights.choose(finding.about(), glow, station());
    finding
        .at()
        .or(() -> Lights.middle(finding.about(), station()))
        .ifPresent(at -> floor.visit(at, AROUND));
    finding.about().forEach(tape::meet);
  }

  /** Opens the form with the values that mend a finding. */
  private void change(Finding finding) {
    visit(finding);
    if (shown.isEmpty()) {
      return;
    }
    // The tags stay while another text is being checked, but are not about that text.
    String now = brief.text().textProperty().get();
    if (flawed.equals(Optional.of(now))) {
      news.mind(
          "this text is no station; put right what is wrong beside the brief, then ask again");
      return;
    }
    if (!shown.get().text().equals(now) || shown.get().report().isEmpty()) {
      news.mind("the brief was changed and is still being checked; ask again in a moment");
      return;
    }
    if (root.getRight() == null) {
      toggleBrief();
    }
    trials.about(file.toString(), finding, shown.get());
  }

  private void visit(Margin margin) {
    lights.choose(margin.about(), margin.spare() < 0 ? Glow.STOP : Glow.CHOSEN, station());
    Lights.middle(margin.about(), station()).ifPresent(at -> floor.visit(at, 2 * AROUND));
  }

  /** Shows the way of what the tape moves, or no longer. */
  void showWay(boolean wanted) {
    wayShown = wanted;
    way();
  }

  private void way() {
    if (floor.floor() != null) {
      floor.floor().path(wayShown ? tape.run().flatMap(Run::mover) : Optional.empty());
    }
  }

  /** Measures between what is clicked, or no longer. */
  void measure(boolean wanted) {
    floor.measure(wanted);
    if (wanted) {
      news.note("click a face or an edge, then another; the distance stands between them");
    }
  }

  /** The tools of the step that is being built, each in its place. */
  private void tools(int number) {
    floor
        .floor()
        .tools(
            shown.flatMap(Snapshot::report).stream()
                .flatMap(r -> r.drivings().stream())
                .filter(d -> d.step() == number)
                .flatMap(d -> d.toolBodies().stream())
                .toList());
  }

  /** Says of a step what comes, from where and with what, once. */
  private void toldStep(int number) {
    if (number != told) {
      told = number;
      floor.floor().order().at(number).ifPresent(c -> news.note(c.says()));
    }
  }

  private void pulled(TapeBar.Reading reading) {
    if (floor.floor() == null) {
      return;
    }
    Arrangement now = floor.floor().arrangement();
    Run run = reading.run();
    Map<String, Glow> arriving = new TreeMap<>();
    boolean begun = run.mover().isEmpty() && !building;
    building = run.mover().isEmpty();
    if (begun) {
      floor.seeTheBuild();
    }
    if (run.mover().isPresent()) {
      Mover mover = run.mover().get();
      arriving.putAll(Motions.met(run, reading.at()));
      floor.arrange(now.built(Arrangement.ALL).moving(mover.id(), reading.at()));
      tools(-1);
    } else {
      // Past the last step everything stands, and nothing is on its way any more.
      boolean all = reading.at() >= run.to();
      floor.arrange(now.built(all ? Arrangement.ALL : reading.at()));
      int number = all ? -1 : Run.step(reading.at());
      floor
          .floor()
          .order()
          .at(number)
          .ifPresent(coming -> coming.places().forEach(id -> arriving.put(id, Glow.CHOSEN)));
      tools(number);
      toldStep(number);
    }
    lights.arriving(arriving);
    way();
  }

  /** Whether nothing is being read, checked or tried any more. */
  boolean isQuiet() {
    return busy.isQuiet();
  }

  /** Does what the button on the worst tag does; false if there is nothing to mend. */
  boolean askAboutTheWorst() {
    boolean toMend =
        shown
            .flatMap(Snapshot::report)
            .flatMap(r -> r.findings().stream().findFirst())
            .filter(f -> f.severity() != Severity.NOTE)
            .isPresent();
    return toMend && tags.change(0);
  }

  void spread(double share) {
    if (floor.floor() != null) {
      floor.arrange(floor.floor().arrangement().spread(share));
    }
  }

  void stand(Stance stance) {
    floor.stand(stance);
    floor.requestFocus();
  }

  void writeFiles() {
    Optional<sawstead.check.Report> report = shown.flatMap(Snapshot::report);
    if (report.isEmpty()) {
      news.mind("there is nothing to write yet: the station is still being checked");
      return;
    }
    files.write(report.get(), file, news);
  }
}
