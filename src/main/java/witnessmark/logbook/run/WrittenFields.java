package witnessmark.logbook.run;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.StartKnown;
import witnessmark.quantity.Counter;

/** What stands in the fields of the sheet for a run that is written. */
final class WrittenFields {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final Figures figures;

    WrittenFields(Figures figures) {
        this.figures = figures;
    }

    Map<RunField, String> of(Run run) {
        Map<RunField, String> fields = new EnumMap<>(RunField.class);
        fields.put(RunField.CAR, run.car() == null ? Keys.engine(run.engine()) : Keys.car(run.car()));
        fields.put(RunField.EVENT, text(run.event()));
        fields.put(RunField.PLANNED, run.planned() == null ? Keys.kind(run.kind()) : Keys.planned(run.planned()));
        fields.put(RunField.DRIVER, text(run.driver()));
        fields.put(RunField.DATE, RunDefaults.DAY.format(run.start().day()));
        fields.put(RunField.OUT_AT, outAt(run));
        fields.put(RunField.KNOWN, run.knownBy().of(Counter.RUNNING).code());
        fields.put(RunField.DRIVER_ASKED, run.driverAsked().code());
        fields.put(RunField.REMARKS, run.remarks());
        Map<RunField, String> typed = AsTyped.in(run);
        Stream.concat(Stream.of(figures.running), figures.all().stream())
                .forEach(figure -> fields.put(figure.field(), standing(figure, run, typed)));
        return fields;
    }

    /** A time nobody stated is left empty, as it was. */
    private static String outAt(Run run) {
        if (run.start().dayOnly() || run.startKnown() == StartKnown.ESTIMATE) {
            return "";
        }
        LocalTime out = run.start().wallClock().toLocalTime();
        return CLOCK.format(out);
    }

    private static <T> String standing(Figure<T> figure, Run run, Map<RunField, String> typed) {
        T value = figure.of().apply(run);
        return value == null ? "" : AsTyped.standing(figure, value, typed);
    }

    private static String text(@Nullable Id<?> id) {
        return id == null ? "" : id.text();
    }
}
