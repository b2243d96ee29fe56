package witnessmark.abuse;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * How often each fault is tried: the short count in every build, the long one with {@code -Plong}. One count can be set
 * alone by {@code -Dabuse.<fault>=<count>}, the seed of all by {@code -Dseed=<number>}.
 */
final class Numbers {
    /** Whether this is the long run. */
    static final boolean LONG = Boolean.getBoolean("abuse.long");

    private static final long SEED = 20_260_708L;

    private Numbers() {}

    static int of(String fault, int everyBuild, int longRun) {
        return Integer.getInteger("abuse." + fault, LONG ? longRun : everyBuild);
    }

    static long seed() {
        return Long.getLong("seed", SEED);
    }

    /** Chance that can be thrown again; another one for each fault. */
    static Random random(String fault) {
        return new Random(seed() ^ fault.hashCode());
    }

    /** Says in one line what a fault came to, for the log of the build. */
    static void tell(String fault, Map<?, ?> counts) {
        System.out.println(fault + ", seed " + seed() + ": " + new TreeMap<>(counts));
    }
}
