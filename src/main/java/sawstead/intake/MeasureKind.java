package sawstead.intake;

import sawstead.measure.AngleText;
import sawstead.measure.DensityText;
import sawstead.measure.LengthFormat;
import sawstead.measure.LengthText;
import sawstead.measure.MassText;
import sawstead.measure.Parsed;
import sawstead.measure.Unit;

/** What a measure is of, told by its {@code x-unit}. */
enum MeasureKind {
  LENGTH("mm", "a length"),
  MASS("kg", "a mass"),
  ANGLE("deg", "an angle"),
  DENSITY("kg/m3", "a density");

  private final String unit;
  private final String words;

  MeasureKind(String unit, String words) {
    this.unit = unit;
    this.words = words;
  }

  /** The kind of an {@code x-unit}. */
  static MeasureKind of(String unit) {
    for (MeasureKind kind : values()) {
      if (kind.unit.equals(unit)) {
        return kind;
      }
    }
    throw new IllegalStateException("the schema has a measure in `" + unit + "`");
  }

  /** In a sentence. */
  String words() {
    return words;
  }

  Parsed parse(String text, Unit units) {
    return switch (this) {
      case LENGTH -> LengthText.parse(text, units);
      case MASS -> MassText.parse(text, units);
      case ANGLE -> AngleText.parse(text);
      case DENSITY -> DensityText.parse(text);
    };
  }

  /** A value in a sentence, in the file's units. */
  String inWords(double value, Unit units) {
    return this == LENGTH
        ? LengthFormat.of(units).inWords(value)
        : LengthFormat.millimetres().text(value) + " " + unit;
  }
}
