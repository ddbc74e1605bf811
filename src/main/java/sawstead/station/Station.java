package sawstead.station;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.brief.Brief;
import sawstead.joinery.Board;
import sawstead.joinery.Fastener;

/**
 * A whole station: everything that takes up space, how it is joined, what moves and in which order
 * it is built. Checks and files look at nothing else.
 *
 * @param brief what it was made from
 * @param site the solved sizes; empty when the brief has no saw
 * @param parts all bodies, by id
 * @param boards the panels as drafted, by id
 * @param fasteners by id
 * @param contacts pairs that are meant to touch
 * @param movers by id
 * @param steps in order
 * @param figures by name
 * @param supports where it stands on the floor
 * @param remarks what the units have to say
 */
public record Station(
    Brief brief,
    Optional<Site> site,
    Map<String, Part> parts,
    Map<String, Board> boards,
    List<Fastener> fasteners,
    List<Contact> contacts,
    List<Mover> movers,
    List<Step> steps,
    Map<String, Figure> figures,
    List<Support> supports,
    List<Remark> remarks) {
  public Station {
    parts = java.util.Collections.unmodifiableMap(new TreeMap<>(parts));
    boards = java.util.Collections.unmodifiableMap(new TreeMap<>(boards));
    figures = java.util.Collections.unmodifiableMap(new TreeMap<>(figures));
    fasteners = List.copyOf(fasteners);
    contacts = List.copyOf(contacts);
    movers = List.copyOf(movers);
    steps = List.copyOf(steps);
    supports = List.copyOf(supports);
    remarks = List.copyOf(remarks);
  }

  /** The part of that id, if there is one. */
  public Optional<Part> part(String id) {
    return Optional.ofNullable(parts.get(id));
  }
}
