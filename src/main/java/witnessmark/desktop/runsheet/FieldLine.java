package witnessmark.desktop.runsheet;

import org.jspecify.annotations.Nullable;
import witnessmark.logbook.run.FieldReading;
import witnessmark.logbook.run.Note;
import witnessmark.outcome.Problem;

/**
 * What stands in the line under a field.
 *
 * @param level how much it matters
 * @param note what is said when there is no problem, or beside a problem that is not shown yet
 * @param problem what is wrong, shown now; null for a note or an echo
 * @param was what stood in the field as it is written, text or {@link witnessmark.logbook.run.Choice}; null while that
 *     still stands there
 */
record FieldLine(
        Level level,
        Note note,
        @Nullable Problem problem,
        @Nullable Object was) {
    /** How much a line matters; the last two outline the field. */
    enum Level {
        NOTE,
        /** What was understood from what was typed. */
        ECHO,
        QUERY,
        STOP
    }

    /** Nothing is wrong, or it is too early to say so. */
    static FieldLine quiet(FieldReading reading, boolean byHand) {
        boolean echo = switch (reading.note().kind()) {
            case UNDERSTOOD, A_LAP, OVER_REV_ABOVE, LEAVES, TYPED -> true;
            case TODAY, DAYS_AGO -> byHand;
            default -> false;
        };
        return new FieldLine(echo ? Level.ECHO : Level.NOTE, reading.note(), null, null);
    }

    static FieldLine loud(FieldReading reading, Problem problem, boolean stops) {
        return new FieldLine(stops ? Level.STOP : Level.QUERY, reading.note(), problem, null);
    }

    /** The same beside a field nobody touched, where an echo is nothing new. */
    FieldLine quieter() {
        return level == Level.ECHO ? new FieldLine(Level.NOTE, note, problem, was) : this;
    }

    /** The same beside a field in which something else is written. */
    FieldLine was(Object before) {
        return new FieldLine(level == Level.NOTE ? Level.ECHO : level, note, problem, before);
    }
}
