package sawstead.intake;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import sawstead.measure.LengthFormat;
import sawstead.measure.Unit;

/**
 * What all mappers of one brief share.
 *
 * @param problems what is wrong so far
 * @param units the unit of plain numbers
 * @param asked every key that a mapper asked for, list indices left out: {@code saw.slots[].at}
 * @param folder where unit files that the brief names are looked for
 */
record Reading(Problems problems, Unit units, Set<String> asked, Path folder) {

  Reading(Problems problems, Unit units) {
    this(problems, units, new TreeSet<>(), Path.of(""));
  }

  /** A length in a sentence, in the file's units. */
  String inWords(double millimetres) {
    return LengthFormat.of(units).inWords(millimetres);
  }
}
