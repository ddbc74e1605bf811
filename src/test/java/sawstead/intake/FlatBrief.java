package sawstead.intake;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Every value of a brief by its place among the records, to compare two briefs with a tolerance.
 */
final class FlatBrief {

  private FlatBrief() {}

  static Map<String, Object> of(Record brief) {
    Map<String, Object> values = new TreeMap<>();
    collect("", brief, values);
    return values;
  }

  private static void collect(String path, Object value, Map<String, Object> values) {
    if (value instanceof Record record) {
      values.put(path + "/", record.getClass().getSimpleName());
      for (RecordComponent part : record.getClass().getRecordComponents()) {
        collect(path + "." + part.getName(), get(part, record), values);
      }
    } else if (value instanceof List<?> list) {
      values.put(path + ".size", list.size());
      for (int i = 0; i < list.size(); i++) {
        collect(path + "[" + i + "]", list.get(i), values);
      }
    } else if (value instanceof Optional<?> optional && optional.isPresent()) {
      collect(path, optional.get(), values);
    } else {
      values.put(path, value);
    }
  }

  private static Object get(RecordComponent part, Record record) {
    try {
      return part.getAccessor().invoke(record);
    } catch (ReflectiveOperationException broken) {
      throw new AssertionError(broken);
    }
  }
}
