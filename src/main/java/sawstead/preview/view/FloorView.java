package sawstead.preview.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.geometry.Point3D;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.control.Label;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;
import sawstead.check.Finding;
import sawstead.check.Words;
import sawstead.preview.caliper.Caliper;
import sawstead.preview.caliper.Spot;
import sawstead.preview.scene.Arrangement;
import sawstead.preview.scene.Eye;
import sawstead.preview.scene.Floor;
import sawstead.preview.scene.Glow;
import sawstead.preview.scene.Photo;
import sawstead.preview.scene.Scenery;
import sawstead.preview.scene.Section;
import sawstead.preview.scene.Stance;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/** The 3D scene with what one can do to it. */
public final class FloorView extends StackPane {
  private static final double SHARE = 0.84;
  private static final double CLOSE = 0.5;

  /** So near to an edge, pixels, a click means the edge. */
  private static final double NEAR_PIXELS = 9;

  private static final double FLIGHT_NANOS = 450e6;
  private static final Eye FIRST = new Eye(new Vec(0, 400, 500), 38, 24, 5000);

  private final Pane overlay = new Pane();
  private final Label hover = new Label();
  private final Pins pins = new Pins();
  private final CaliperLine caliper = new CaliperLine();
  private Photo photo;
  private Floor floor;
  private Eye eye = FIRST;
  private boolean seeThrough;
  private Section section = Section.NONE;
  private Optional<String> lastHover = Optional.empty();
  private AnimationTimer flight;
  private boolean fitted = true;
  private boolean measuring;

  /** What was pointed at, to measure between: at most two. */
  private List<Spot> spots = List.of();

  /** An empty floor. */
  public FloorView() {
    getStyleClass().add("room");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText("the station in three dimensions");
    setFocusTraversable(true);
    hover.getStyleClass().add("hover-label");
    hover.setVisible(false);
    hover.setMouseTransparent(true);
    overlay.setPickOnBounds(false);
    overlay.getChildren().addAll(pins, caliper, hover);
    // A pin at the floor's upper edge would stand on the bar above it, and take its clicks.
    Rectangle within = new Rectangle();
    within.widthProperty().bind(widthProperty());
    within.heightProperty().bind(heightProperty());
    overlay.setClip(within);
    getChildren().add(overlay);
    setAlignment(Pos.TOP_LEFT);
    setMinSize(0, 0);
    new Hands(this).attach();
    addEventHandler(MouseEvent.MOUSE_MOVED, this::hover);
    addEventHandler(MouseEvent.MOUSE_CLICKED, this::click);
    addEventHandler(MouseEvent.MOUSE_EXITED, e -> hover.setVisible(false));
    widthProperty().addListener(o -> resized());
    heightProperty().addListener(o -> resized());
  }

  /**
   * Shows a station where the last one stood, in the same arrangement; the first one is looked at
   * from the corner.
   */
  public void show(Scenery next) {
    if (floor != null && floor.look().dark() == next.look().dark()) {
      floor.follow(next);
      sayAgain();
      return;
    }
    Arrangement before = floor == null ? Arrangement.REST : floor.arrangement();
    boolean first = floor == null;
    floor = new Floor(next);
    floor.arrange(before);
    floor.seeThrough(seeThrough);
    floor.cut(section);
    photo = new Photo(floor, Math.max(1, getWidth()), Math.max(1, getHeight()), eye);
    // A managed sub-scene would keep the window from ever getting smaller again.
    photo.glass().setManaged(false);
    getChildren().setAll(photo.glass(), overlay);
    if (first) {
      eye = onto(floor.boxes(), Stance.CORNER.azimuth(), Stance.CORNER.elevation(), SHARE);
    }
    look(eye);
    sayAgain();
  }

  /** What is said of bodies holds no longer when they are others, and is said in their units. */
  private void sayAgain() {
    forgetWhatIsGone();
    if (!spots.isEmpty()) {
      read();
    }
    hover.setVisible(hover.isVisible() && lastHover.flatMap(floor::body).isPresent());
    if (hover.isVisible()) {
      hover.setText(new PartWords(floor.station()).of(lastHover.get()));
      hover.autosize();
    }
  }

  /** What is shown; null before the first. */
  public Floor floor() {
    return floor;
  }

  /** From where one looks. */
  public Eye eye() {
    return eye;
  }

  /** Opens, spreads, unbuilds. */
  public void arrange(Arrangement arrangement) {
    if (floor != null) {
      floor.arrange(arrangement);
      forgetWhatIsGone();
    }
  }

  /** Lights bodies up. */
  public void light(Map<String, Glow> glows) {
    if (floor != null) {
      floor.light(glows);
    }
  }

  /** Sees through what is not cut. */
  public void seeThrough(boolean wanted) {
    seeThrough = wanted;
    if (floor != null) {
      floor.seeThrough(wanted);
    }
  }

  /** Cuts the scene open. */
  public void cut(Section wanted) {
    section = wanted;
    if (floor != null) {
      floor.cut(wanted);
    }
  }

  /** Hangs findings at their places; a click on one is handed on. */
  public void hang(List<Finding> findings, Consumer<Finding> chosen) {
    pins.hang(findings, chosen);
    place();
  }

  private void place() {
    pins.place(eye, getWidth(), getHeight());
    caliper.place(eye, getWidth(), getHeight());
  }

  /** Measures between the next two places that are clicked, or puts the caliper away. */
  public void measure(boolean wanted) {
    measuring = wanted;
    forget();
    setCursor(wanted ? Cursor.CROSSHAIR : Cursor.DEFAULT);
  }

  /** Whether places that are clicked are measured between. */
  public boolean isMeasuring() {
    return measuring;
  }

  /** What the caliper says; empty when nothing is measured. */
  public String measured() {
    return caliper.words();
  }

  private void forget() {
    spots = List.of();
    caliper.clear();
  }

  /** Takes a place to measure from or to; what a click does. */
  public void pointAt(Spot spot) {
    spots = spots.size() == 1 ? List.of(spots.get(0), spot) : List.of(spot);
    read();
  }

  private void read() {
    if (spots.size() == 1) {
      caliper.begin(spots.get(0).at(), "from here: click the other face or edge");
    } else {
      Caliper.Reading reading = Caliper.between(spots.get(0), spots.get(1));
      Words words = new Words(floor.station().brief().units());
      caliper.show(reading.from(), reading.to(), reading.words(words));
    }
    place();
  }

  /** Where a body is another, or elsewhere, what was measured at it is true no longer. */
  private void forgetWhatIsGone() {
    boolean gone =
        spots.stream().map(Spot::body).anyMatch(b -> !floor.body(b.id()).equals(Optional.of(b)));
    if (gone) {
      forget();
    }
  }

  private void click(MouseEvent event) {
    var pick = event.getPickResult();
    String id = Floor.idOf(pick.getIntersectedNode());
    if (!measuring || id == null || !event.isStillSincePress()) {
      return;
    }
    Point3D local = pick.getIntersectedPoint();
    double pixel = pick.getIntersectedDistance() * eye.perPixel(getHeight());
    floor
        .body(id)
        .ifPresent(
            body -> {
              Vec point = body.placement().apply(new Vec(local.getX(), local.getY(), local.getZ()));
              pointAt(Spot.at(body, point, NEAR_PIXELS * pixel));
            });
  }

  /** Goes where one sees everything from. */
  public void stand(Stance stance) {
    if (floor != null) {
      fitted = true;
      flyTo(onto(floor.boxes(), stance.azimuth(), stance.elevation(), SHARE));
    }
  }

  /** Sees everything from the present side. */
  public void fit() {
    if (floor != null) {
      fitted = true;
      flyTo(onto(floor.boxes(), eye.azimuth(), eye.elevation(), SHARE));
    }
  }

  /** Goes as far back as one must to see everything come, unless the user has chosen a place. */
  public void seeTheBuild() {
    if (floor != null && fitted && !floor.boxesOfTheBuild().isEmpty()) {
      flyTo(onto(floor.boxesOfTheBuild(), eye.azimuth(), eye.elevation(), SHARE));
    }
  }

  /** Goes close to a place, so that what is within {@code around} mm of it is well seen. */
  public void visit(Vec place, double around) {
    fitted = false;
    Vec by = new Vec(around, around, around);
    Box box = new Box(place.minus(by), place.plus(by));
    double elevation = Math.max(12, eye.elevation());
    flyTo(onto(List.of(box), eye.azimuth(), Math.min(60, elevation), CLOSE));
  }

  /** Looks from elsewhere at once. */
  public void look(Eye from) {
    eye = from;
    if (photo != null) {
      photo.look(from);
    }
    place();
  }

  /** The body under the pointer, as last told. */
  public Optional<String> hovered() {
    return lastHover;
  }

  void flyTo(Eye goal) {
    stopFlight();
    if (getScene() == null || getScene().getWindow() == null) {
      look(goal);
      return;
    }
    Eye start = eye;
    flight =
        new AnimationTimer() {
          private long began;

          @Override
          public void handle(long now) {
            began = began == 0 ? now : began;
            double t = Math.min(1, (now - began) / FLIGHT_NANOS);
            look(start.towards(goal, t * t * (3 - 2 * t)));
            if (t >= 1) {
              stop();
            }
          }
        };
    flight.start();
  }

  /** The user has taken the eye in hand: it is not fitted again when the window changes size. */
  void takenInHand() {
    fitted = false;
    stopFlight();
  }

  private void stopFlight() {
    if (flight != null) {
      flight.stop();
    }
  }

  private Eye onto(List<Box> boxes, double azimuth, double elevation, double share) {
    double aspect = Math.max(0.2, getWidth() / Math.max(1, getHeight()));
    return Eye.onto(boxes, azimuth, elevation, aspect, share);
  }

  private void resized() {
    if (photo != null) {
      photo.glass().setWidth(Math.max(1, getWidth()));
      photo.glass().setHeight(Math.max(1, getHeight()));
      if (fitted) {
        stopFlight();
      }
      look(fitted ? onto(floor.boxes(), eye.azimuth(), eye.elevation(), SHARE) : eye);
    }
  }

  private void hover(MouseEvent event) {
    String id = Floor.idOf(event.getPickResult().getIntersectedNode());
    lastHover = Optional.ofNullable(id);
    hover.setVisible(id != null);
    if (id != null) {
      hover.setText(new PartWords(floor.station()).of(id));
      hover.autosize();
      double x = Math.min(event.getX() + 18, getWidth() - hover.getWidth() - 8);
      double y = Math.min(event.getY() + 18, getHeight() - hover.getHeight() - 8);
      hover.relocate(x, y);
    }
  }
}
