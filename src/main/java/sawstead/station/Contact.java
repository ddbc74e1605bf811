package sawstead.station;

/**
 * Two bodies that are meant to touch. Touching is excused, overlap deeper than the contact
 * tolerance never.
 *
 * @param a id
 * @param b id
 */
public record Contact(String a, String b) {

  /** Puts the ids in order, so that a pair is one value. */
  public Contact {
    if (a.compareTo(b) > 0) {
      String first = b;
      b = a;
      a = first;
    }
  }
}
