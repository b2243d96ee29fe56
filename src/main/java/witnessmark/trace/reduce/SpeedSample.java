package witnessmark.trace.reduce;

/**
 * An engine speed that was accepted, with what else was so then.
 *
 * @param micros after the part's first sample
 * @param rpm speed
 * @param throttle %, NaN when not known
 * @param gear NaN when not known
 */
record SpeedSample(long micros, double rpm, double throttle, double gear) {
    /** How a sample hangs together with the one before it. */
    enum Link {
        /** Not at all: the first, or after a hole. */
        NONE,
        /** Over a short hole in which the engine went on running. */
        BRIDGED,
        /** The next one. */
        NEXT
    }

    /** Uses accepted speeds one after another. */
    interface Use {
        void sample(SpeedSample sample, Link link);
    }
}
