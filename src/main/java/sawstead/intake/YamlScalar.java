package sawstead.intake;

import java.util.regex.Pattern;

/**
 * What a plain word of YAML stands for, by the core schema of YAML 1.2 without its octal and
 * hexadecimal numbers, which nobody measures in, and without infinities and NaN, which are no
 * measurements: all of these stay words, as {@code yes} and {@code off} do, and are refused where a
 * number is wanted.
 */
final class YamlScalar {

  private static final Pattern NOTHING = Pattern.compile("|~|null|Null|NULL");
  private static final Pattern SWITCH = Pattern.compile("true|True|TRUE|false|False|FALSE");

  /** An exponent of more than three digits would be no finite double, and is slow to compute. */
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]{1,3})?");

  private YamlScalar() {}

  static Item.Scalar resolve(int line, String text, boolean plain) {
    if (!plain) {
      return new Item.Scalar(line, text, Item.Kind.TEXT);
    }
    return new Item.Scalar(line, text, kind(text));
  }

  private static Item.Kind kind(String text) {
    if (NOTHING.matcher(text).matches()) {
      return Item.Kind.NOTHING;
    }
    if (SWITCH.matcher(text).matches()) {
      return Item.Kind.SWITCH;
    }
    return text.length() <= 80 && NUMBER.matcher(text).matches()
        ? Item.Kind.NUMBER
        : Item.Kind.TEXT;
  }
}
