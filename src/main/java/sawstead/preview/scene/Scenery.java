package sawstead.preview.scene;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sawstead.joinery.Fastener;
import sawstead.preview.look.Tokens;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * What a floor is to show, made ready on any thread: the meshes of all bodies and the ground. What
 * has not changed since the scenery before is taken over from it, so that dragging one dimension
 * makes anew only what the dimension bears on.
 *
 * @param station what is shown
 * @param look light or dark
 * @param meshes by the id of the body, guests of motions among them
 * @param ground with the shadow of the station
 */
public record Scenery(Station station, Tokens look, Map<String, PartMeshes> meshes, Ground ground) {

  /** All anew. */
  public static Scenery of(Station station, Tokens look) {
    return of(station, look, Optional.empty());
  }

  /** With all that can be taken over from another one. */
  public static Scenery of(Station station, Tokens look, Optional<Scenery> before) {
    Map<String, List<Fastener>> heads =
        station.fasteners().stream().collect(Collectors.groupingBy(f -> f.joins().get(0)));
    Map<String, PartMeshes> meshes = new LinkedHashMap<>();
    station
        .parts()
        .values()
        .forEach(p -> add(meshes, p, heads.getOrDefault(p.id(), List.of()), before));
    guests(station).forEach(p -> add(meshes, p, List.of(), before));
    return new Scenery(
        station, look, meshes, Ground.of(station, look, before.map(Scenery::ground)));
  }

  private static void add(
      Map<String, PartMeshes> meshes, Part part, List<Fastener> screws, Optional<Scenery> before) {
    Optional<PartMeshes> was = before.map(b -> b.meshes().get(part.id()));
    meshes.put(part.id(), PartMeshes.of(part, screws, was));
  }

  /** What is there only while some motion is made. */
  static List<Part> guests(Station station) {
    return station.movers().stream().flatMap(m -> m.setting().guests().stream()).toList();
  }
}
