package sawstead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class SearchWatchTest {
  @Test
  void goOn_withoutInterrupt_letsTheSearchRunAndStaysQuietAtFirst() {
    StringWriter text = new StringWriter();
    try (SearchWatch watch = new SearchWatch(new PrintWriter(text))) {
      assertTrue(watch.goOn(0.1, 5, 4));
    }
    assertEquals("", text.toString());
  }

  @Test
  void close_twiceInARow_leavesNoHookBehind() {
    for (int i = 0; i < 2; i++) {
      SearchWatch watch = new SearchWatch(null);
      assertTrue(watch.goOn(1, 1, 1));
      watch.close();
    }
  }
}
