package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.brief.State;
import sawstead.station.DesignException;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Unit;

/**
 * Motions while others stand at the far end of theirs: each lid while the fence stands at an end of
 * its travel or the rails are run out, the fence while a lid is up, and what the brief names. Comes
 * after all units that have motions.
 */
final class StateUnit implements Unit {

  private final List<State> states;

  StateUnit(List<State> states) {
    this.states = states;
  }

  @Override
  public void place(Draft draft) {}

  @Override
  public void join(Draft draft) {
    List<Mover> lids = moving(draft, "outfeed/lid");
    List<Mover> fences = moving(draft, "saw/fence-travels");
    List<Mover> rails = moving(draft, "saw/rails-run-out");
    for (Mover lid : lids) {
      for (Mover fence : fences) {
        draft.mover(meanwhile(lid.id() + "-while-" + tail(fence), lid, List.of(fence)));
        draft.mover(meanwhile(fence.id() + "-while-" + tail(lid), fence, List.of(lid)));
      }
      for (Mover rail : rails) {
        draft.mover(meanwhile(lid.id() + "-while-" + tail(rail), lid, List.of(rail)));
      }
    }
    for (int i = 0; i < states.size(); i++) {
      named(draft, states.get(i), "states[" + i + "]");
    }
  }

  private static List<Mover> moving(Draft draft, String prefix) {
    return draft.movers().stream()
        .filter(m -> m.id().startsWith(prefix) && m.setting().isPlain())
        .toList();
  }

  private static String tail(Mover mover) {
    return mover.id().substring(mover.id().lastIndexOf('/') + 1);
  }

  private static void named(Draft draft, State state, String path) {
    Mover moves = find(draft, state.moves(), path + ".moves");
    List<Mover> others = new ArrayList<>();
    for (String id : state.meanwhile()) {
      Mover other = find(draft, id, path + ".while");
      if (other.id().equals(moves.id())) {
        throw new DesignException(
            path + ".while",
            id + " cannot stand elsewhere while it moves",
            "name another motion, or remove it");
      }
      others.add(other);
    }
    draft.mover(meanwhile("states/" + state.id(), moves, others));
  }

  private static Mover find(Draft draft, String id, String path) {
    List<String> known =
        draft.movers().stream().filter(m -> !m.moves().isEmpty()).map(Mover::id).toList();
    return draft.movers().stream()
        .filter(m -> m.id().equals(id) && !m.moves().isEmpty())
        .findFirst()
        .orElseThrow(
            () ->
                new DesignException(
                    path,
                    "there is no motion " + id + " that stays in the station",
                    "write one of: " + String.join(", ", known)));
  }

  private static Mover meanwhile(String id, Mover mover, List<Mover> others) {
    Map<String, Double> parameters = new TreeMap<>(mover.setting().others());
    for (Mover other : others) {
      double rest = other.motion().rest();
      boolean back = Math.abs(other.motion().from() - rest) > Math.abs(other.motion().to() - rest);
      parameters.put(other.id(), back ? other.motion().from() : other.motion().to());
    }
    return new Mover(
        id, mover.moves(), mover.motion(), mover.contacts(), mover.setting().and(parameters));
  }
}
