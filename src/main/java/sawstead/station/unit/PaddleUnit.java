package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sawstead.brief.Side;
import sawstead.brief.SideWish;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.joinery.Patch;
import sawstead.joinery.Screw;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Remark;
import sawstead.station.Setting;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * A knee paddle: a sill on the stand's front carries two cheeks; between them a board hangs on two
 * pivot screws, a press block on its back before the stop, a window before the start. Its weight
 * hangs it clear of the switch; a bumper on the sill ends its swing before it could break anything.
 */
final class PaddleUnit implements Unit {
  static final String STOP = "saw/switch-stop";
  static final String PRESSES = "paddle/presses";

  private static final String SILL = "paddle/sill";
  private static final String PACKER = "paddle/packer";
  private static final String BOARD = "paddle/board";
  private static final String BLOCK = "paddle/press";
  private static final String BUMPER = "paddle/bumper";
  private static final List<String> CHEEKS = List.of("paddle/cheek-left", "paddle/cheek-right");

  /** Screws that carry the sill, and without which nothing does. */
  private static final int ENOUGH = 4;

  private static final int LEAST = 2;

  /** A packer shorter than this holds no two screws. */
  private static final double SHORTEST_PACKER = 60;

  private final PaddlePlan plan;
  private final Optional<Site> site;
  private final double t;

  PaddleUnit(PaddlePlan plan, Optional<Site> site) {
    this.plan = plan;
    this.site = site;
    t = plan.t();
  }

  @Override
  public void place(Draft draft) {
    draft.envelope(STOP, plan.stop(), 0);
    draft.touch(STOP, "saw/switch");
    Area board = plan.board();
    double left = board.left() - PaddlePlan.WASHER;
    double right = board.right() + PaddlePlan.WASHER;
    Area sill = new Area(left - t, right + t, plan.sillFace(), plan.front());
    panel(draft, SILL, sill.between(plan.low(), plan.sillTop()), Axis.Y, false, Axis.X);
    packer(sill)
        .ifPresent(
            area ->
                panel(
                    draft,
                    PACKER,
                    area.between(plan.low(), site.orElseThrow().levels().topUnder()),
                    Axis.Y,
                    false,
                    Axis.X));
    double front = plan.cheekFront();
    Area leftCheek = new Area(left - t, left, front, plan.sillFace());
    Area rightCheek = new Area(right, right + t, front, plan.sillFace());
    panel(draft, CHEEKS.get(0), leftCheek.between(plan.low(), plan.top()), Axis.X, false, Axis.Z);
    panel(draft, CHEEKS.get(1), rightCheek.between(plan.low(), plan.top()), Axis.X, true, Axis.Z);
    Area bumper = new Area(left, right, plan.bumperY(), plan.sillFace());
    panel(
        draft,
        BUMPER,
        bumper.between(plan.bumperLow(), plan.bumperLow() + t),
        Axis.Z,
        true,
        Axis.X);
    panel(draft, BOARD, board.between(plan.bottom(), plan.top()), Axis.Y, false, Axis.Z);
    panel(
        draft,
        BLOCK,
        plan.block(),
        plan.isBlockUpright() ? Axis.X : Axis.Z,
        true,
        plan.isBlockUpright() ? Axis.Z : Axis.X);
    tellSteps(draft);
  }

  private void panel(
      Draft draft, String id, Box box, Axis through, boolean towardsPlus, Axis grain) {
    draft.panel(id, plan.sheet(), box, through, towardsPlus, grain);
  }

  /** Fills the space before a lapped stretcher, between the legs, so that the sill lies on wood. */
  private Optional<Area> packer(Area sill) {
    if (site.isEmpty()) {
      return Optional.empty();
    }
    StandFrame frame = new StandFrame(site.get());
    if (!frame.lapped() || frame.closing(Side.FRONT) == SideWish.OPEN) {
      return Optional.empty();
    }
    double leg = site.get().wish().stand().leg().nominal();
    double left = Math.max(sill.left(), site.get().stand().left() + leg);
    double right = Math.min(sill.right(), site.get().stand().right() - leg);
    double rear = plan.front() + site.get().thickness();
    return right - left < SHORTEST_PACKER
        ? Optional.empty()
        : Optional.of(new Area(left, right, rear - t, rear));
  }

  private void tellSteps(Draft draft) {
    if (draft.hasBoard(PACKER)) {
      draft.step(
          List.of(PACKER),
          "screw it to the front stretcher, flush with the legs",
          new Vec(0, 1, 0),
          List.of());
    }
    draft.step(
        List.of(SILL, CHEEKS.get(0), CHEEKS.get(1), BUMPER),
        site.isPresent()
            ? "screw cheeks and bumper to the sill, then the sill to the stand's front, never glued"
            : "screw cheeks and bumper to the sill, then the sill to the bench's front edge",
        new Vec(0, 1, 0),
        List.of("unplug the saw before you work at its switch"));
    draft.step(
        List.of(BOARD, BLOCK),
        "glue and screw the press block to the board, then hang it between the cheeks on two pivot"
            + " screws, a washer on each",
        new Vec(0, 1, 0),
        List.of(
            "it must fall back by itself; ease it until it does",
            "try it with the plug out first: the stop goes in before the board meets its bumper, and"
                + " nothing comes near the start"));
  }

  @Override
  public void cut(Draft draft) {
    draft.change(BOARD, b -> b.cutBox(plan.window(), "opening"));
  }

  @Override
  public void join(Draft draft) {
    for (String cheek : CHEEKS) {
      draft.join(Joints.screwed(false), SILL, cheek);
      draft.touch(cheek, BUMPER);
    }
    draft.join(Joints.screwed(false), SILL, BUMPER);
    draft.join(Joints.screwed(false), BOARD, BLOCK);
    site.ifPresent(s -> hold(draft));
    if (site.isEmpty()) {
      draft.remark(
          Remark.Weight.NOTE,
          "paddle-alone",
          List.of(SILL),
          "the paddle hangs before the edge of what the saw stands on",
          "screw its sill to that edge, and make its board so long that a knee reaches it");
    }
    pivots(draft);
    tellMotion(draft);
  }

  private void hold(Draft draft) {
    if (draft.hasBoard(PACKER)) {
      draft.join(Joints.lap(), PACKER, StandUnit.stretcher(Side.FRONT, true));
    }
    List<Box> inTheWay =
        Stream.of(CHEEKS.get(0), CHEEKS.get(1), BUMPER)
            .map(id -> draft.board(id).box().grown(Joints.DRIVER))
            .toList();
    int held = 0;
    for (String part :
        List.of(
            PACKER,
            StandUnit.stretcher(Side.FRONT, true),
            StandUnit.TOP,
            StandUnit.face(1),
            StandUnit.face(2))) {
      if (held < ENOUGH
          && draft.hasBoard(part)
          && Patch.between(draft.board(SILL), draft.board(part)).isPresent()) {
        held += draft.joinWhereRoom(Joints.screwed(true), SILL, part, inTheWay).fasteners().size();
      }
    }
    if (held < LEAST) {
      draft.remark(
          Remark.Weight.STOP,
          "paddle-unsupported",
          List.of(SILL),
          "the paddle's sill finds room for %d screw(s) into the stand".formatted(held),
          "write a wider paddle (paddle.width), or a stand whose front is not covered there");
    }
  }

  /** Two screws through the cheeks into the board's edges are its axis. */
  private void pivots(Draft draft) {
    double through = t + PaddlePlan.WASHER;
    Area board = plan.board();
    Optional<Screw> screw = draft.fixings().shelf().choose(through, plan.ear(), true);
    if (screw.isEmpty()) {
      draft.remark(
          Remark.Weight.STOP,
          "paddle-pivot",
          List.of(BOARD),
          "no screw at hand goes through a cheek of %s and holds in the paddle's edge"
              .formatted(draft.length(t)),
          "add a longer screw to workshop.screws, or take a thinner sheet");
      return;
    }
    List<Fastener> pivots = new ArrayList<>();
    for (String cheek : CHEEKS) {
      boolean left = cheek.equals(CHEEKS.get(0));
      double x = left ? board.left() - through : board.right() + through;
      pivots.add(
          new Fastener(
              cheek + "/screw-1",
              FastenerKind.WOOD_SCREW,
              List.of(cheek, BOARD),
              new Vec(x, plan.axisY(), plan.axisZ()),
              new Vec(left ? 1 : -1, 0, 0),
              screw.get().length(),
              screw.get().gauge().shank(),
              screw.get().gauge().shank(),
              screw.get().head(),
              false,
              "pivot"));
    }
    draft.fasten(pivots);
  }

  private void tellMotion(Draft draft) {
    Vec axis = new Vec(plan.board().centreX(), plan.axisY(), plan.axisZ());
    Vec board = draft.board(BOARD).body().centroid().minus(axis).scale(draft.board(BOARD).mass());
    Vec block = draft.board(BLOCK).body().centroid().minus(axis).scale(draft.board(BLOCK).mass());
    Vec moment = board.plus(block);
    // Let go, its balance point swings to below the axis.
    double hangs = Math.min(0, -Math.toDegrees(Math.atan2(moment.y(), -moment.z())));
    List<Contact> contacts = new ArrayList<>(List.of(new Contact(BOARD, BUMPER)));
    draft.touch(BOARD, BUMPER);
    draft.mover(
        new Mover(
            PRESSES,
            List.of(BOARD, BLOCK),
            new Turn(axis, new Vec(1, 0, 0), hangs, plan.travel(), 0),
            contacts,
            Setting.aside(List.of(STOP))));
    draft.remark(
        Remark.Weight.NOTE,
        "paddle-use",
        List.of(BOARD),
        "the paddle stops the saw without a hand, once its board has swung by %.1f degrees"
            .formatted(plan.travel()),
        "it never replaces the switch: it covers no start, holds nothing on, and leaves key and"
            + " no-volt release as they are; the saw's manual rules");
  }
}
