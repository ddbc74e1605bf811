package sawstead.solid;

import java.util.Objects;

/**
 * Two bodies that are meant to touch: a runner in its slot, the leaves of a hinge. The order of the
 * two says nothing: they are kept in alphabetical order.
 *
 * @param a id of one body
 * @param b id of the other
 */
public record Contact(String a, String b) {
  /** Sorts the two ids. */
  public Contact {
    Objects.requireNonNull(a, "a");
    Objects.requireNonNull(b, "b");
    if (a.compareTo(b) > 0) {
      String swap = a;
      a = b;
      b = swap;
    }
  }
}
