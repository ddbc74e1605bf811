package sawstead.export.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/** Writes keys with the kinds of values that a report has, all numbers through {@link Numbers}. */
final class Json {
  private final JsonGenerator generator;

  Json(JsonGenerator generator) {
    this.generator = generator;
  }

  /** Writes one item of a list. */
  @FunctionalInterface
  interface Item<T> {
    void write(T item) throws IOException;
  }

  void open() throws IOException {
    generator.writeStartObject();
  }

  void close() throws IOException {
    generator.writeEndObject();
  }

  void openObject(String key) throws IOException {
    generator.writeObjectFieldStart(key);
  }

  void text(String key, String value) throws IOException {
    generator.writeStringField(key, value);
  }

  void textOrNull(String key, Optional<String> value) throws IOException {
    if (value.isPresent()) {
      generator.writeStringField(key, value.get());
    } else {
      generator.writeNullField(key);
    }
  }

  void number(String key, double value) throws IOException {
    generator.writeFieldName(key);
    number(value);
  }

  void whole(String key, int value) throws IOException {
    generator.writeNumberField(key, value);
  }

  void truth(String key, boolean value) throws IOException {
    generator.writeBooleanField(key, value);
  }

  void nothing(String key) throws IOException {
    generator.writeNullField(key);
  }

  void vec(String key, Vec value) throws IOException {
    generator.writeFieldName(key);
    vec(value);
  }

  /** A vector as an item of a list. */
  void point(Vec value) throws IOException {
    vec(value);
  }

  void box(String key, Box box) throws IOException {
    generator.writeArrayFieldStart(key);
    vec(box.low());
    vec(box.high());
    generator.writeEndArray();
  }

  void numbers(String key, double[] values) throws IOException {
    generator.writeArrayFieldStart(key);
    for (double value : values) {
      number(value);
    }
    generator.writeEndArray();
  }

  void texts(String key, List<String> values) throws IOException {
    generator.writeArrayFieldStart(key);
    texts(values);
    generator.writeEndArray();
  }

  void pair(String a, String b) throws IOException {
    generator.writeStartArray();
    texts(List.of(a, b));
    generator.writeEndArray();
  }

  /** An array of objects; {@code item} writes what is in the braces. */
  <T> void objects(String key, Collection<T> items, Item<T> item) throws IOException {
    list(
        key,
        items,
        i -> {
          open();
          item.write(i);
          close();
        });
  }

  /** An array; {@code item} writes one whole value. */
  <T> void list(String key, Collection<T> items, Item<T> item) throws IOException {
    generator.writeArrayFieldStart(key);
    for (T each : items) {
      item.write(each);
    }
    generator.writeEndArray();
  }

  /** A number as an item of a list. */
  void number(double value) throws IOException {
    generator.writeNumber(Numbers.of(value));
  }

  private void texts(List<String> values) throws IOException {
    for (String value : values) {
      generator.writeString(value);
    }
  }

  private void vec(Vec value) throws IOException {
    generator.writeStartArray();
    number(value.x());
    number(value.y());
    number(value.z());
    generator.writeEndArray();
  }
}
