package witnessmark.logbook.run;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Today;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Reads the fields of the sheet against the facts they are held against: those of the logbook without the run. */
final class ReadSheet {
    private final Facts facts;
    private final ZoneId zone;
    private final LocalDate day;
    private final Today today;
    private final RunsBefore before;
    private final FieldUnits units;
    private final Figures figures;

    /**
     * @param desk whose day and zone count
     * @param view the logbook as it is seen
     * @param before the runs without the one on the sheet, with the facts they are of
     */
    ReadSheet(Desk desk, View view, RunsBefore before, FieldUnits units, Figures figures) {
        this.facts = before.facts();
        this.zone = view.zone();
        this.day = view.day();
        this.today = desk.today();
        this.before = before;
        this.units = units;
        this.figures = figures;
    }

    /** The same fields without the choices that name nothing any more. */
    Map<RunField, String> sound(Map<RunField, String> typed) {
        return new Picked(facts).sound(typed);
    }

    /** Which run it was; what each field came to is put in {@code out}. */
    Which which(Map<RunField, String> sound, @Nullable RunningTime running, Map<RunField, FieldReading> out) {
        return new ReadWhich(facts, zone, before, today, units.days()).read(sound, running, out);
    }

    /** The measured values; what each field came to is put in {@code out}. */
    Map<RunField, Object> values(Which which, Map<RunField, String> sound, Map<RunField, FieldReading> out) {
        Map<RunField, Object> values = new EnumMap<>(RunField.class);
        ReadFigure reader = new ReadFigure(before, which.engine(), which.onDyno());
        for (Figure<?> figure : figures.all()) {
            ReadFigure.Result<?> result = reader.read(figure, sound.getOrDefault(figure.field(), ""));
            out.put(figure.field(), result.reading());
            if (result.value() != null) {
                values.put(figure.field(), result.value());
            }
        }
        return values;
    }

    List<Choice> choices(RunField field, Map<RunField, String> asTyped) {
        Map<RunField, String> typed = sound(asTyped);
        Which which = whichOf(typed);
        LocalDate typedDay = which.day();
        // a car is named with the engine that was in it when the run went out, not by the evening
        Moment at = which.start();
        return new Choices(facts, before)
                .of(field, typed, at == null ? Moment.endOf(typedDay == null ? day : typedDay, zone) : at);
    }

    String stepped(RunField field, Map<RunField, String> asTyped, int by) {
        Map<RunField, String> typed = sound(asTyped);
        String text = typed.getOrDefault(field, "");
        return switch (field) {
            case DATE -> Steps.day(text, day, units.days(), by);
            case OUT_AT -> {
                Moment start = whichOf(typed).start();
                yield Steps.clock(
                        text, start == null ? LocalTime.NOON : start.wallClock().toLocalTime(), by);
            }
            default -> text;
        };
    }

    String clockNow(Map<RunField, String> typed) {
        String event = sound(typed).getOrDefault(RunField.EVENT, "");
        ZoneId clocks = event.isEmpty()
                ? zone
                : facts.of(Event.class).get(Id.parse(event)).zone();
        return LocalTime.ofInstant(today.now(), clocks)
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
    }

    Which whichOf(Map<RunField, String> sound) {
        return which(sound, null, new EnumMap<>(RunField.class));
    }

    /** What keeps a sheet from being saved, of its fields and as a whole. */
    static List<Problem> stopping(RunReading reading) {
        List<Problem> problems = new ArrayList<>();
        reading.fields().values().forEach(field -> {
            if (field.problem() != null && field.problem().stops()) {
                problems.add(field.problem());
            }
        });
        reading.problems().stream().filter(Problem::stops).forEach(problems::add);
        return problems.isEmpty() ? List.of(Problem.of(ProblemKind.NEEDED, RunField.RUNNING)) : problems;
    }
}
