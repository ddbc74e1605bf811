package sawstead.brief;

/** What a stand rolls on. */
public sealed interface Casters permits CasterSet, MobileFrame, NoCasters {}
