package witnessmark.logbook.run;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.Facts;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.SpeedSource;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Makes the run that the fields of the sheet tell of; of a written run, what the sheet has no field for stays. */
final class WriteRun {
    private final Facts facts;
    private final Figures figures;
    private final Map<RunField, Object> values;
    private final @Nullable Run was;
    private final Set<RunField> changed;

    /**
     * A new run.
     *
     * @param values what was measured, each under its own field
     */
    WriteRun(Facts facts, Figures figures, Map<RunField, Object> values) {
        this(facts, figures, values, null, Set.of());
    }

    /**
     * A run to be corrected.
     *
     * @param was the run as it is written
     * @param changed the fields in which something else stands now
     */
    WriteRun(Facts facts, Figures figures, Map<RunField, Object> values, @Nullable Run was, Set<RunField> changed) {
        this.facts = facts;
        this.figures = figures;
        this.values = values;
        this.was = was;
        this.changed = changed;
    }

    /** @param which whose engine and start are known */
    Run run(Which which, RunningTime running, Map<RunField, FieldReading> fields, Map<RunField, String> typed) {
        Moment start = Objects.requireNonNull(which.start());
        return new Run(
                Objects.requireNonNull(which.engine()),
                which.car(),
                which.event(),
                which.planned(),
                which.kind(),
                name(which),
                start,
                which.startKnown(),
                in(start),
                which.driver(),
                running,
                knownBy(typed),
                value(figures.track),
                value(figures.warmUp),
                value(figures.loaded),
                kept(Run::highSpeed),
                value(figures.distance),
                value(figures.laps),
                value(figures.raceStarts),
                kept(Run::engineStarts),
                value(figures.heatCycles),
                kept(Run::pulls),
                value(figures.overRevs),
                value(figures.highest),
                highestFrom(),
                value(figures.water),
                value(figures.oil),
                value(figures.oilPressure),
                value(figures.oilAdded),
                value(figures.ambient),
                Coded.of(DriverAsked.class, typed.getOrDefault(RunField.DRIVER_ASKED, DriverAsked.NOT_ASKED.code())),
                remarks(typed),
                was == null ? AsTyped.of(typed) : AsTyped.corrected(was, typed, changed),
                was != null && changed.isEmpty() ? was.queried() : queried(fields),
                was == null ? null : was.perhapsSame());
    }

    /** A run that went out earlier or later than was written came back as much earlier or later. */
    private @Nullable Moment in(Moment start) {
        Moment in = was == null ? null : was.in();
        if (was == null || in == null || start.equals(was.start())) {
            return in;
        }
        long moved = start.epochMillis() - was.start().epochMillis();
        return Moment.of(java.time.Instant.ofEpochMilli(in.epochMillis() + moved), start.zone());
    }

    private KnownBy knownBy(Map<RunField, String> typed) {
        HowKnown how = Coded.of(HowKnown.class, typed.getOrDefault(RunField.KNOWN, HowKnown.TIMED.code()));
        if (was == null) {
            return KnownBy.all(how);
        }
        return changed.contains(RunField.KNOWN) ? was.knownBy().with(Counter.RUNNING, how) : was.knownBy();
    }

    private @Nullable SpeedSource highestFrom() {
        if (!values.containsKey(RunField.HIGHEST)) {
            return null;
        }
        return kept(Run::highestFrom); // the sheet does not ask, so nobody has said
    }

    private String remarks(Map<RunField, String> typed) {
        return was != null && !changed.contains(RunField.REMARKS)
                ? was.remarks()
                : typed.getOrDefault(RunField.REMARKS, "").strip();
    }

    private static String queried(Map<RunField, FieldReading> fields) {
        return fields.entrySet().stream()
                .filter(field -> field.getValue().problem() != null)
                .map(field -> field.getKey().key())
                .collect(Collectors.joining(" "));
    }

    private String name(Which which) {
        Id<PlannedRun> planned = which.planned();
        if (was != null && Objects.equals(planned, was.planned()) && which.kind() == was.kind()) {
            return was.name();
        }
        if (planned != null) {
            return facts.of(PlannedRun.class).get(planned).name();
        }
        RunKind kind = which.kind();
        return kind.code().substring(0, 1).toUpperCase(Locale.ROOT)
                + kind.code().substring(1);
    }

    private <T> @Nullable T kept(Function<Run, @Nullable T> of) {
        return was == null ? null : of.apply(was);
    }

    @SuppressWarnings("unchecked") // each figure's value was put under its own field
    private <T> @Nullable T value(Figure<T> figure) {
        return (T) values.get(figure.field());
    }
}
