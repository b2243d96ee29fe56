package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.Possible;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.TimeUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedClock;
import witnessmark.quantity.typed.TypedDate;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedMoney;
import witnessmark.quantity.typed.TypedTime;

/** Reads days, times, hours and figures of a sheet. An empty field is null, and wrong only where it is needed. */
final class ReadValues {
    /** More of one thing nobody has. */
    private static final int MOST = 1_000_000;

    private final ReadSheet in;

    ReadValues(ReadSheet in) {
        this.in = in;
    }

    /** The day of something that happened, up to today; null when empty or wrong. */
    @Nullable
    LocalDate day(SheetField field) {
        LocalDate today = in.sight().today();
        LocalDate day =
                read(field, text -> TypedDate.read(text, today, in.sight().days()));
        if (day != null && day.isAfter(today)) {
            in.wrong(field, ProblemKind.RUN_IN_FUTURE, day, today);
            return null;
        }
        if (day != null) {
            in.note(field, SheetNote.echo("understood", day));
        }
        return day;
    }

    /** The same, where it has to be there. */
    @Nullable
    LocalDate neededDay(SheetField field) {
        in.needed(field);
        return day(field);
    }

    /** The day of something planned, as {@link #planned}. It has to be there. */
    @Nullable
    LocalDate plannedDay(SheetField field) {
        in.needed(field);
        return dayAhead(field);
    }

    /** The day from which something counts, ahead or back: without a year, the nearest such day to today. It has to be there. */
    @Nullable
    LocalDate firstDay(SheetField field) {
        in.needed(field);
        return echoed(field, this::nearest);
    }

    /**
     * A day of a plan: a weekday alone is the coming one, and any other day without a year the nearest to today.
     *
     * @param from the first day that a weekday alone can be
     */
    Typed<LocalDate> planned(String text, LocalDate from) {
        return TypedDate.isWeekday(text)
                ? TypedDate.readAhead(text, from, in.sight().days())
                : nearest(text);
    }

    /** The nearest day to today that the text can mean. */
    Typed<LocalDate> nearest(String text) {
        LocalDate today = in.sight().today();
        Typed<LocalDate> ahead = TypedDate.readAhead(text, today, in.sight().days());
        Typed<LocalDate> back = TypedDate.read(text, today, in.sight().days());
        return ahead instanceof Typed.Read<LocalDate> next
                        && back instanceof Typed.Read<LocalDate> last
                        && ChronoUnit.DAYS.between(last.value(), today) < ChronoUnit.DAYS.between(today, next.value())
                ? back
                : ahead;
    }

    /**
     * When something happened: the day, and the time when one is given; the day alone means after its last run.
     *
     * @return null when the day is empty, or either is wrong
     */
    @Nullable
    Moment moment(SheetField dayField, SheetField clockField) {
        LocalDate day = neededDay(dayField);
        LocalTime clock = read(clockField, TypedClock::read);
        if (!in.text(clockField).isEmpty() && clock == null) {
            return null;
        }
        in.note(clockField, clock == null ? SheetNote.of("after_last_run") : SheetNote.echo("understood", clock));
        if (day == null) {
            return null;
        }
        return clock == null
                ? Moment.endOf(day, in.sight().view().zone())
                : Moment.of(day.atTime(clock), in.sight().view().zone());
    }

    @Nullable
    RunningTime hours(SheetField field) {
        return echoed(field, text -> TypedTime.read(text, TimeUnit.HOUR));
    }

    /** An amount of money; a bare figure is in the team's currency. */
    @Nullable
    Money money(SheetField field) {
        return echoed(field, text -> TypedMoney.read(text, in.sight().currency()));
    }

    @Nullable
    EngineSpeed speed(SheetField field) {
        return speed(field, null);
    }

    /**
     * The same.
     *
     * @param known a speed of that engine, the example of what can be typed; null when none is known
     */
    @Nullable
    EngineSpeed speed(SheetField field, @Nullable EngineSpeed known) {
        EngineSpeed speed = echoed(field, text -> {
            Typed<EngineSpeed> typed = TypedFigure.engineSpeed(text);
            return known != null && typed instanceof Typed.Unreadable<EngineSpeed>
                    ? new Typed.Unreadable<>(List.of(Integer.toString(known.rpm())))
                    : typed;
        });
        if (speed != null && !Possible.SPEED.holds(speed)) {
            in.wrong(field, ProblemKind.OUT_OF_RANGE, field, speed, Possible.SPEED.low(), Possible.SPEED.high());
            return null;
        }
        return speed;
    }

    @Nullable
    Length length(SheetField field) {
        return echoed(field, text -> TypedFigure.read(text, in.sight().units().length()));
    }

    @Nullable
    Pressure pressure(SheetField field) {
        return echoed(field, text -> TypedFigure.read(text, in.sight().units().pressure()));
    }

    /** The day of something planned, as {@link #planned} from today; null when empty or wrong. */
    @Nullable
    LocalDate dayAhead(SheetField field) {
        return echoed(field, text -> planned(text, in.sight().today()));
    }

    /** How many, this many at least; it has to be there. */
    @Nullable
    Integer atLeast(SheetField field, int least) {
        in.needed(field);
        Integer count = count(field);
        if (count != null && count < least) {
            in.wrong(field, ProblemKind.OUT_OF_RANGE, field, count, least, MOST);
            return null;
        }
        return count;
    }

    /** How many. */
    @Nullable
    Integer count(SheetField field) {
        return read(field, TypedFigure::count);
    }

    /** The value, echoed under the field. */
    <T> @Nullable T echoed(SheetField field, Function<String, Typed<T>> reader) {
        T value = read(field, reader);
        if (value != null) {
            in.note(field, SheetNote.echo("understood", value));
        }
        return value;
    }

    /** The value, or null when the field is empty or says no one thing; the latter is noted. */
    <T> @Nullable T read(SheetField field, Function<String, Typed<T>> reader) {
        String text = in.text(field);
        if (text.isEmpty()) {
            return null;
        }
        Typed<T> typed = reader.apply(text);
        if (typed instanceof Typed.Two<T> two) {
            in.wrong(field, ProblemKind.TWO_READINGS, field, text, two.first(), two.second());
        } else if (typed instanceof Typed.Unreadable<T> no) {
            in.wrong(field, Problem.unread(field, text, no.example()));
        }
        return typed.only().orElse(null);
    }

    /** What was typed, or what was written before where the field was left empty; null where neither is. */
    static <F, T> @Nullable T orBefore(@Nullable T typed, @Nullable F before, Function<F, T> of) {
        return typed != null || before == null ? typed : of.apply(before);
    }
}
