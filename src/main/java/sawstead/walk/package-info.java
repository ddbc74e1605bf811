/**
 * The interview: it asks a person with a tape in hand, in the order in which one walks round a saw,
 * and turns the answers into a brief.
 *
 * <p><b>Enters:</b> the schema of a brief with its annotations ({@code x-walk}: at which stop a key
 * is asked, {@code x-typical}: what may stand in for it, {@code x-walk-if}: when it is asked), and
 * answers as people give them. <b>Leaves:</b> the next question with its drawing, and at the end a
 * commented brief. <b>Guaranteed:</b>
 *
 * <ul>
 *   <li>a key that is added to a section of the schema is asked at the stop of its section, without
 *       code;
 *   <li>{@code unknown} is legal everywhere; what then stands in says so in the brief, with its
 *       band;
 *   <li>an answer is taken only if the reader of briefs finds no fault with it together with all
 *       answers before it; so the brief at the end can be read;
 *   <li>the interview is a value: the same answers give the same brief, whether it was stopped in
 *       between or not.
 * </ul>
 *
 * <p>What is typical is common practice, no source. <b>Knows nothing of</b> terminals, windows and
 * stations.
 */
package sawstead.walk;
