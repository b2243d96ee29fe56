package witnessmark.logbook.run;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedTime;

/** Reads running time, the one figure every run needs. */
final class ReadRunning {
    /** A run shorter than this, or longer than the next, is asked about (common practice, no source). */
    static final RunningTime SHORTEST_USUAL = new RunningTime(3 * 60_000L);

    static final RunningTime LONGEST_USUAL = new RunningTime(3 * 3_600_000L);
    private static final RunningTime LONGEST = new RunningTime(24 * 3_600_000L);

    private ReadRunning() {}

    static @Nullable RunningTime read(String text, Map<RunField, FieldReading> out) {
        if (text.isBlank()) {
            out.put(RunField.RUNNING, FieldReading.wrong(Problem.of(ProblemKind.NEEDED, RunField.RUNNING)));
            return null;
        }
        Typed<RunningTime> typed = TypedTime.read(text);
        if (typed instanceof Typed.Two<RunningTime> two) {
            out.put(RunField.RUNNING, two(text, two));
            return null;
        }
        if (typed instanceof Typed.Unreadable<RunningTime> no) {
            out.put(RunField.RUNNING, FieldReading.wrong(Problem.unread(RunField.RUNNING, text.strip(), no.example())));
            return null;
        }
        RunningTime time = ((Typed.Read<RunningTime>) typed).value();
        out.put(RunField.RUNNING, judged(time));
        return time.millis() == 0 || time.compareTo(LONGEST) >= 0 ? null : time;
    }

    /** Two readings stop the sheet; the likelier one is offered. */
    private static FieldReading two(String text, Typed.Two<RunningTime> two) {
        return new FieldReading(
                Note.of(Note.Kind.NONE),
                Problem.of(ProblemKind.TWO_READINGS, RunField.RUNNING, text.strip(), two.first(), two.second()),
                AsTyped.time(two.first()));
    }

    private static FieldReading judged(RunningTime time) {
        if (time.millis() == 0) {
            return FieldReading.wrong(Problem.of(ProblemKind.RUN_OF_NO_LENGTH, time));
        }
        if (time.compareTo(LONGEST) >= 0) {
            return FieldReading.wrong(Problem.of(ProblemKind.RUN_TOO_LONG, time, LONGEST));
        }
        if (time.compareTo(SHORTEST_USUAL) < 0 || time.compareTo(LONGEST_USUAL) > 0) {
            return new FieldReading(
                    Note.of(Note.Kind.UNDERSTOOD, time),
                    Problem.of(ProblemKind.RUN_LENGTH_UNUSUAL, time, SHORTEST_USUAL, LONGEST_USUAL),
                    null);
        }
        return FieldReading.fine(Note.of(Note.Kind.UNDERSTOOD, time));
    }
}
