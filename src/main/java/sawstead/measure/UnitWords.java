package sawstead.measure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * The words that may follow a number of one kind (length, angle, mass), and how to complain when
 * the text cannot be read.
 *
 * @param kind the kind with its article, for messages: {@code a length}
 * @param known the unit words to name when another one was written
 * @param example what to write, for a remedy: {@code for example 34-3/4 in}
 * @param words what each word (lower case) stands for
 * @param refusal makes the exception from what is wrong and the remedy
 */
record UnitWords(
    String kind,
    String known,
    String example,
    Map<String, Word> words,
    BiFunction<String, String, AmountFormatException> refusal) {

  /**
   * A unit.
   *
   * @param factor millimetres, degrees or kilograms in one of it
   * @param smaller the unit of a second number that may follow ({@code 1' 6}), or null
   * @param system the system of lengths that it belongs to, or null
   */
  record Word(BigDecimal factor, String smaller, Unit system) {

    static Word of(String factor, Unit system) {
      return new Word(new BigDecimal(factor), null, system);
    }

    static Word with(String factor, String smaller, Unit system) {
      return new Word(new BigDecimal(factor), smaller, system);
    }
  }

  UnitWords {
    words = Map.copyOf(words);
  }

  Optional<Word> word(String text) {
    return Optional.ofNullable(words.get(text.toLowerCase(Locale.ROOT)));
  }

  AmountFormatException refuse(String what, String remedy) {
    return refusal.apply(what, remedy);
  }

  AmountFormatException refuse(String what) {
    return refuse(what, "write " + example);
  }
}
