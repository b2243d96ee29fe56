package witnessmark.logbook.told;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.ToldRunning;
import witnessmark.logbook.run.FieldReading;
import witnessmark.logbook.run.Note;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.TimeUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedDate;
import witnessmark.quantity.typed.TypedTime;

/** Reads the form for running told by others. */
final class ReadTold {
    private final Facts facts;
    private final LocalDate today;
    private final ZoneId zone;
    private final DayOrder days;
    private final Map<ToldField, FieldReading> out = new EnumMap<>(ToldField.class);

    ReadTold(Facts facts, LocalDate today, ZoneId zone, DayOrder days) {
        this.facts = facts;
        this.today = today;
        this.zone = zone;
        this.days = days;
    }

    Map<ToldField, FieldReading> fields() {
        return out;
    }

    /** The entry, or null while something needed stops. */
    @Nullable
    ToldRunning read(Map<ToldField, String> typed) {
        for (ToldField field : ToldField.values()) {
            out.put(field, FieldReading.fine(Note.of(Note.Kind.NONE)));
        }
        @Nullable Id<Engine> engine = engine(typed.getOrDefault(ToldField.ENGINE, ""));
        @Nullable LocalDate from = day(ToldField.FROM, typed);
        @Nullable LocalDate to = day(ToldField.TO, typed);
        boolean inOrder = from != null && to != null && from.isBefore(to);
        if (from != null && to != null && !inOrder) {
            wrong(ToldField.TO, Problem.of(ProblemKind.ENDS_BEFORE_IT_BEGINS, ToldField.TO, from, to));
        }
        @Nullable RunningTime likely = hours(ToldField.LIKELY, typed);
        @Nullable RunningTime lowest = hours(ToldField.LOWEST, typed);
        @Nullable RunningTime highest = hours(ToldField.HIGHEST, typed);
        boolean ranged = likely != null && lowest != null && highest != null && ranged(lowest, likely, highest);
        String by = words(ToldField.TOLD_BY, typed);
        String how = words(ToldField.HOW, typed);
        if (engine == null
                || from == null
                || to == null
                || !inOrder
                || likely == null
                || lowest == null
                || highest == null
                || !ranged
                || by.isEmpty()
                || how.isEmpty()) {
            return null;
        }
        return new ToldRunning(
                engine, Moment.endOf(from, zone), Moment.endOf(to, zone), likely, lowest, highest, by, how);
    }

    private @Nullable Id<Engine> engine(String key) {
        Optional<Id<Engine>> engine = facts.of(Engine.class)
                .inForce()
                .filter(entry -> entry.id().text().equals(key))
                .map(witnessmark.domain.Entry::id)
                .findFirst();
        if (engine.isEmpty()) {
            wrong(ToldField.ENGINE, Problem.of(ProblemKind.NEEDED, ToldField.ENGINE));
        }
        return engine.orElse(null);
    }

    private @Nullable LocalDate day(ToldField field, Map<ToldField, String> typed) {
        String text = typed.getOrDefault(field, "");
        if (text.isBlank()) {
            wrong(field, Problem.of(ProblemKind.NEEDED, field));
            return null;
        }
        Typed<LocalDate> read = TypedDate.read(text, today, days);
        if (read instanceof Typed.Read<LocalDate> one) {
            if (one.value().isAfter(today)) {
                wrong(field, Problem.of(ProblemKind.RUN_IN_FUTURE, one.value(), today));
                return null;
            }
            out.put(field, FieldReading.fine(Note.of(Note.Kind.UNDERSTOOD, one.value())));
            return one.value();
        }
        unread(field, text, read);
        return null;
    }

    private @Nullable RunningTime hours(ToldField field, Map<ToldField, String> typed) {
        String text = typed.getOrDefault(field, "");
        if (text.isBlank()) {
            wrong(field, Problem.of(ProblemKind.NEEDED, field));
            return null;
        }
        Typed<RunningTime> read = TypedTime.read(text, TimeUnit.HOUR);
        if (read instanceof Typed.Read<RunningTime> one) {
            out.put(field, FieldReading.fine(Note.of(Note.Kind.UNDERSTOOD, one.value())));
            return one.value();
        }
        unread(field, text, read);
        return null;
    }

    private boolean ranged(RunningTime lowest, RunningTime likely, RunningTime highest) {
        if (lowest.compareTo(highest) > 0) {
            wrong(
                    ToldField.LOWEST,
                    Problem.of(ProblemKind.OUT_OF_RANGE, ToldField.LOWEST, lowest, RunningTime.NONE, highest));
            return false;
        }
        if (likely.compareTo(lowest) < 0 || likely.compareTo(highest) > 0) {
            wrong(ToldField.LIKELY, Problem.of(ProblemKind.OUT_OF_RANGE, ToldField.LIKELY, likely, lowest, highest));
            return false;
        }
        return true;
    }

    private String words(ToldField field, Map<ToldField, String> typed) {
        String text = typed.getOrDefault(field, "").strip();
        if (text.isEmpty()) {
            wrong(field, Problem.of(ProblemKind.NEEDED, field));
        }
        return text;
    }

    private void unread(ToldField field, String text, Typed<?> read) {
        if (read instanceof Typed.Two<?> two) {
            wrong(field, Problem.of(ProblemKind.TWO_READINGS, field, text.strip(), two.first(), two.second()));
        } else {
            String example = read instanceof Typed.Unreadable<?> no ? no.example() : "";
            wrong(field, Problem.unread(field, text.strip(), example));
        }
    }

    void wrong(ToldField field, Problem problem) {
        out.put(field, FieldReading.wrong(problem));
    }
}
