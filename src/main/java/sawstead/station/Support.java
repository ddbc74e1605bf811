package sawstead.station;

import sawstead.solid.Vec;

/**
 * Where the station stands on the floor.
 *
 * @param at point of the floor, station frame, mm; a caster's under its swivel axis
 * @param wander how far the point of contact may lie from it when the caster swivels, mm
 * @param rating greatest load, kg; infinite where nothing bought carries it
 */
public record Support(Vec at, double wander, double rating) {}
