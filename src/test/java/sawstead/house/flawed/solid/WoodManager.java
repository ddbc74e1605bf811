package sawstead.house.flawed.solid;

import sawstead.house.flawed.station.Plan;

/** Part of a house that is wrong on purpose: looks up, has no subject, prints. */
final class WoodManager {
  final Plan plan = new Plan();

  void tell() {
    System.out.println(plan);
  }
}
