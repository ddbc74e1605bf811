package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * A motion to be made while others stand at the far end of theirs.
 *
 * @param id short name
 * @param moves id of the motion
 * @param meanwhile ids of the motions made before
 */
public record State(String id, String moves, List<String> meanwhile) {
  public State {
    requireNonNull(id, "id");
    requireNonNull(moves, "moves");
    meanwhile = List.copyOf(meanwhile);
  }
}
