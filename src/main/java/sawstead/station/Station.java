package sawstead.station;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
    demandKnown(parts, movers);
  }

  /** Refuses a setting that names what is not there, and a guest whose id is taken. */
  private static void demandKnown(Map<String, Part> parts, List<Mover> movers) {
    Set<String> ids = movers.stream().map(Mover::id).collect(Collectors.toSet());
    Set<String> guests = new HashSet<>(parts.keySet());
    for (Mover mover : movers) {
      Setting setting = mover.setting();
      for (String other : setting.others().keySet()) {
        demand(ids.contains(other) && !other.equals(mover.id()), mover, "no other mover " + other);
      }
      for (String id : setting.aside()) {
        demand(parts.containsKey(id), mover, "no body " + id + " to put aside");
        demand(!mover.moves().contains(id), mover, id + " both moves and is put aside");
      }
      for (Part guest : setting.guests()) {
        demand(guests.add(guest.id()), mover, "the id of its guest is taken: " + guest.id());
      }
    }
  }

  private static void demand(boolean holds, Mover mover, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException(mover.id() + ": " + otherwise);
    }
  }

  /** The same with further motions. */
  public Station with(List<Mover> more) {
    List<Mover> all = new ArrayList<>(movers);
    all.addAll(more);
    return new Station(
        brief, site, parts, boards, fasteners, contacts, all, steps, figures, supports, remarks);
  }

  /** The mover of that id, if there is one. */
  public Optional<Mover> mover(String id) {
    return movers.stream().filter(m -> m.id().equals(id)).findFirst();
  }

  /** The part of that id, if there is one. */
  public Optional<Part> part(String id) {
    return Optional.ofNullable(parts.get(id));
  }
}
