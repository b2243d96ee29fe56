package witnessmark.domain;

/** What the places are counted by at which something is measured. */
public enum PlacedAt {
    /** Once for the engine. */
    ENGINE,
    /** Each cylinder. */
    CYLINDER,
    /** Each main bearing: one more than the throws of a crank that is borne on both sides of each. */
    MAIN
}
