package sawstead.preview.window;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Says what is being worked on away from the window's thread, if anything is. */
final class BusySign extends Label {
  private boolean checking;
  private boolean trying;
  private String share = "";

  BusySign() {
    setId("busy");
    getStyleClass().add("busy");
    setMinWidth(Region.USE_PREF_SIZE);
    tell();
  }

  /** Whether a station is being designed or judged. */
  void checking(boolean working) {
    checking = working;
    tell();
  }

  /** Whether it is being tried what mends a finding. */
  void trying(boolean working) {
    trying = working;
    share = "";
    tell();
  }

  /**
   * How much has been tried.
   *
   * @param words such as {@code 3 of 40 tried}
   */
  void tried(String words) {
    share = words;
    tell();
  }

  /** Whether something is being tried. */
  boolean isTrying() {
    return trying;
  }

  /** Whether nothing is being worked on. */
  boolean isQuiet() {
    return !trying && !checking;
  }

  private void tell() {
    String trial = "trying what mends it" + (share.isEmpty() ? "" : ", " + share) + " ...";
    setText(trying ? trial : "checking ...");
    setVisible(!isQuiet());
    setManaged(!isQuiet());
  }
}
