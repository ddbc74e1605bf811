package sawstead.preview.form;

import java.util.List;

/**
 * A thing that is measured or wished, with its values.
 *
 * @param title of the card
 * @param means what it is about
 * @param groups values that belong together, each under a title; the first may have none
 */
record Card(String title, String means, List<Group> groups) {
  Card {
    groups = List.copyOf(groups);
  }

  /**
   * Values that belong together.
   *
   * @param title empty for those of the card itself
   * @param fields in the order of the schema
   */
  record Group(String title, List<Field> fields) {
    Group {
      fields = List.copyOf(fields);
    }
  }
}
