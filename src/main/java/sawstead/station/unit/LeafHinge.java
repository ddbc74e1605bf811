package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.HingeStock;
import sawstead.joinery.HingeProfile;
import sawstead.joinery.Joined;
import sawstead.measure.Measured;
import sawstead.solid.Body;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Remark;
import sawstead.station.Site;

/** What the outfeed's lids and its leaf need of their continuous hinges. */
record LeafHinge(Site.BoxPlan plan, HingeStock stock) {

  /** Edge of a lid that a hinge leaf leaves free, mm. */
  private static final double EDGE_LEFT = 1.5;

  /**
   * The hinge's section. Its leaves are no wider than the edge that one of them lies on: where the
   * user names no width a narrower hinge is meant, else the station must not be cut.
   */
  HingeProfile profile(Draft draft, String lid) {
    double edge = plan.lid().thickness().nominal() - EDGE_LEFT;
    double width = stock.leafWidth().nominal();
    if (width > edge) {
      if (stock.leafWidth().origin() == Measured.Origin.DEFAULT) {
        width = edge;
      } else {
        draft.remark(
            Remark.Weight.STOP,
            "hinge-proud",
            List.of(lid),
            "a hinge leaf of %s does not fit on the edge of a lid of %s"
                .formatted(draft.length(width), draft.length(plan.lid().thickness().nominal())),
            "choose a hinge whose leaves are at most %s from the pin"
                .formatted(draft.length(edge)));
      }
    }
    return new HingeProfile(
        stock.knuckle().nominal(), width, stock.leafThickness().nominal(), stock.pitch().nominal());
  }

  /** What turns with the board: itself and the hinge leaves on it. */
  static List<String> moving(Joined joined, String board) {
    List<String> ids = new ArrayList<>(List.of(board));
    joined.bodies().stream().map(Body::id).filter(id -> id.contains("/leaf-b")).forEach(ids::add);
    return ids;
  }

  /** The pairs of two hinged boards and their hinge that may touch. */
  static List<Contact> contacts(Joined joined, String a, String b) {
    List<Contact> contacts = new ArrayList<>();
    contacts.add(new Contact(a, b));
    for (Body one : joined.bodies()) {
      contacts.add(new Contact(one.id(), a));
      contacts.add(new Contact(one.id(), b));
      for (Body other : joined.bodies()) {
        if (!one.id().equals(other.id())) {
          contacts.add(new Contact(one.id(), other.id()));
        }
      }
    }
    return contacts.stream().distinct().toList();
  }
}
