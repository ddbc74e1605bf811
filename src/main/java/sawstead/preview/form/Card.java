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
   * @param list path of the list that it is an item of; empty for none
   * @param index of the item; the number of items in the group that asks for one more
   */
  record Group(String title, List<Field> fields, String list, int index) {
    Group {
      fields = List.copyOf(fields);
    }

    /** Asks for one more item of a list, and has no values. */
    boolean isMore() {
      return !list.isEmpty() && fields.isEmpty();
    }

    /** An item of a list, which can be taken away. */
    boolean isItem() {
      return !list.isEmpty() && !fields.isEmpty();
    }
  }
}
