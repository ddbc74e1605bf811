package sawstead.preview.form;

import java.util.List;
import java.util.Objects;

/**
 * One value to be filled in.
 *
 * @param path in the brief
 * @param title in a word or two
 * @param means what is meant, for who wants to know more
 * @param hint what stands there when nothing is written: the default, or an example
 * @param choices words to choose from; empty for free text
 * @param scale what kind of number it is
 * @param unit of {@code min} and {@code max}; empty for none
 * @param min least that is accepted
 * @param max greatest that is accepted
 */
record Field(
    String path,
    String title,
    String means,
    String hint,
    List<String> choices,
    Scale scale,
    String unit,
    double min,
    double max) {
  /** The choice that writes a section out. */
  static final String WRITE_OUT = "write it out";

  Field {
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(scale, "scale");
    choices = List.copyOf(choices);
  }
}
