package sawstead.preview.scene;

import sawstead.station.Part;
import sawstead.station.PartKind;

/** What a body looks made of. Told by kind and id alone; nothing else depends on it. */
enum Stuff {
  WOOD("birch"),
  IRON("iron"),
  STEEL("steel"),
  BRASS("brass"),
  SLATE("slate"),
  /** Clear plastic. */
  CLEAR("clear");

  private final String token;

  Stuff(String token) {
    this.token = token;
  }

  /** Name of its colour in the style sheet. */
  String token() {
    return token;
  }

  static Stuff of(Part part) {
    if (part.kind() == PartKind.PANEL || part.stock().isPresent()) {
      return WOOD;
    }
    String id = part.id();
    if (id.contains("hinge")) {
      return BRASS;
    }
    if (id.startsWith("saw/guard") || part.isRoom()) {
      return CLEAR;
    }
    if (id.startsWith("saw/blade") || id.startsWith("saw/fence") || id.startsWith("saw/rail")) {
      return STEEL;
    }
    if (part.unit().equals("saw")) {
      return id.contains("switch")
              || id.contains("wheel")
              || id.contains("port")
              || id.contains("foot")
          ? SLATE
          : IRON;
    }
    return part.kind() == PartKind.HARDWARE ? STEEL : SLATE;
  }
}
