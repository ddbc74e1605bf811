package sawstead.station.unit;

import sawstead.brief.Brief;
import sawstead.brief.InsertWish;
import sawstead.brief.OwnedBlade;
import sawstead.brief.Saw;
import sawstead.brief.Sheet;
import sawstead.measure.LengthFormat;
import sawstead.station.DesignException;
import sawstead.station.Gauge;
import sawstead.station.SawPlace;

/**
 * The sizes of a zero-clearance insert, in its own frame: u from the arbor away from the operator,
 * v from the throat's middle to the left, w up, 0 at its underside. The rim rests on the throat's
 * ledge, a little shy, to be levelled; what is thicker than the ledge is deep hangs through as a
 * rectangle. Lengths mm.
 *
 * @param brief the brief
 * @param wish what is to be built
 * @param place where the saw stands
 * @param number in the brief, from 0
 * @param blade that cuts its kerf
 * @param sheet of the blank
 * @param throat the saw's throat
 */
record InsertPlan(
    Brief brief,
    InsertWish wish,
    SawPlace place,
    int number,
    OwnedBlade blade,
    Sheet sheet,
    ThroatOutline throat) {

  /** Rim below flush, which levelling takes up (common practice, no source). */
  static final double SHY = 0.3;

  /** Air between the part that hangs through and the ledge's opening. */
  static final double BODY_AIR = 1;

  /** Wood over a blade at its lowest (common practice, no source). */
  static final double OVER_BLADE = 6;

  /** A body shorter or narrower than this is no insert. */
  private static final double LEAST_BODY = 20;

  static InsertPlan of(Brief brief, SawPlace place, int number) {
    InsertWish wish = brief.inserts().get(number);
    OwnedBlade blade =
        brief.blades().stream().filter(b -> b.id().equals(wish.blade())).findFirst().orElseThrow();
    InsertPlan plan =
        new InsertPlan(
            brief,
            wish,
            place,
            number,
            blade,
            brief.sheet(wish.sheet()),
            ThroatOutline.of(place.saw().throat()));
    if (plan.halfLength() < LEAST_BODY || plan.halfWidth() < LEAST_BODY / 2) {
      LengthFormat words = LengthFormat.of(brief.units());
      throw new DesignException(
          "saw.throat",
          "the throat (%s x %s, a ledge of %s) leaves no room for an insert"
              .formatted(
                  words.near(plan.throat.length()),
                  words.near(plan.throat.width()),
                  words.near(plan.throat.ledgeWidth())),
          "measure length, width, ledgeWidth and corners of the throat again");
    }
    return plan;
  }

  Saw saw() {
    return place.saw();
  }

  String id() {
    return wish.id() + "/plate";
  }

  double thickness() {
    return sheet.thickness().nominal();
  }

  /** Thickness of the rim. */
  double rim() {
    return Math.min(thickness(), saw().throat().ledge().nominal() - SHY);
  }

  boolean isRabbeted() {
    return thickness() - rim() > 0.2;
  }

  double halfLength() {
    return throat.bodyHalfLength(BODY_AIR);
  }

  double halfWidth() {
    return throat.bodyHalfWidth(BODY_AIR);
  }

  /** v of the blade's plane. */
  double kerfV() {
    return saw().throat().x().nominal();
  }

  /** Half of the blade's chord at the table, blade at its highest. */
  double halfChord() {
    double crown = SawUnit.crown(Gauge.nominal(), saw(), blade);
    return SawUnit.halfChord(blade.diameter().nominal() / 2, crown, 0);
  }
}
