package witnessmark.logbook.run;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.SpeedSource;
import witnessmark.domain.Standing;
import witnessmark.quantity.RunningTime;

/** Makes the run that the fields of the sheet tell of. */
final class WriteRun {
    private final Facts facts;
    private final Figures figures;
    private final Map<RunField, Object> values = new EnumMap<>(RunField.class);

    WriteRun(Facts facts, Figures figures) {
        this.facts = facts;
        this.figures = figures;
    }

    void put(RunField field, Object value) {
        values.put(field, value);
    }

    Map<RunField, Object> values() {
        return values;
    }

    /**
     * The run, not yet written.
     *
     * @param which whose engine and start are known
     */
    Entry<Run> entry(
            Id<Run> id,
            Which which,
            RunningTime running,
            Map<RunField, FieldReading> fields,
            Map<RunField, String> typed) {
        Run run = new Run(
                Objects.requireNonNull(which.engine()),
                which.car(),
                which.event(),
                which.planned(),
                which.kind(),
                name(which),
                Objects.requireNonNull(which.start()),
                which.startKnown(),
                null,
                which.driver(),
                running,
                KnownBy.all(Coded.of(HowKnown.class, typed.getOrDefault(RunField.KNOWN, HowKnown.TIMED.code()))),
                value(figures.track),
                value(figures.warmUp),
                value(figures.loaded),
                null,
                value(figures.distance),
                value(figures.laps),
                value(figures.raceStarts),
                null,
                value(figures.heatCycles),
                null,
                value(figures.overRevs),
                value(figures.highest),
                values.containsKey(RunField.HIGHEST) ? SpeedSource.LOGGER : null,
                value(figures.water),
                value(figures.oil),
                value(figures.oilPressure),
                value(figures.oilAdded),
                value(figures.ambient),
                Coded.of(DriverAsked.class, typed.getOrDefault(RunField.DRIVER_ASKED, DriverAsked.NOT_ASKED.code())),
                typed.getOrDefault(RunField.REMARKS, "").strip(),
                asTyped(typed),
                queried(fields),
                null);
        return new Entry<>(id, run, Standing.IN_FORCE, null, 1);
    }

    private static String queried(Map<RunField, FieldReading> fields) {
        return fields.entrySet().stream()
                .filter(field -> field.getValue().problem() != null)
                .map(field -> field.getKey().key())
                .collect(Collectors.joining(" "));
    }

    private String name(Which which) {
        Id<PlannedRun> planned = which.planned();
        if (planned != null) {
            return facts.of(PlannedRun.class).get(planned).name();
        }
        RunKind kind = which.kind();
        return kind.code().substring(0, 1).toUpperCase(Locale.ROOT)
                + kind.code().substring(1);
    }

    @SuppressWarnings("unchecked") // each figure's value was put under its own field
    private <T> @Nullable T value(Figure<T> figure) {
        return (T) values.get(figure.field());
    }

    private static String asTyped(Map<RunField, String> typed) {
        StringJoiner lines = new StringJoiner("\n");
        typed.forEach((field, text) -> {
            if (field.measured() && field != RunField.REMARKS && !text.isBlank()) {
                lines.add(field.key() + "=" + text.strip());
            }
        });
        return lines.toString();
    }
}
