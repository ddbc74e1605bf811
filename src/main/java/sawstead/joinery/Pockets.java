package sawstead.joinery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sawstead.solid.Face;
import sawstead.solid.PocketBore;
import sawstead.solid.Vec;

/** Cuts the pockets of a pocket joint and puts a screw in each. */
final class Pockets {
  /** Length for stock of about 3/4 in, and of about 1/2 in, mm (REF-TRD-04). */
  private static final double FOR_THICK = 31.75;

  private static final double FOR_THIN = 25.4;

  /** Stock from here on takes the longer screw, mm. */
  private static final double THICK = 15;

  private Pockets() {}

  static Joined cut(Meeting meeting, PocketJoint joint, boolean glued, Fixings fixings) {
    Board first = meeting.first();
    PocketBit bit = new PocketBit(first.thickness());
    Optional<Screw> chosen = choose(meeting, bit, fixings);
    if (chosen.isEmpty()) {
      String lack =
          String.format(
              Locale.ROOT,
              "no pocket screw at hand suits %s against %s: %s",
              fixings.lengths().near(first.thickness()),
              fixings.lengths().near(meeting.depthOfSecond()),
              meeting.where());
      return meeting.joined(first, meeting.second(), new Fastened(List.of(), List.of(lack)));
    }
    Screw screw = chosen.get();
    double web = bit.web(screw.length(), meeting.depthOfSecond());
    Vec slant = slant(meeting, joint.face());
    Fastened put =
        new RowLayout(
                Row.of(meeting, Spacing.SCREWS),
                new Clearance(first, meeting.second(), fixings),
                fixings.nextNumber(first.id(), FastenerKind.POCKET_SCREW))
            .filled(
                at -> candidate(meeting, screw, exit(meeting, at), slant, web, bit, glued),
                "pocket screws",
                meeting.where());
    Board pocketed = first;
    for (Fastener fastener : put.fasteners()) {
      pocketed = pocketed.with(bore(first, fastener, bit.run() - web));
    }
    Joined joined = meeting.joined(pocketed, meeting.second(), put);
    return meeting.intoEdge()
        ? joined.lacking(
            List.of("pocket screws hold badly in an edge, they want a face: " + meeting.where()))
        : joined;
  }

  /** The screw nearest to the usual length that holds and whose head seats under the face. */
  private static Optional<Screw> choose(Meeting meeting, PocketBit bit, Fixings fixings) {
    double usual = bit.thickness() >= THICK ? FOR_THICK : FOR_THIN;
    double mate = meeting.depthOfSecond();
    return fixings
        .shelf()
        .pocketScrews()
        .filter(s -> s.head() <= PocketBit.DIAMETER)
        .filter(s -> bit.web(s.length(), mate) <= bit.greatestWeb() + Board.SAME)
        .filter(s -> ScrewShelf.hold(s, bit.web(s.length(), mate)) >= ScrewShelf.CLAMPING_HOLD)
        .min(
            Comparator.comparingDouble((Screw s) -> Math.abs(s.length() - usual))
                .thenComparingInt(s -> -s.gauge().number()));
  }

  /** Direction of the bit: towards the mate, and away from the face that it enters. */
  private static Vec slant(Meeting meeting, Face face) {
    Vec outward = meeting.first().placement().w().scale(face == Face.FRONT ? 1 : -1);
    return meeting.patch().direction().scale(PocketBit.COS).minus(outward.scale(PocketBit.SIN));
  }

  /** The point of the board's end that is in the middle of its thickness. */
  private static Vec exit(Meeting meeting, Vec onPatch) {
    Board first = meeting.first();
    return Heading.with(onPatch, first.through(), first.box().centre().along(first.through()));
  }

  private static Candidate candidate(
      Meeting meeting, Screw screw, Vec exit, Vec slant, double web, PocketBit bit, boolean glued) {
    Board first = meeting.first();
    Fastener fastener =
        new Fastener(
            first.id() + "/" + FastenerKind.POCKET_SCREW.word() + "-",
            FastenerKind.POCKET_SCREW,
            List.of(first.id(), meeting.second().id()),
            exit.minus(slant.scale(web)),
            slant,
            screw.length(),
            screw.gauge().shank(),
            screw.gauge().pilot(Wood.of(meeting.second(), meeting.intoEdge())),
            screw.head(),
            glued,
            "pocket");
    Rod pocket = new Rod(exit.minus(slant.scale(bit.run())), fastener.at(), PocketBit.DIAMETER / 2);
    List<Rod> room = new ArrayList<>(Candidate.of(fastener).room());
    room.add(pocket);
    return new Candidate(fastener, room);
  }

  private static PocketBore bore(Board board, Fastener fastener, double depth) {
    Vec entry = fastener.at().minus(fastener.axis().scale(depth));
    return new PocketBore(
        board.local(entry),
        board.placement().inverse().turn(fastener.axis()),
        PocketBit.DIAMETER,
        depth);
  }
}
