package sawstead.preview.tape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the words above a tape stand: on the left what the thumb reads, on the right what the whole
 * way is; neither on the other nor on the sign of the first contact, nor beyond the tape.
 *
 * @param reads room of what the thumb reads, to be cut short where it is narrower; empty where
 *     there is none
 * @param says room of what the whole way is, to be cut short where it is narrower; empty where
 *     there is none
 */
record Captions(Optional<Room> reads, Optional<Room> says) {
  private static final double EDGE = 6;

  /** From the middle of the sign. */
  private static final double SIGN = 11;

  private static final double GAP = 14;

  /** Less is not worth a word. */
  private static final double LEAST = 60;

  /** From where to where, pixels. */
  record Room(double from, double to) {
    double width() {
      return to - from;
    }
  }

  /** One way to place both. */
  private record Choice(Room reads, Room says, double wanted) {
    double room() {
      return Math.min(says.width(), wanted);
    }
  }

  /**
   * Places both.
   *
   * @param width of the tape, pixels
   * @param sign middle of the sign of the first contact, where there is one
   * @param reads width of what the thumb reads, pixels
   * @param least what is left of that when it is cut short, pixels
   * @param says width of what the whole way is, pixels
   */
  static Captions of(double width, OptionalDouble sign, double reads, double least, double says) {
    List<Room> free = free(width, sign);
    Choice best = null;
    for (int i = 0; i < free.size(); i++) {
      // The way belongs to the right: that is tried first, and only a better place takes it away.
      for (int j = free.size() - 1; j >= 0; j--) {
        Room left = free.get(i);
        if (left.width() < reads) {
          continue;
        }
        Room thumb = new Room(left.from(), left.from() + reads);
        double from = i == j ? thumb.to() + GAP : free.get(j).from();
        Choice choice = new Choice(thumb, new Room(from, free.get(j).to()), says);
        if (best == null || choice.room() > best.room() + 1e-9) {
          best = choice;
        }
      }
    }
    if (best == null) {
      // Nothing beside it then: what the thumb reads is what somebody looks for.
      return new Captions(
          free.stream()
              .max(Comparator.comparingDouble(Room::width))
              .filter(room -> room.width() >= Math.min(reads, least)),
          Optional.empty());
    }
    boolean worth = best.room() >= Math.min(says, LEAST) && says > 0;
    Room to = best.says();
    Room room = new Room(Math.max(to.from(), to.to() - says), to.to());
    return new Captions(Optional.of(best.reads()), worth ? Optional.of(room) : Optional.empty());
  }

  private static List<Room> free(double width, OptionalDouble sign) {
    List<Room> free = new ArrayList<>();
    if (sign.isEmpty()) {
      free.add(new Room(EDGE, width - EDGE));
    } else {
      free.add(new Room(EDGE, sign.getAsDouble() - SIGN));
      free.add(new Room(sign.getAsDouble() + SIGN, width - EDGE));
    }
    return free;
  }
}
