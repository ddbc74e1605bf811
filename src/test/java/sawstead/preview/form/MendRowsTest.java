package sawstead.preview.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.Scene;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.bench.Trial;

/** The rows of what mends a finding, while items of lists come and go in the text. */
class MendRowsTest {
  private static final String HEAD = "units: mm\nsaw: {mass: 24}\n";
  private static final String SMALL = "  - {id: small-parts, kind: small-parts, hands: 110}\n";
  private static final String CROSS = "  - {id: cross, kind: crosscut, hands: 120}\n";

  private FormPane form;

  @BeforeEach
  void tried() {
    Display.demand();
    form = Toolkit.call(() -> new FormPane(new Nobody()));
    Display.run(
        () -> {
          new Scene(form);
          form.follow(HEAD + "sleds:\n" + SMALL + CROSS);
          form.tryOut("move the hands");
          form.tried(trial("sleds[0].hands"));
          form.tried(trial("saw.mass"));
        });
  }

  private static Trial trial(String path) {
    return new Trial(path, Trial.Worth.MENDS, "115");
  }

  private Set<String> offered(String text) {
    return Toolkit.call(
        () -> {
          form.follow(text);
          form.applyCss();
          form.layout();
          Set<String> ids = new TreeSet<>();
          for (Node row : form.lookupAll(".field-row")) {
            if (row.isVisible()) {
              ids.add(row.getId());
            }
          }
          return ids;
        });
  }

  @Test
  void follow_ofTheSameItems_keepsTheRows() {
    Set<String> both = Set.of("row-sleds[0].hands", "row-saw.mass");
    assertEquals(both, offered(HEAD + "sleds:\n" + SMALL + CROSS));
    assertEquals(both, offered(HEAD + "sleds:\n" + SMALL.replace("110", "115") + CROSS));
    String without = HEAD + "sleds:\n" + SMALL.replace(", hands: 110", "") + CROSS;
    assertEquals(both, offered(without), "it can be written again");
  }

  @Test
  void follow_withoutTheItem_showsNoRowOfIt_andAgainWithIt() {
    Set<String> rest = Set.of("row-saw.mass");
    assertEquals(rest, offered(HEAD + "sleds:\n" + CROSS), "it would change the other sled");
    assertEquals(rest, offered(HEAD + "sleds:\n" + CROSS + SMALL));
    assertEquals(rest, offered(HEAD));
    assertEquals(2, offered(HEAD + "sleds:\n" + SMALL + CROSS).size());
  }

  @Test
  void follow_ofItemsWithoutNames_goesByTheirNumber() {
    String two = "units: mm\nsaw: {mass: 24, slots: [{at: -90, width: 19}, {at: 90, width: 20}]}\n";
    Display.run(
        () -> {
          form.follow(two);
          form.tryOut("widen the slot");
          form.tried(trial("saw.slots[1].width"));
        });
    assertEquals(Set.of("row-saw.slots[1].width"), offered(two.replace("20", "21")));
    assertEquals(Set.of(), offered(two.replace("{at: -90, width: 19}, ", "")));
    assertEquals(Set.of(), offered(two.replace("[{at: -90", "[{at: 0, width: 9}, {at: -90")));
  }

  private static final class Nobody implements FormPane.Changes {
    @Override
    public void set(String path, String value) {}

    @Override
    public void wouldSet(String path, String value) {}

    @Override
    public void writeOut(String path) {}

    @Override
    public void addTo(String list, int number) {}

    @Override
    public void removeFrom(String list, int index) {}

    @Override
    public void attend(String path) {}
  }
}
