package sawstead.house.flawed.station;

/** Part of a house that is wrong on purpose: an open class. */
public class Plan {}
