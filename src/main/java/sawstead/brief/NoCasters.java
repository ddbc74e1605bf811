package sawstead.brief;

/** The base stands on the floor. */
public record NoCasters() implements Casters {}
