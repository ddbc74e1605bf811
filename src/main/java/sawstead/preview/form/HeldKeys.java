package sawstead.preview.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;

/**
 * What has the keys in a form that is about to be made anew: whoever types into it, or works with
 * the keyboard alone, goes on where he was.
 *
 * @param owner what has them
 * @param id of the row or the button that it is or is in
 * @param card title of the card that it is in
 */
record HeldKeys(Node owner, String id, String card) {

  /** What has the keys within a form; empty if they are elsewhere. */
  static Optional<HeldKeys> in(Parent form) {
    Node owner = form.getScene() == null ? null : form.getScene().getFocusOwner();
    String id = "";
    String card = "";
    for (Node node = owner; node != null; node = node.getParent()) {
      if (node == form) {
        return Optional.of(new HeldKeys(owner, id, card));
      }
      if (id.isEmpty() && node.getId() != null && node.getId().contains("-")) {
        id = node.getId();
      }
      if (node instanceof TitledPane pane) {
        card = pane.getText();
      }
    }
    return Optional.empty();
  }

  /** Gives them to the same again, or to the nearest that is left of it. */
  void giveBack(Parent form) {
    // What is in a card that was just made is found only once it is laid out.
    form.applyCss();
    form.layout();
    if (all(form).anyMatch(n -> n == owner)) {
      owner.requestFocus();
      return;
    }
    String list = id.replaceFirst("^remove-(.*)\\[[0-9]+]$", "add-$1");
    List<Predicate<Node>> choices =
        List.of(
            n -> id.equals(n.getId()),
            n -> !id.isEmpty() && n.getId() != null && n.getId().startsWith(id + "."),
            n -> list.equals(n.getId()),
            n -> n instanceof TitledPane pane && pane.getText().equals(card));
    choices.stream()
        .flatMap(c -> all(form).filter(c).limit(1))
        .flatMap(n -> Stream.concat(all(n).filter(this::isLike), all(n)))
        .filter(Node::isFocusTraversable)
        .findFirst()
        .ifPresent(HeldKeys::give);
  }

  private boolean isLike(Node node) {
    return node.getClass() == owner.getClass();
  }

  private static void give(Node node) {
    node.requestFocus();
    if (node instanceof TextField field) {
      // With the keys it was selected whole, and the next letter would replace what was typed.
      field.end();
    }
  }

  private static Stream<Node> all(Node node) {
    Stream<Node> self = Stream.of(node);
    return node instanceof Parent parent
        ? Stream.concat(self, parent.getChildrenUnmodifiable().stream().flatMap(HeldKeys::all))
        : self;
  }
}
