package sawstead.walk;

import java.util.List;

/**
 * One question.
 *
 * @param path of the value in the brief
 * @param kind what is an answer to it
 * @param stop where one stands
 * @param title in a word or two
 * @param means what is to be measured or decided, in a sentence or two
 * @param asks what is asked of a thing as a whole; empty for a single value
 * @param choices words to choose from; empty for what is written freely
 * @param offer what is taken when one only agrees; empty if it has to be answered
 * @param example of an answer
 */
public record Question(
    String path,
    Kind kind,
    Stop stop,
    String title,
    String means,
    String asks,
    List<String> choices,
    String offer,
    String example) {

  /** What is an answer to a question. */
  public enum Kind {
    /** A length, a mass or an angle. */
    MEASURE,
    /** Several lengths in a row, parted by commas. */
    ROW,
    /** One of the choices. */
    CHOICE,
    /** Words. */
    TEXT,
    /** How many there are. */
    COUNT,
    /** Whether there is such a thing, or whether it is measured now. */
    GATE
  }

  /**
   * A place where one stands and measures.
   *
   * @param number from 1
   * @param of how many there are
   * @param title of the place
   */
  public record Stop(int number, int of, String title) {}

  /** Copies the choices. */
  public Question {
    choices = List.copyOf(choices);
  }

  /** Whether one may only agree. */
  public boolean hasOffer() {
    return !offer.isEmpty();
  }
}
