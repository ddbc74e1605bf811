package sawstead.preview.look;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;

/** The control library's theme below our own colours. */
public final class Theme {
  private Theme() {}

  /** Light or dark, for all windows of the program. */
  public static void put(boolean dark) {
    Application.setUserAgentStylesheet(
        dark
            ? new PrimerDark().getUserAgentStylesheet()
            : new PrimerLight().getUserAgentStylesheet());
  }
}
