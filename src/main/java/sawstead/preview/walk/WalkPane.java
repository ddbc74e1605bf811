package sawstead.preview.walk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import sawstead.preview.look.Tokens;
import sawstead.preview.sketch.DrawnPicture;
import sawstead.walk.Answer;
import sawstead.walk.AnswerFile;
import sawstead.walk.Drawings;
import sawstead.walk.Interview;
import sawstead.walk.Outcome;
import sawstead.walk.Question;

/** One question: where one stands, the picture, what is meant, and where to write the answer. */
public final class WalkPane extends BorderPane {
  private final Path brief;
  private final AnswerFile kept;
  private final Consumer<Path> done;
  private final Label stop = label("walk-stop");
  private final ProgressBar progress = new ProgressBar(0);
  private final Label title = label("walk-title");
  private final Label means = label("walk-means");
  private final Label says = label("walk-says");
  private final DrawnPicture picture = new DrawnPicture();
  private final TextField text = new TextField();
  private final FlowPane choices = new FlowPane(10, 10);
  private final Button offer = new Button();
  private final Button take = new Button("take it");
  private final Button back = button("walk-back", "back", this::back);
  private Interview interview;

  /**
   * @param brief to be written
   * @param done is told of the brief once it is written
   * @throws IOException if answers given before cannot be read
   */
  public WalkPane(Path brief, Consumer<Path> done) throws IOException {
    this.brief = brief;
    this.done = done;
    kept = AnswerFile.beside(brief);
    interview = Interview.resume(kept.read());
    getStyleClass().addAll("desk", "walk");
    stop.setId("walk-stop");
    says.setId("walk-says");
    title.setId("walk-title");
    text.setId("walk-answer");
    text.setPrefColumnCount(18);
    text.setOnAction(e -> answer(text.getText()));
    progress.setMaxWidth(Double.MAX_VALUE);
    VBox head = new VBox(8, stop, progress);
    head.getStyleClass().add("walk-head");
    setTop(head);
    setCenter(picture);
    setBottom(foot());
    ask();
  }

  private VBox foot() {
    take.setId("walk-take");
    take.setMinWidth(Region.USE_PREF_SIZE);
    take.getStyleClass().add("big");
    take.setOnAction(e -> answer(text.getText()));
    take.getStyleClass().add("accent");
    Button unknown = button("walk-unknown", "unknown", () -> answer(Answer.UNKNOWN));
    offer.setId("walk-offer");
    offer.getStyleClass().add("big");
    offer.setOnAction(e -> answer(""));
    offer.setTooltip(new Tooltip("Enter in an empty field does the same"));
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox row = new HBox(10, text, take, offer, unknown, gap, back);
    row.setAlignment(Pos.CENTER_LEFT);
    VBox foot = new VBox(10, title, means, choices, row, says);
    foot.getStyleClass().add("walk-foot");
    return foot;
  }

  private static Button button(String id, String words, Runnable does) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().add("big");
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(e -> does.run());
    return button;
  }

  private static Label label(String style) {
    Label label = new Label();
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }

  private static void show(Node node, boolean wanted) {
    node.setVisible(wanted);
    node.setManaged(wanted);
  }

  /** Light or dark. */
  public void look(Tokens tokens) {
    picture.look(tokens);
  }

  /** Puts the keyboard where the answer goes. */
  public void focus() {
    text.requestFocus();
  }

  private void ask() {
    if (interview.next().isEmpty()) {
      finish();
      return;
    }
    Question question = interview.next().get();
    Question.Stop at = question.stop();
    int answered = interview.answers().size();
    stop.setText(at.title() + "   (" + at.number() + " of " + at.of() + ")");
    progress.setProgress((double) answered / (answered + interview.left()));
    back.setDisable(answered == 0);
    title.setText(question.title());
    means.setText((question.means() + " " + question.asks()).strip());
    picture.show(Drawings.orWhole(question.path()));
    text.clear();
    text.setPromptText(question.example().isEmpty() ? "" : "such as " + question.example());
    text.setAccessibleText(question.title() + ". " + question.means());
    choices.getChildren().clear();
    for (String choice : question.choices()) {
      choices.getChildren().add(button("walk-" + choice, choice, () -> answer(choice)));
    }
    boolean free = question.choices().isEmpty();
    show(text, free);
    show(take, free);
    show(offer, question.hasOffer() && !question.choices().contains(question.offer()));
    offer.setText(agreement(question.offer()));
    focus();
  }

  /** What one says when one agrees to an offer. */
  static String agreement(String offer) {
    return switch (offer) {
      case "left to the design" -> "leave it to the design";
      case "none" -> "there is none";
      default -> "take " + offer;
    };
  }

  /** Gives an answer, as the buttons do. */
  void answer(String given) {
    if (interview.next().isEmpty()) {
      return;
    }
    Outcome outcome = interview.answer(given);
    if (outcome instanceof Outcome.Refused refused) {
      says.getStyleClass().setAll("label", "walk-says", "stop");
      says.setText("\u2716  " + refused.what() + ". " + refused.remedy());
      text.selectAll();
    } else if (outcome instanceof Outcome.Taken taken) {
      says.getStyleClass().setAll("label", "walk-says");
      says.setText(String.join("; ", taken.remarks()));
      keep(taken.interview());
      ask();
    }
  }

  private void back() {
    says.setText("");
    keep(interview.back());
    ask();
  }

  private void keep(Interview now) {
    interview = now;
    try {
      kept.write(now.answers());
    } catch (IOException e) {
      says.setText(kept.path() + " cannot be written: the answers are only in this window");
    }
  }

  private void finish() {
    try {
      Files.writeString(brief, interview.brief(), StandardCharsets.UTF_8);
      kept.remove();
      done.accept(brief);
    } catch (IOException e) {
      says.setText(brief + " cannot be written; the answers are kept in " + kept.path());
    }
  }
}
