package witnessmark.study;

import witnessmark.domain.ReadingKind;

/** What readings are good for, and which way is worse. */
public final class Differs {
    private Differs() {}

    /** What two readings of the same thing differ by, whoever reads, in the unit: common practice, no source. */
    public static long by(ReadingKind.Unit unit) {
        return switch (unit) {
            case HUNDREDTH_OF_PERCENT -> 100;
            case PASCAL -> 50_000;
            case MILLINEWTON -> 5_000;
            case NANOMETRE -> 20_000;
            case TENTH_OF_BRINELL -> 50;
            case MILLIGRAM_PER_TONNE -> 2_000;
            case GRADE -> 0;
        };
    }

    /**
     * Which way a figure gets worse: 1 up, −1 down, 0 either way. A valve's lash closes as its seat goes and opens as lobe
     * and follower wear (trade handbook, what is measured on a build).
     */
    static int worse(ReadingKind kind) {
        return switch (kind) {
            case LEAK_DOWN, OIL_METAL -> 1;
            case COMPRESSION, SPRING_FORCE, HARDNESS, OIL_PRESSURE -> -1;
            case LASH, FILTER, PLUG, BORESCOPE -> 0;
        };
    }
}
