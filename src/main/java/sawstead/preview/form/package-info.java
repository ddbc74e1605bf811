/**
 * The brief as a form, made from its JSON Schema alone: a key that is added to the schema appears
 * here without code.
 *
 * <p><b>Enters:</b> the schema, and the text with the places of its values. <b>Leaves:</b> changes
 * of one value each. <b>Guaranteed:</b> a change touches the bytes of its value and no others.
 * <b>Knows nothing of</b> stations.
 */
package sawstead.preview.form;
