package sawstead.preview.scene;

import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;

/** A pane of glass before the floor: sub-scene and camera, kept in step with an {@link Eye}. */
public final class Photo {
  private static final double NEAR = 60;
  private static final double FAR = 60_000;

  private final SubScene glass;
  private final PerspectiveCamera camera = new PerspectiveCamera(true);
  private Eye eye;

  /**
   * @param floor what is seen
   * @param width pixels
   * @param height pixels
   * @param eye from where
   */
  public Photo(Floor floor, double width, double height, Eye eye) {
    glass = new SubScene(floor.root(), width, height, true, SceneAntialiasing.BALANCED);
    camera.setFieldOfView(Eye.FIELD);
    camera.setVerticalFieldOfView(true);
    camera.setNearClip(NEAR);
    camera.setFarClip(FAR);
    glass.setCamera(camera);
    look(eye);
  }

  /** The pane itself. */
  public SubScene glass() {
    return glass;
  }

  /** From where one looks. */
  public Eye eye() {
    return eye;
  }

  /** Looks from elsewhere. */
  public void look(Eye from) {
    eye = from;
    camera.getTransforms().setAll(from.transform());
  }
}
