package sawstead.preview.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.bench.Bench;
import sawstead.preview.look.Tokens;
import sawstead.solid.Axis;
import sawstead.station.Mover;
import sawstead.station.Station;

/** What is taken over from the scenery before, and that nobody sees it was. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SceneryTest {
  private static final int WIDTH = 480;
  private static final int HEIGHT = 360;
  private static final Tokens LIGHT = Tokens.of(false);

  private Station before;
  private Station after;
  private Station without;

  @BeforeAll
  void display() {
    Display.demand();
    before = Demo.station("quay-shed");
    String text = Demo.text("quay-shed");
    after = designed(text.replaceFirst("workingHeight: [0-9]+", "workingHeight: 871"));
    without = Demo.station("first-brief");
    assertTrue(!after.figures().equals(before.figures()), "the height is another");
  }

  private static Station designed(String text) {
    return Bench.design("scenery", text).station().orElseThrow();
  }

  @Test
  void meshes_ofWhatOnlyMoved_areTakenOver() {
    Scenery first = Scenery.of(before, LIGHT);
    Scenery next = Scenery.of(after, LIGHT, Optional.of(first));
    int kept = 0;
    int made = 0;
    for (PartMeshes now : next.meshes().values()) {
      PartMeshes then = first.meshes().get(now.part().id());
      boolean shaped = then != null && then.part().body().solid().equals(now.part().body().solid());
      if (shaped) {
        assertSame(then.faces(), now.faces(), now.part().id());
        kept++;
      } else if (then != null) {
        assertNotSame(then.faces(), now.faces(), now.part().id());
        made++;
      }
    }
    assertTrue(kept > made && made > 0, kept + " kept, " + made + " made");
    assertSame(first.ground(), next.ground(), "the same shadow");
    assertSame(after, next.station());
  }

  @Test
  void floorThatFollowed_looksLikeOneMadeAnew() {
    Mover mover = before.movers().get(0);
    double far = mover.motion().from() + 0.7 * (mover.motion().to() - mover.motion().from());
    for (Arrangement arrangement :
        new Arrangement[] {Arrangement.REST, Arrangement.REST.moving(mover.id(), far)}) {
      for (Section section : new Section[] {Section.NONE, new Section(Optional.of(Axis.X), 40)}) {
        assertSameSight(arrangement, section);
      }
    }
  }

  /** Through stations with more and fewer bodies and other lengths, and back. */
  private void assertSameSight(Arrangement arrangement, Section section) {
    Scenery first = Scenery.of(before, LIGHT);
    Scenery second = Scenery.of(without, LIGHT, Optional.of(first));
    Scenery third = Scenery.of(after, LIGHT, Optional.of(second));
    Eye eye = Eye.onto(new Floor(third).boxes(), Stance.CORNER, (double) WIDTH / HEIGHT, 0.8);
    WritableImage followed =
        seen(
            eye,
            () -> {
              Floor floor = new Floor(first);
              floor.cut(section);
              floor.arrange(arrangement);
              floor.follow(second);
              floor.follow(third);
              return floor;
            });
    WritableImage anew =
        seen(
            eye,
            () -> {
              Floor floor = new Floor(after, LIGHT);
              floor.cut(section);
              floor.arrange(arrangement);
              return floor;
            });
    PixelReader a = followed.getPixelReader();
    PixelReader b = anew.getPixelReader();
    int other = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        other += a.getArgb(x, y) == b.getArgb(x, y) ? 0 : 1;
      }
    }
    assertEquals(0, other, "pixels that differ, " + arrangement + ", " + section);
  }

  private static WritableImage seen(Eye eye, java.util.function.Supplier<Floor> made) {
    return Toolkit.call(
        () -> {
          Photo photo = new Photo(made.get(), WIDTH, HEIGHT, eye);
          return new Scene(new StackPane(photo.glass()), WIDTH, HEIGHT).snapshot(null);
        });
  }
}
