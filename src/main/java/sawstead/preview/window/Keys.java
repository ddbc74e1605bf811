package sawstead.preview.window;

import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;

/** The keys, in one list. */
final class Keys {
  private static final String LIST =
      """
      On the floor
        arrows   turn; with Shift, move
        + and -   nearer, farther
        1 to 6   stand at the infeed, outfeed, left, right, above, corner
        F   see everything
        M   measure between two faces or edges
        W   show the way of what moves

      On the tape
        arrows   pull; with Shift, finely;  Home, End  to its ends

      Anywhere
        Tab   to the next thing, with Shift back;  Enter or Space  press it
        Esc   put the caliper away, then the brief
        Ctrl+O   open another brief          Ctrl+S   save
        Ctrl+Z, Ctrl+Y   undo, redo          Ctrl+R   read the file again
        Ctrl+B   the brief                   Ctrl+E   write the files
        Ctrl+P   play or stop                Ctrl+D   light or dark
        Ctrl and + or -   everything larger or smaller;  Ctrl+0   as usual
        F1   this list""";

  private Keys() {}

  static void show() {
    Alert alert = new Alert(Alert.AlertType.NONE, LIST, ButtonType.CLOSE);
    alert.setTitle("Keys");
    alert.getDialogPane().setMinWidth(620);
    alert.show();
  }
}
