package witnessmark.desktop.engines;

import witnessmark.domain.Entry;

/**
 * One entry of a line of life, ready to be drawn.
 *
 * @param source the entry
 * @param kind what it is
 * @param from when it began, milliseconds since 1970
 * @param to when it was over; the same as from for what has no length
 * @param minutes how high a run stands; 0 for all else
 * @param label beside it, where there is room; may be empty
 * @param words the readout
 */
record LifeMark(Entry<?> source, Kind kind, long from, long to, double minutes, String label, String words) {
    /** What is drawn. */
    enum Kind {
        /** A time in a car. */
        CAR,
        /** Running told of. */
        TOLD,
        RUN,
        /** A run with an over-rev. */
        OVER_REV,
        /** A run that is perhaps the same as another: it does not count. */
        DOUBTFUL,
        MISSED,
        /** An incident that is only noted. */
        NOTED,
        /** An incident that cost time or a run. */
        LOST,
        /** An incident that ended the day, or the engine. */
        STOPPED,
        /** The engine opened and closed. */
        BUILD,
        /** A build that opened the bottom end. */
        REBUILD,
        SKIM,
        WORK;

        /** Whether it is an incident of any severity. */
        boolean ofIncident() {
            return this == NOTED || this == LOST || this == STOPPED;
        }
    }
}
