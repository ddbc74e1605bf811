package sawstead.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/**
 * A JSON Schema (draft 2020-12) of the program, as text, as it stands, and with every reference
 * followed. It may refer to one other schema, which is then embedded under {@code $defs}, as the
 * standard bundles schemas.
 */
final class SchemaFile {

  private final Optional<SchemaFile> other;
  private final String text;
  private final JsonNode root;
  private final JsonNode expanded;
  private final Schema schema;

  private SchemaFile(String text, Optional<SchemaFile> other) {
    this.text = text;
    this.other = other;
    this.root = parse(text);
    this.expanded = expanded(root);
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(root);
  }

  /** A schema that refers to no other. */
  static SchemaFile of(String resource) {
    return new SchemaFile(load(resource), Optional.empty());
  }

  /** A schema that also refers to another by its {@code $id}. */
  static SchemaFile of(String resource, SchemaFile other) {
    ObjectNode bundle = (ObjectNode) parse(load(resource));
    bundle.withObject("/$defs").set("other", other.root);
    return new SchemaFile(bundle.toPrettyString() + "\n", Optional.of(other));
  }

  /** The whole of it as text. */
  String text() {
    return text;
  }

  /** As it stands in the file. */
  JsonNode root() {
    return root;
  }

  /** With every reference followed; not to be changed. */
  JsonNode expanded() {
    return expanded;
  }

  /** What checks a tree. */
  Schema schema() {
    return schema;
  }

  /**
   * A schema node with what it refers to in its place, all the way down; its own keywords win over
   * those of the reference. The schema has no reference that leads back to itself.
   */
  private JsonNode expanded(JsonNode node) {
    if (node.isArray()) {
      ArrayNode array = JsonNodeFactory.instance.arrayNode();
      node.forEach(item -> array.add(expanded(item)));
      return array;
    }
    if (!node.isObject()) {
      return node;
    }
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    if (node.path("$ref").isTextual()) {
      object.setAll((ObjectNode) referred(node.path("$ref").asText()));
    }
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      if (!field.getKey().equals("$ref") && !field.getKey().equals("$defs")) {
        object.set(field.getKey(), expanded(field.getValue()));
      }
    }
    return object;
  }

  private JsonNode referred(String reference) {
    String pointer = reference.substring(reference.indexOf('#') + 1);
    return reference.startsWith("#")
        ? expanded(root.at(pointer))
        : other.orElseThrow().expanded(other.orElseThrow().root.at(pointer));
  }

  private static String load(String resource) {
    try (InputStream stream = SchemaFile.class.getResourceAsStream(resource)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException("a schema is missing from the program", broken);
    }
  }

  private static JsonNode parse(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (JsonProcessingException broken) {
      throw new UncheckedIOException("a schema of the program is damaged", broken);
    }
  }
}
