package sawstead.station;

import java.util.Objects;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

/**
 * A body of the station and what it is made of.
 *
 * @param kind panel, envelope or hardware
 * @param stock name of its sheet; empty unless it is a panel
 * @param mass kg
 * @param body id, exact solid and placement in the station's frame
 */
public record Part(PartKind kind, Optional<String> stock, double mass, Body body) {
  private static final String ROOM = "room";

  public Part {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(stock, "stock");
    Objects.requireNonNull(body, "body");
    if (!(mass >= 0)) {
      throw new IllegalArgumentException(body.id() + " has no mass: " + mass);
    }
  }

  /** An upright box of no sheet, in the station's frame. */
  public static Part box(PartKind kind, String id, Box box, double mass) {
    Vec size = box.size();
    Body body = new Body(id, Solids.box(size.x(), size.y(), size.z()), Placement.at(box.low()));
    return new Part(kind, Optional.empty(), mass, body);
  }

  public String id() {
    return body.id();
  }

  /** Whether it belongs to the room and is not built: a wall, a post, the door. */
  public boolean isRoom() {
    return kind == PartKind.ENVELOPE && unit().equals(ROOM);
  }

  /** The unit it belongs to: the first word of its id. */
  public String unit() {
    return unit(id());
  }

  /** The first word of an id: the unit that what bears it belongs to. */
  public static String unit(String id) {
    int slash = id.indexOf('/');
    return slash < 0 ? id : id.substring(0, slash);
  }
}
