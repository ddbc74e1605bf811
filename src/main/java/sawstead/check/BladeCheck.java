package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.brief.Blade;
import sawstead.brief.Saw;

/**
 * The measurements of blade and table can be true together: {@code kerf-narrow} (stop) when the
 * blade's plate is as thick as its kerf or thicker, so that it would bind in the cut. A riving knife
 * lies between the two (REF-SAF-04).
 */
final class BladeCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Optional<Saw> saw = scene.brief().saw();
    if (saw.isEmpty()) {
      return Outcome.of(List.of());
    }
    Blade blade = saw.get().blade();
    double plate = blade.plate().nominal();
    double kerf = blade.kerf().nominal();
    if (plate < kerf) {
      return Outcome.of(List.of());
    }
    return Outcome.of(
        List.of(
            Finding.general(
                Severity.STOP,
                "kerf-narrow",
                List.of("saw.blade.plate", "saw.blade.kerf"),
                "the blade's plate (%s) is not thinner than its kerf (%s): it would bind"
                    .formatted(scene.words().length(plate), scene.words().length(kerf)),
                "measure both at a tooth and at the plate with a caliper; a riving knife must be"
                    + " between the two")));
  }
}
