package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.Content;

/** Reads the {@code contents} of a wing or of the outfeed. */
final class ContentsMapper {

  private ContentsMapper() {}

  static List<Content> contents(Section unit) {
    Duplicates ids = new Duplicates();
    List<Content> contents = new ArrayList<>();
    for (Section thing : unit.sections("contents")) {
      contents.add(
          new Content(
              ids.fresh(thing, "id"),
              thing.measure("width"),
              thing.measure("depth"),
              thing.measure("height"),
              thing.measure("mass")));
    }
    return contents;
  }
}
