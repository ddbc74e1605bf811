/**
 * The door of the house: a brief as text becomes a brief as values, or a list of everything that is
 * wrong with it.
 *
 * <p><b>Enters:</b> a YAML file (UTF-8, at most 1 MiB) or its bytes.
 *
 * <p><b>Leaves:</b> a {@link sawstead.brief.Brief} in millimetres, degrees and kilograms, every
 * measured value with its path, its band and its origin; or a {@link
 * sawstead.intake.BriefException} with every problem found, each with its line, its path and what
 * to write instead.
 *
 * <p>The steps are the classes:
 *
 * <ol>
 *   <li>{@code YamlTree}: bytes to a tree with line numbers. Size, depth and the number of values
 *       after aliases unfold are limited; tags, duplicate keys and several documents are refused.
 *   <li>{@code SchemaCheck}: the tree against {@code brief.schema.json} (JSON Schema 2020-12), for
 *       keys and kinds of values; an unknown key names the nearest known one.
 *   <li>one mapper class for each section ({@code SawMapper}, {@code StockMapper} ...) that reads
 *       its keys through {@code Section}: text to lengths, ranges, defaults, bands.
 *   <li>{@code BriefReader} conducts, and throws once at the end with all problems.
 * </ol>
 *
 * <p><b>Guaranteed:</b> whatever the bytes, either a complete brief or a {@code BriefException}
 * comes out, nothing else. The schema is the one list of keys, ranges and fixed defaults; a test
 * compares it with what the mappers read.
 *
 * <p>Classes without a test of their own name (mappers of small sections, the words for faults) are
 * tested where they show: in {@code SawMapperTest} and {@code StationMapperTest}, and message by
 * message in {@code FlawedBriefsTest}.
 *
 * <p><b>Knows nothing of</b> stations: whether a saw fits on its stand is for others to say.
 */
package sawstead.intake;
