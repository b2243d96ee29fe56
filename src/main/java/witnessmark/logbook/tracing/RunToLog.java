package witnessmark.logbook.tracing;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.TextsOfFigures;
import witnessmark.quantity.Moment;
import witnessmark.trace.result.Reduction;

/**
 * What a trace says of a run that nobody has logged yet, for the run sheet. A person completes it.
 *
 * @param day by the file's clock, else in its name, or null when neither says it
 * @param start by the file's clock, or null when that was not set
 * @param car whose name is in that of the file or in its first lines, or null
 * @param laps driven, or null when none is marked
 * @param figures what was measured
 */
public record RunToLog(
        @Nullable LocalDate day,
        @Nullable Moment start,
        @Nullable Id<Car> car,
        @Nullable Integer laps,
        Map<TraceField, Object> figures) {
    /** The fields of the sheet for what a trace measures; heat cycles are left to what the sheet knows of the day. */
    private static final Map<TraceField, RunField> FIELDS = Map.of(
            TraceField.RUNNING, RunField.RUNNING,
            TraceField.LOADED, RunField.LOADED,
            TraceField.DISTANCE, RunField.DISTANCE,
            TraceField.OVER_REVS, RunField.OVER_REVS,
            TraceField.HIGHEST, RunField.HIGHEST,
            TraceField.WATER, RunField.WATER,
            TraceField.OIL_TEMPERATURE, RunField.OIL,
            TraceField.OIL_PRESSURE, RunField.OIL_PRESSURE);

    public RunToLog {
        figures = Map.copyOf(figures);
    }

    static RunToLog of(View view, BroughtTrace trace, int part) {
        LocalDateTime begins = part == 0 ? trace.found().recognised().begins() : null;
        LocalDateTime clock = part == 0 ? trace.found().recognised().clock() : null;
        Map<TraceField, Object> figures = FiguresOfPart.of(trace.parts().get(part), false, clock, view.zone(), true);
        Optional<LocalDate> day = RunsOfTrace.day(trace.name());
        Moment start = (Moment) figures.get(TraceField.START);
        return new RunToLog(
                begins != null ? begins.toLocalDate() : day.orElse(null),
                start,
                RunsOfTrace.car(view.facts(), trace, view.zone()).orElse(null),
                laps(trace.parts().get(part)),
                figures);
    }

    private static @Nullable Integer laps(Reduction part) {
        Integer laps = part.laps();
        return laps == null || laps == 0 ? null : laps;
    }

    /** How it stands in the fields of the sheet. */
    public Map<RunField, String> texts(FieldUnits units) {
        Map<RunField, Object> values = new EnumMap<>(RunField.class);
        FIELDS.forEach((from, to) -> {
            Object figure = figures.get(from);
            if (figure != null) {
                values.put(to, figure);
            }
        });
        if (laps != null) {
            values.put(RunField.LAPS, laps);
        }
        Map<RunField, String> texts = new EnumMap<>(new TextsOfFigures(units).of(values));
        if (figures.containsKey(TraceField.RUNNING)) {
            texts.put(RunField.KNOWN, HowKnown.TRACE.code());
        }
        if (day != null) {
            texts.put(RunField.DATE, TextsOfFigures.of(day));
        }
        if (start != null) {
            texts.put(RunField.OUT_AT, TextsOfFigures.of(start));
        }
        if (car != null) {
            texts.put(RunField.CAR, TextsOfFigures.of(car));
        }
        return texts;
    }

    /**
     * Which figures of the trace become the run's: those the person left on the sheet as they were filled in, and those
     * the sheet has no field for as far as they are taken unasked. Heat cycles stay as they stand on the sheet.
     */
    public static Set<TraceField> taken(
            TraceProposal proposal, Map<RunField, String> filled, Map<RunField, String> now) {
        Set<TraceField> taken = EnumSet.noneOf(TraceField.class);
        for (TraceField field : proposal.figures().keySet()) {
            if (field == TraceField.HEAT_CYCLES) {
                continue;
            }
            RunField shown = field == TraceField.START ? RunField.OUT_AT : FIELDS.get(field);
            boolean left = shown == null
                    ? proposal.taken().contains(field)
                    : filled.containsKey(shown) && filled.get(shown).equals(now.get(shown));
            if (left) {
                taken.add(field);
            }
        }
        if (!filled.getOrDefault(RunField.DATE, "").equals(now.getOrDefault(RunField.DATE, ""))) {
            taken.remove(TraceField.START);
        }
        return taken;
    }
}
