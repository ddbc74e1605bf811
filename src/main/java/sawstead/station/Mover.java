package sawstead.station;

import static java.util.Objects.requireNonNull;

import java.util.List;
import sawstead.solid.Motion;

/**
 * Bodies that move together.
 *
 * @param id of the motion: {@code outfeed/lid-left-opens}
 * @param moves ids of the bodies; may be empty where only guests of the setting move
 * @param motion along or about what, from where to where; the bodies are placed at its rest
 * @param contacts pairs that may touch on the way
 * @param setting how everything stands meanwhile
 */
public record Mover(
    String id, List<String> moves, Motion motion, List<Contact> contacts, Setting setting) {

  /** Refuses a motion that goes nowhere or moves nothing. */
  public Mover {
    requireNonNull(id, "id");
    moves = List.copyOf(moves);
    requireNonNull(motion, "motion");
    contacts = List.copyOf(contacts);
    requireNonNull(setting, "setting");
    if (moves.isEmpty() && setting.guests().isEmpty()) {
      throw new IllegalArgumentException(id + " moves nothing");
    }
    if (motion.from() == motion.to()) {
      throw new IllegalArgumentException(id + " goes nowhere: its travel is 0");
    }
  }

  /** A motion while everything else rests. */
  public Mover(String id, List<String> moves, Motion motion, List<Contact> contacts) {
    this(id, moves, motion, contacts, Setting.PLAIN);
  }
}
