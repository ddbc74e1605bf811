package sawstead.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.joinery.Board;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.joinery.ScrewShelf;
import sawstead.solid.Body;
import sawstead.solid.Overlap;

/**
 * Every screw holds in wood and in nothing else.
 *
 * <ul>
 *   <li>{@code screw-breakthrough} (stop): its tip stands out of the parts that it joins;
 *   <li>{@code screw-meets-groove} (stop): it crosses, or nearly crosses, a groove or recess;
 *   <li>{@code screw-meets-port} (stop): the same for a port, an opening or another's bore;
 *   <li>{@code screw-edge} (stop): there is less than {@link #AROUND} of wood beside it;
 *   <li>{@code screw-short} (stop below {@link #LEAST_HOLD} diameters in its last part, for it then
 *       holds nothing; mind when the part has room for {@link #FULL_HOLD} diameters, REF-FAS-13,
 *       and it holds less than half of them).
 * </ul>
 *
 * Exact for shanks as cylinders; heads and the taper of tips are not looked at. Bolts are for
 * {@link BoltCheck}.
 */
final class ScrewHoldCheck implements Check {
  /** Least wood beside a shank, mm (common practice, no source). */
  static final double AROUND = 2;

  /** Least hold in the last part, in diameters (common practice, no source). */
  static final double LEAST_HOLD = 2;

  /** Hold at which a screw carries, in diameters (REF-FAS-13). */
  static final double FULL_HOLD = 6;

  /** Share of the wood round a shank that may be missing before it counts: about 0.05 mm of it. */
  private static final double ROUNDING = 0.001;

  private static final Set<FastenerKind> THROUGH = Set.of(FastenerKind.BOLT);

  @Override
  public Outcome judge(Scene scene) {
    ScrewGroup group = new ScrewGroup();
    Outcome.Notes notes = new Outcome.Notes();
    double leastCover = Double.POSITIVE_INFINITY;
    String leastId = null;
    for (Fastener fastener : scene.station().fasteners()) {
      if (THROUGH.contains(fastener.kind())) {
        continue;
      }
      Bite bite = new Bite(scene, fastener);
      boolean cut = judgeAir(scene, bite, group);
      double cover = bite.tipCover();
      if (cover < 0 && !cut) {
        addBreakthrough(scene, fastener, cover, group);
      } else if (cover < leastCover && !cut) {
        leastCover = cover;
        leastId = fastener.id();
      }
      judgeHold(scene, bite, cut, group);
    }
    group.findings().forEach(notes::add);
    if (leastId != null) {
      notes.add(
          Margin.length(
              "tip-cover", "wood beyond the nearest screw tip", List.of(leastId), leastCover, 0));
    }
    return notes.outcome();
  }

  private static void addBreakthrough(
      Scene scene, Fastener fastener, double cover, ScrewGroup group) {
    group.add(
        Severity.STOP,
        "screw-breakthrough",
        fastener.joins(),
        fastener,
        fastener.tip(),
        -cover,
        (who, many, worst) ->
            who
                + " through "
                + String.join(" into ", fastener.joins())
                + " would stand out by "
                + scene.words().length(worst),
        "use a screw at most "
            + scene.words().length(fastener.length() + cover - ScrewShelf.TIP_COVER)
            + " long there");
  }

  /** Looks for cuts and edges beside the shank; true when it runs into a cut. */
  private static boolean judgeAir(Scene scene, Bite bite, ScrewGroup group) {
    boolean cut = false;
    Fastener fastener = bite.fastener();
    for (Body panel : bite.panels()) {
      Optional<CutAir> air = worstCut(scene.station().boards().get(panel.id()), bite);
      if (air.isPresent()) {
        cut = true;
        addCut(scene, fastener, panel, air.get(), group);
      } else if (bite.sleeve(panel, AROUND)
          .filter(s -> Bite.airIn(s, panel) > ROUNDING)
          .isPresent()) {
        addEdge(scene, fastener, panel, group);
      }
    }
    return cut;
  }

  /** The cut of a board that takes most of the wood that the shank needs round it. */
  private static Optional<CutAir> worstCut(Board board, Bite bite) {
    Body needed = bite.needed(AROUND);
    CutAir worst = null;
    double most = needed.volume() * ROUNDING;
    for (CutAir air : CutAir.of(board)) {
      double share = Overlap.between(needed, air.body()).map(Overlap::volume).orElse(0.0);
      if (share > most && !bite.isFilled(air)) {
        most = share;
        worst = air;
      }
    }
    return Optional.ofNullable(worst);
  }

  private static void addCut(
      Scene scene, Fastener fastener, Body panel, CutAir air, ScrewGroup group) {
    String what = air.isPort() ? "an opening" : "the " + air.feature().operation();
    group.add(
        Severity.STOP,
        air.isPort() ? "screw-meets-port" : "screw-meets-groove",
        List.of(panel.id()),
        fastener,
        fastener.at().plus(fastener.axis().scale(fastener.length() / 2)),
        0,
        (who, many, worst) ->
            who
                + (many ? " run into " : " runs into ")
                + what
                + " of "
                + panel.id()
                + ": a bit would hit steel there, and nothing holds",
        "move the cut at least "
            + scene.words().length(fastener.diameter() / 2 + AROUND)
            + " away from the screw's line, or leave that screw out");
  }

  private static void addEdge(Scene scene, Fastener fastener, Body panel, ScrewGroup group) {
    group.add(
        Severity.STOP,
        "screw-edge",
        List.of(panel.id()),
        fastener,
        fastener.at(),
        0,
        (who, many, worst) ->
            who
                + (many ? " lie" : " lies")
                + " so near to an edge of "
                + panel.id()
                + " that less than "
                + scene.words().length(AROUND)
                + " of wood is left beside it",
        "move it inward, use a thinner screw, or a thicker sheet");
  }

  private static void judgeHold(Scene scene, Bite bite, boolean cut, ScrewGroup group) {
    Fastener fastener = bite.fastener();
    if (cut || bite.holder().isEmpty() || fastener.kind() == FastenerKind.BRAD) {
      return;
    }
    double hold = bite.hold();
    double full = FULL_HOLD * fastener.diameter();
    boolean nothing = hold < LEAST_HOLD * fastener.diameter();
    boolean little = bite.room() >= full + ScrewShelf.TIP_COVER && hold < full / 2;
    if (!nothing && !little) {
      return;
    }
    String holder = bite.holder().get().id();
    group.add(
        nothing ? Severity.STOP : Severity.MIND,
        "screw-short",
        fastener.joins(),
        fastener,
        fastener.tip(),
        -hold,
        (who, many, worst) ->
            who
                + " through "
                + fastener.joins().get(0)
                + (many ? " hold in only " : " holds in only ")
                + scene.words().length(-worst)
                + " of "
                + holder,
        "use a screw at least "
            + scene.words().length(fastener.length() - hold + Math.min(full, bite.room() - 3))
            + " long there");
  }
}
