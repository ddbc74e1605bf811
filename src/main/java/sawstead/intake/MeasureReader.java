package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import sawstead.measure.AmountFormatException;
import sawstead.measure.Measured;
import sawstead.measure.Measured.Origin;
import sawstead.measure.Parsed;

/**
 * Reads one length, mass, angle or density: the text, its range, its band, or what stands in for
 * it.
 *
 * <ul>
 *   <li>given with a band: {@code BANDED};
 *   <li>given without: {@code MEASURED}, with the band of the tool it is measured with;
 *   <li>left out: {@code DEFAULT}, with the band that the trade's default has;
 *   <li>{@code unknown}: {@code UNKNOWN}, the default with a wide band.
 * </ul>
 */
final class MeasureReader {

  /** How much wider the band of {@code unknown} is than that of the default, unless said. */
  private static final double UNKNOWN_FACTOR = 4;

  private final Reading reading;
  private final JsonNode schema;
  private final String path;
  private final int line;
  private final Item item;
  private final MeasureKind kind;

  /**
   * A reader for one value.
   *
   * @param item the value, or null if the file has none
   */
  MeasureReader(Reading reading, JsonNode schema, String path, int line, Item item) {
    this.reading = reading;
    this.schema = schema;
    this.path = path;
    this.line = line;
    this.item = item;
    this.kind = MeasureKind.of(schema.path("x-unit").asText());
  }

  /** Whether there is a value other than {@code unknown}. */
  boolean isGiven() {
    return item != null && !isUnknown();
  }

  private boolean isUnknown() {
    return item instanceof Item.Scalar scalar && scalar.text().equals("unknown");
  }

  /** The value, or what stands in for it. */
  Measured value(Fallback fallback) {
    return isGiven() ? given() : standIn(fallback);
  }

  private Measured given() {
    return parsed()
        .filter(value -> new RangeCheck(reading, schema, path, line).accepts(value))
        .map(this::measured)
        .orElseGet(this::placeholder);
  }

  /** What the text says; empty, with the problem noted, if it cannot be read. */
  Optional<Parsed> parsed() {
    if (!(item instanceof Item.Scalar scalar)
        || isUnknown()
        || scalar.type() == Item.Kind.NOTHING
        || scalar.type() == Item.Kind.SWITCH) {
      return Optional.empty();
    }
    try {
      return Optional.of(kind.parse(scalar.text(), reading.units()));
    } catch (AmountFormatException refusal) {
      reading.problems().add(line, path, refusal.what(), refusal.remedy());
      return Optional.empty();
    }
  }

  private Measured measured(Parsed value) {
    if (value.hasBand()) {
      return new Measured(path, value.nominal(), value.minus(), value.plus(), Origin.BANDED);
    }
    double share = schema.path("x-band-percent").asDouble() / 100 * Math.abs(value.nominal());
    double band = schema.path("x-band").asDouble(share);
    return Measured.plusMinus(path, value.nominal(), band, Origin.MEASURED);
  }

  private Measured standIn(Fallback fallback) {
    Optional<Double> nominal = nominal(fallback);
    if (nominal.isEmpty()) {
      noteNothingStandsIn();
      return placeholder();
    }
    double band = fallback.band().orElse(schema.path("x-default-band").asDouble());
    if (isUnknown()) {
      band = schema.path("x-unknown-band").asDouble(UNKNOWN_FACTOR * band);
    }
    double room = nominal.get() - schema.path("x-min").asDouble(Double.NEGATIVE_INFINITY);
    return new Measured(
        path,
        nominal.get(),
        Math.min(band, Math.max(0, room)),
        band,
        isUnknown() ? Origin.UNKNOWN : Origin.DEFAULT);
  }

  private Optional<Double> nominal(Fallback fallback) {
    JsonNode standard = schema.path("default");
    if (fallback.nominal().isPresent()) {
      return Optional.of(fallback.nominal().getAsDouble());
    }
    return standard.isMissingNode()
        ? Optional.empty()
        : Optional.of(kind.parse(standard.asText(), reading.units()).nominal());
  }

  private void noteNothingStandsIn() {
    if (reading.problems().hasAbove(path)) {
      return;
    }
    String title = schema.path("title").asText(path);
    if (isUnknown()) {
      reading
          .problems()
          .add(
              line,
              path,
              title + " is unknown, and nothing can stand in for it",
              "measure it: " + BriefSchema.meaning(schema));
    } else {
      reading.problems().add(line, path, title + " is missing", "add it, for example " + example());
    }
  }

  private String example() {
    return schema.path("examples").path(0).asText("100 mm");
  }

  /** A harmless value that never leaves this room, because a problem has been noted. */
  private Measured placeholder() {
    double low = schema.path("x-min").asDouble();
    double high = schema.path("x-max").asDouble();
    return Measured.of(path, (low + high) / 2);
  }
}
