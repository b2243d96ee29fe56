package witnessmark.logbook.run;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * What the whole sheet came to.
 *
 * @param fields what each field came to
 * @param run the run these fields make, not yet written; null while one that is needed stops
 * @param problems what is wrong with the run as a whole, or to be asked
 */
public record RunReading(
        Map<RunField, FieldReading> fields, @Nullable Entry<Run> run, List<Problem> problems) {
    public RunReading {
        EnumMap<RunField, FieldReading> copy = new EnumMap<>(RunField.class);
        copy.putAll(fields);
        fields = Collections.unmodifiableMap(copy);
        problems = List.copyOf(problems);
    }

    /** What one field came to. */
    public FieldReading of(RunField field) {
        FieldReading reading = fields.get(field);
        return reading != null ? reading : FieldReading.fine(Note.of(Note.Kind.NONE));
    }

    /** Whether it cannot be saved as it stands. */
    public boolean stops() {
        return run == null
                || problems.stream().anyMatch(Problem::stops)
                || fields.values().stream().anyMatch(FieldReading::stops);
    }

    /** The fields that stop the sheet, in order; a run that was out at that time is put right at its own time out. */
    public List<RunField> stopped() {
        Set<RunField> stopped = EnumSet.noneOf(RunField.class);
        fields.forEach((field, reading) -> {
            if (reading.stops()) {
                stopped.add(field);
            }
        });
        if (problems.stream().anyMatch(problem -> problem.kind() == ProblemKind.RUNS_OVERLAP)) {
            stopped.add(RunField.OUT_AT);
        }
        return List.copyOf(stopped);
    }
}
