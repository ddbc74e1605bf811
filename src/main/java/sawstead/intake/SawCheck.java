package sawstead.intake;

import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.Footing;
import sawstead.brief.MiterSlot;
import sawstead.brief.Saw;
import sawstead.brief.Trunnion;
import sawstead.measure.Measured;

/** Refuses measurements of a saw that contradict each other. */
final class SawCheck {
  /** No table is farther out of flat, mm (common practice, no source). */
  private static final double UNEVEN = 10;

  /** As {@code SawTable.heights} has them. */
  private static final List<String> CORNERS =
      List.of("frontLeft", "frontRight", "rearLeft", "rearRight", "centre");

  private final Section section;
  private final Saw saw;

  SawCheck(Section section, Saw saw) {
    this.section = section;
    this.saw = saw;
  }

  void check() {
    outline(section, "feet", saw.feet().outline());
    outline(section, "body", saw.body());
    saw.opening().ifPresent(opening -> outline(section, "opening", opening));
    saw.tilt().trunnion().ifPresent(this::trunnion);
    if (Stream.of("table", "blade").noneMatch(section::isBad)) {
      flat();
      bladeWithinTable();
      slots();
    }
    section.sections("behind").forEach(this::behind);
  }

  private void flat() {
    double height = saw.table().height().nominal();
    List<Measured> heights = saw.table().heights();
    for (int k = 0; k < CORNERS.size(); k++) {
      double off = heights.get(k).nominal() - height;
      if (Math.abs(off) > UNEVEN) {
        note(
            section.section("table").section("heights"),
            CORNERS.get(k),
            "the table is "
                + mm(Math.abs(off))
                + (off > 0 ? " higher" : " lower")
                + " there than its height of "
                + mm(height),
            "measure both again, from what the saw stands on; no table is that uneven");
      }
    }
  }

  private void bladeWithinTable() {
    Section blade = section.section("blade");
    if (saw.blade().leftEdge().nominal() >= saw.table().width().nominal()) {
      note(
          blade,
          "leftEdge",
          "the blade is "
              + mm(saw.blade().leftEdge().nominal())
              + " from the left edge of a table that is "
              + mm(saw.table().width().nominal())
              + " wide",
          "measure both again, from the blade plane");
    }
    if (saw.blade().arbor().nominal() >= saw.table().depth().nominal()) {
      note(
          blade,
          "arbor",
          "the arbor is "
              + mm(saw.blade().arbor().nominal())
              + " behind the front edge of a table that is "
              + mm(saw.table().depth().nominal())
              + " deep",
          "measure both again, from the table's front edge");
    }
    if (saw.blade().kerf().nominal() <= saw.blade().plate().nominal()) {
      note(
          blade,
          "kerf",
          "the kerf is "
              + mm(saw.blade().kerf().nominal())
              + ", no wider than the plate, "
              + mm(saw.blade().plate().nominal()),
          "measure the teeth across their tips");
    }
  }

  private void trunnion(Trunnion trunnion) {
    Section tilt = section.section("tilt");
    outline(tilt, "trunnion", trunnion.area());
    if (trunnion.bottom().nominal() <= saw.table().thickness().nominal()) {
      note(
          tilt.section("trunnion"),
          "bottom",
          "the trunnion's lowest point is not below the table, which is "
              + mm(saw.table().thickness().nominal())
              + " thick",
          "measure from the table's top down to it");
    }
  }

  private void outline(Section parent, String key, Footing outline) {
    if (parent.isBad(key) || Stream.of("feet", "blade", "table").anyMatch(section::isBad)) {
      return;
    }
    Section at = parent.section(key);
    if (outline.left().nominal() + outline.right().nominal() <= 0) {
      note(
          at,
          "right",
          "the " + key + "'s right side is not to the right of its left side",
          "write left and right as distances from the blade plane, positive outward");
    }
    if (outline.rear().nominal() <= outline.front().nominal()) {
      note(
          at,
          "rear",
          "the " + key + "'s rear side is not behind its front side",
          "write front and rear as distances from the table's front edge");
    }
  }

  private void slots() {
    double left = -saw.blade().leftEdge().nominal();
    double right = saw.table().width().nominal() + left;
    for (Section slot : section.sections("slots")) {
      if (Stream.of("at", "width", "footWidth").anyMatch(slot::isBad)) {
        continue;
      }
      double at = slot.measure("at").nominal();
      double half = slot.measure("width").nominal() / 2;
      foot(slot, 2 * half);
      if (at - half < left || at + half > right) {
        note(
            slot,
            "at",
            "the slot at "
                + mm(at)
                + " lies outside the table, which runs from "
                + mm(left)
                + " to "
                + mm(right),
            "measure from the blade plane to the slot's middle, negative to the left");
      }
    }
    for (MiterSlot slot : saw.slots()) {
      if (slot.depth().nominal() >= saw.table().thickness().nominal()) {
        note(
            section.section("table"),
            "thickness",
            "a slot is "
                + mm(slot.depth().nominal())
                + " deep in a table that is "
                + mm(saw.table().thickness().nominal())
                + " thick",
            "measure the thickness at the slot, or leave it out");
      }
    }
  }

  private void foot(Section slot, double width) {
    if (slot.has("footWidth") && slot.measure("footWidth", width).nominal() < width) {
      note(
          slot,
          "footWidth",
          "the widest part of the bar is narrower than its slot, " + mm(width),
          "write the widest of bar and washer, or leave it out");
    }
  }

  private void behind(Section thing) {
    if (Stream.of("left", "right", "top", "bottom").anyMatch(thing::isBad)) {
      return;
    }
    String id = thing.text("id").orElse("thing");
    if (thing.measure("right").nominal() <= thing.measure("left").nominal()) {
      note(
          thing,
          "right",
          "the right end of `" + id + "` is not to the right of its left end",
          "write both from the blade plane, negative to the left");
    }
    if (thing.measure("bottom").nominal() <= thing.measure("top").nominal()) {
      note(
          thing,
          "bottom",
          "the lowest point of `" + id + "` is not below its top",
          "write both as depths below the table's top");
    }
  }

  private void note(Section at, String key, String what, String remedy) {
    at.problem(key, what, remedy);
  }

  private String mm(double length) {
    return section.reading().inWords(length);
  }
}
