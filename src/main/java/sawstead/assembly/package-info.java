/**
 * From a station to the order in which a person builds it.
 *
 * <p><b>Enters:</b> a {@link sawstead.station.Station}; the steps that its units tell are taken as
 * groups with words, never as an order that works. <b>Leaves:</b> a {@link
 * sawstead.assembly.BuildPlan}: steps in order with what is placed and along which way, the
 * fasteners that are driven in each with the tool that reaches them, mass, hands and cautions, and
 * how envelopes come out of the finished station. <b>Guaranteed:</b>
 *
 * <ol>
 *   <li>every body is placed by exactly one step, and every fastener is driven in exactly one;
 *   <li>what a step places comes along its way without being deeper than half the contact tolerance
 *       in anything that stands by then (arcs as polygons outside them), unless the plan says that
 *       no way was found;
 *   <li>a fastener called reachable has a tool whose whole envelope, at the angle told, is free of
 *       everything that stands when it is driven;
 *   <li>"no way" is only said of motions that were tried completely, and as "no way without
 *       tilting"; what could not be decided is said to be undecided.
 * </ol>
 *
 * <p>The steps of the search: {@link sawstead.assembly.Stage} counts off the rigid things; {@link
 * sawstead.assembly.Blocking} says which of them stand in each other's way; {@link
 * sawstead.assembly.Reach} which of them stand in the way of a tool; {@link
 * sawstead.assembly.Dismantling} takes the finished station apart, group by group; {@link
 * sawstead.assembly.Assembly} turns that round. Taking a thing off never blocks another, so a
 * greedy pass is complete for the groups and motions tried, and what remains when it stops is the
 * proof.
 *
 * <p><b>Knows nothing of</b> findings, files or how a part was designed.
 */
package sawstead.assembly;
