package witnessmark.logbook.run;

import java.util.List;
import java.util.Map;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** Track time, warm-up and loaded time are parts of running time and cannot be longer. */
final class PartsOfRunning {
    private static final List<RunField> PARTS = List.of(RunField.TRACK, RunField.WARM_UP, RunField.LOADED);

    private PartsOfRunning() {}

    /** Puts a stop where a part is longer than the whole, and what the warm-up leaves where it is not. */
    static void check(RunningTime running, Map<RunField, Object> values, Map<RunField, FieldReading> out) {
        for (RunField field : PARTS) {
            if (!(values.get(field) instanceof RunningTime part)) {
                continue;
            }
            if (part.compareTo(running) > 0) {
                out.put(field, FieldReading.wrong(Problem.of(ProblemKind.LONGER_THAN_RUN, field, part, running)));
            } else if (field == RunField.WARM_UP) {
                RunningTime left = new RunningTime(running.millis() - part.millis());
                out.put(field, FieldReading.fine(Note.of(Note.Kind.LEAVES, left)));
            }
        }
    }
}
