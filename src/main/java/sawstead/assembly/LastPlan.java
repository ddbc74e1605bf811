package sawstead.assembly;

import java.lang.ref.WeakReference;
import sawstead.station.Station;

/**
 * The last plan made, kept by the identity of its station as long as that is in use: a station is
 * planned once to settle its pockets and asked again to be judged.
 */
final class LastPlan {
  private final WeakReference<Station> station;
  private final double contact;
  private final BuildPlan plan;

  LastPlan(Station station, double contact, BuildPlan plan) {
    this.station = new WeakReference<>(station);
    this.contact = contact;
    this.plan = plan;
  }

  boolean isOf(Station other, double otherContact) {
    return station.get() == other && contact == otherContact;
  }

  BuildPlan plan() {
    return plan;
  }
}
