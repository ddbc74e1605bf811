package sawstead.brief;

/** What a user takes away from a panel. */
public sealed interface Cut permits CircleCut, OpeningCut, GrooveCut, RecessCut {}
