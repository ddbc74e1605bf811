package sawstead.preview.tape;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.StringConverter;
import sawstead.check.Report;
import sawstead.check.Words;
import sawstead.preview.look.Tokens;
import sawstead.preview.scene.BuildOrder;
import sawstead.station.Station;

/** The tape with its chooser, its reading and its play button. */
public final class TapeBar extends HBox {
  private static final double PLAY_SECONDS = 5;
  private static final double STEP_SECONDS = 1.4;

  /** What the thumb says: this run, at this parameter. */
  public record Reading(Run run, double at) {}

  private final ComboBox<Run> chooser = new ComboBox<>();
  private final Tape tape = new Tape();
  private final Button play = new Button("\u25b6  play");
  private final Consumer<Reading> moved;
  private Optional<Station> station = Optional.empty();
  private BuildOrder order;
  private AnimationTimer player;
  private boolean laying;

  /**
   * @param moved is told of every pull
   */
  public TapeBar(Consumer<Reading> moved) {
    this.moved = moved;
    getStyleClass().add("tape-bar");
    setAlignment(Pos.CENTER_LEFT);
    chooser.setId("tape-chooser");
    chooser.setPrefWidth(250);
    chooser.setConverter(new Names());
    chooser.valueProperty().addListener((o, was, is) -> choose(was, is));
    tape.setId("tape");
    tape.valueProperty().addListener(o -> pulled());
    play.setId("play");
    play.getStyleClass().add("big");
    play.setMinWidth(96);
    play.setOnAction(e -> playOrStop());
    chooser.setMinWidth(250);
    HBox.setHgrow(tape, Priority.ALWAYS);
    getChildren().addAll(chooser, play, tape);
  }

  /**
   * Other things to measure; the choice and the thumb stay if they can.
   *
   * @return whether there is anything to measure; then a reading was told
   */
  public boolean offer(Station of, BuildOrder build, Optional<Report> report) {
    laying = true;
    String chosen = chooser.getValue() == null ? "" : chooser.getValue().name();
    double at = tape.valueProperty().get();
    station = Optional.of(of);
    order = build;
    List<Run> runs = Run.all(of, build, report);
    chooser.getItems().setAll(runs);
    Optional<Run> same = runs.stream().filter(r -> r.name().equals(chosen)).findFirst();
    Run next = same.or(() -> first(runs)).orElse(null);
    chooser.setValue(next);
    tape.lay(Optional.ofNullable(next), of.brief().units());
    if (same.isEmpty()) {
      stop();
    }
    if (next != null) {
      tape.pullTo(same.isPresent() ? at : next.start());
    }
    laying = false;
    pulled();
    return next != null;
  }

  /** What one wants to see first: what is stopped, else what more than a caster turns. */
  private static Optional<Run> first(List<Run> runs) {
    return runs.stream()
        .filter(r -> r.contact().isPresent())
        .findFirst()
        .or(() -> runs.stream().filter(r -> !r.name().startsWith("casters")).findFirst())
        .or(() -> runs.stream().findFirst());
  }

  /** The tape itself. */
  public Tape tape() {
    return tape;
  }

  /** The run that the tape measures. */
  public Optional<Run> run() {
    return Optional.ofNullable(chooser.getValue());
  }

  /** Chooses what moves a body or is called so, if there is such a run. */
  public void choose(String mover) {
    chooser.getItems().stream()
        .filter(r -> r.mover().map(m -> m.id().equals(mover)).orElse(false))
        .findFirst()
        .ifPresent(chooser::setValue);
  }

  /** Chooses a motion and pulls it to its first contact, if it has one. */
  public void meet(String mover) {
    choose(mover);
    run()
        .filter(r -> r.mover().map(m -> m.id().equals(mover)).orElse(false))
        .flatMap(Run::contact)
        .ifPresent(c -> tape.valueProperty().set(c.at()));
  }

  /** Light or dark. */
  public void look(Tokens tokens) {
    tape.look(tokens);
  }

  /** Plays the run from its start, or stops. */
  public void playOrStop() {
    if (player != null) {
      stop();
      return;
    }
    run().ifPresent(this::start);
  }

  private void start(Run run) {
    double first = run.mover().isPresent() ? run.start() : run.from();
    double last = Math.abs(run.to() - first) > Math.abs(run.from() - first) ? run.to() : run.from();
    double seconds =
        run.scale() == Run.Scale.STEPS ? STEP_SECONDS * Math.abs(last - first) : PLAY_SECONDS;
    play.setText("\u25a0  stop");
    player =
        new AnimationTimer() {
          private long began;

          @Override
          public void handle(long now) {
            began = began == 0 ? now : began;
            double t = Math.min(1, (now - began) / 1e9 / seconds);
            tape.pullTo(first + (last - first) * t);
            if (t >= 1) {
              TapeBar.this.stop();
            }
          }
        };
    player.start();
  }

  /** Stops what plays. */
  public void stop() {
    if (player != null) {
      player.stop();
      player = null;
    }
    play.setText("\u25b6  play");
  }

  private void choose(Run was, Run is) {
    if (laying || is == null) {
      return;
    }
    stop();
    if (was != null) {
      moved.accept(new Reading(was, was.start()));
    }
    laying = true;
    tape.lay(Optional.of(is), station.orElseThrow().brief().units());
    tape.valueProperty().set(is.start());
    laying = false;
    pulled();
  }

  private void pulled() {
    Run run = chooser.getValue();
    if (laying || run == null || station.isEmpty()) {
      return;
    }
    Words words = new Words(station.get().brief().units());
    double at = tape.valueProperty().get();
    tape.read(run.reads(at, words, order));
    moved.accept(new Reading(run, at));
  }

  private static final class Names extends StringConverter<Run> {
    @Override
    public String toString(Run run) {
      return run == null ? "" : run.name();
    }

    @Override
    public Run fromString(String name) {
      throw new UnsupportedOperationException("the chooser is not typed into");
    }
  }
}
