package sawstead.station;

import java.util.List;
import sawstead.solid.Motion;

/**
 * Bodies that move together.
 *
 * @param id of the motion: {@code outfeed/lid-left-opens}
 * @param moves ids of the bodies
 * @param motion along or about what, from where to where; the bodies are placed at its rest
 * @param contacts pairs that may touch on the way
 */
public record Mover(String id, List<String> moves, Motion motion, List<Contact> contacts) {
  public Mover {
    moves = List.copyOf(moves);
    contacts = List.copyOf(contacts);
  }
}
