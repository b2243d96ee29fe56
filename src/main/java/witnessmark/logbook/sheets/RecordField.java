package witnessmark.logbook.sheets;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Fact;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.image.Component;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.TimeUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedClock;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedMoney;
import witnessmark.quantity.typed.TypedTime;
import witnessmark.quantity.typed.VolumeUnit;

/**
 * One component of a record as a field of its plain form; a moment has a second one for its time.
 *
 * @param component its name and what it refers to
 * @param type its type in Java
 * @param field what is typed
 * @param clock the time of a moment, or null
 */
record RecordField(
        Component component,
        Class<?> type,
        SheetField field,
        @Nullable SheetField clock) {
    /** Texts that are sentences rather than names. */
    private static final Set<String> LONG =
            Set.of("note", "words", "why", "asks", "done", "result", "advice", "specification", "howHeKnows");

    /** Whole numbers that may be less than 0. */
    private static final Set<String> SIGNED = Set.of("change", "asFound");

    /** Days that mostly lie ahead. */
    private static final Set<String> AHEAD =
            Set.of("firstDay", "lastDay", "truckLeaves", "due", "promised", "useBy", "refundBy");

    private static final Map<String, TimeUnit> TIMES = Map.of("expected", TimeUnit.MINUTE, "lasted", TimeUnit.SECOND);

    static RecordField of(RecordComponent part, Component component) {
        String key = component.name();
        Class<?> type = part.getType();
        if (type == Moment.class) {
            return new RecordField(
                    component, type, SheetField.of(key, FieldKind.DAY), SheetField.of(key + "_time", FieldKind.CLOCK));
        }
        return new RecordField(component, type, new SheetField(key, kind(type, key), span(type, key)), null);
    }

    private static FieldKind kind(Class<?> type, String key) {
        if (component(type) || type == boolean.class) {
            return FieldKind.CHOICE;
        }
        if (type == LocalDate.class) {
            return FieldKind.DAY;
        }
        if (type == LocalTime.class) {
            return FieldKind.CLOCK;
        }
        if (type == EngineSpeed.class) {
            return FieldKind.SPEED;
        }
        if (type == Length.class) {
            return FieldKind.LENGTH;
        }
        return type == RunningTime.class && !TIMES.containsKey(key) ? FieldKind.HOURS : FieldKind.TEXT;
    }

    private static boolean component(Class<?> type) {
        return type == witnessmark.domain.Id.class || type.isEnum();
    }

    private static int span(Class<?> type, String key) {
        return type != String.class ? 1 : LONG.contains(key) ? 4 : 2;
    }

    List<SheetField> fields() {
        return clock == null ? List.of(field) : List.of(field, clock);
    }

    /** What stands in it for a written fact. */
    String text(Fact fact, SheetSight sight) {
        Object value = component.value(fact);
        if (value instanceof witnessmark.domain.Id<?> id) {
            return id.text();
        }
        if (value instanceof Boolean yes) {
            return AsText.yes(yes);
        }
        if (value instanceof Coded word) {
            return word.code();
        }
        if (value instanceof Counter counter) {
            return counter.code();
        }
        if (value instanceof Moment moment) {
            return AsText.day(moment);
        }
        if (value instanceof LocalTime time) {
            return AsText.clock(time);
        }
        if (value instanceof Length length) {
            return AsText.figure(sight.units().length(), length);
        }
        if (value instanceof EngineSpeed speed) {
            return Integer.toString(speed.rpm());
        }
        if (value instanceof RunningTime time) {
            TimeUnit unit = TIMES.get(component.name());
            return unit == TimeUnit.SECOND
                    ? AsText.seconds(time) + " s"
                    : unit == TimeUnit.MINUTE ? AsText.minutes(time) : AsText.hours(time);
        }
        if (value instanceof Temperature temperature) {
            return AsText.figure(sight.units().temperature(), temperature);
        }
        if (value instanceof Pressure pressure) {
            return AsText.figure(sight.units().pressure(), pressure);
        }
        if (value instanceof Distance distance) {
            return AsText.figure(sight.units().distance(), distance);
        }
        if (value instanceof Volume volume) {
            return AsText.figure(VolumeUnit.MILLILITRE, volume);
        }
        Dimension dimension = RecordAmounts.dimension(fact);
        if (value instanceof Long figure && dimension != null) {
            return MeasureUnit.text(dimension, figure);
        }
        return value instanceof Long amount
                ? AsText.amount(RecordAmounts.counter(fact, sight), amount, sight.units())
                : component.text(value);
    }

    /** The words of a closed list; whether, for yes and no. What refers to other entries is offered elsewhere. */
    List<Choice> words() {
        List<Choice> choices = new ArrayList<>();
        if (component.nullable()) {
            choices.add(SheetWord.NONE.choice());
        }
        if (type == boolean.class) {
            choices.add(SheetWord.NO.choice());
            choices.add(SheetWord.YES.choice());
        } else if (type == Counter.class) {
            Arrays.stream(Counter.values()).forEach(counter -> choices.add(Choice.of(counter.code(), counter)));
        } else if (type.isEnum()) {
            for (Object word : type.getEnumConstants()) {
                choices.add(Choice.of(((Coded) word).code(), word));
            }
        }
        return choices;
    }

    /** The value typed; null when the field is empty or wrong, and the latter is noted. */
    @Nullable
    Object read(ReadSheet in, Fact written) {
        if (type == Moment.class) {
            return moment(in, written);
        }
        String text = in.text(field);
        if (text.isEmpty()) {
            if (!component.nullable() && type != String.class) {
                in.wrong(field, ProblemKind.NEEDED, field);
            }
            return type == String.class && !component.nullable() ? "" : null;
        }
        if (type == String.class) {
            return text;
        }
        return field.kind() == FieldKind.CHOICE ? picked(in, text) : typed(in, text, written);
    }

    private @Nullable Object picked(ReadSheet in, String key) {
        if (type == boolean.class) {
            return in.is(field, SheetWord.YES);
        }
        if (component.refersTo() != null) {
            return witnessmark.domain.Id.parse(key);
        }
        for (Object word : type.getEnumConstants()) {
            if ((word instanceof Coded coded && coded.code().equals(key))
                    || (word instanceof Counter counter && counter.code().equals(key))) {
                return word;
            }
        }
        in.wrong(field, ProblemKind.NEEDED, field);
        return null;
    }

    private @Nullable Object typed(ReadSheet in, String text, Fact written) {
        ReadValues values = new ReadValues(in);
        if (type == LocalDate.class) {
            return day(in, written);
        }
        if (type == LocalTime.class) {
            return values.echoed(field, TypedClock::read);
        }
        if (type == Length.class) {
            return values.length(field);
        }
        if (type == Volume.class) {
            return values.<Volume>echoed(field, typed -> TypedFigure.read(typed, VolumeUnit.MILLILITRE));
        }
        if (type == Pressure.class) {
            return values.<Pressure>echoed(
                    field, typed -> TypedFigure.read(typed, in.sight().units().pressure()));
        }
        if (type == Distance.class) {
            return values.<Distance>echoed(
                    field, typed -> TypedFigure.read(typed, in.sight().units().distance()));
        }
        if (type == EngineSpeed.class) {
            return values.speed(field);
        }
        if (type == RunningTime.class) {
            TimeUnit unit = TIMES.getOrDefault(component.name(), TimeUnit.HOUR);
            return values.echoed(field, typed -> TypedTime.read(typed, unit));
        }
        if (type == Money.class) {
            return values.money(field);
        }
        if (type == BigDecimal.class) {
            return values.read(field, component.name().equals("rate") ? TypedMoney::rate : TypedFigure::decimal);
        }
        if (type == ZoneId.class) {
            return zone(in, text);
        }
        if (type == Temperature.class) {
            return values.<Temperature>echoed(
                    field, typed -> TypedFigure.read(typed, in.sight().units().temperature()));
        }
        return type == long.class || type == Long.class
                ? RecordAmounts.read(in, field, written)
                : values.read(field, SIGNED.contains(component.name()) ? RecordField::signed : TypedFigure::count);
    }

    /** A count that may be less than 0. */
    private static Typed<Integer> signed(String text) {
        if (!text.startsWith("-") && !text.startsWith("\u2212")) {
            return TypedFigure.count(text);
        }
        Typed<Integer> read = TypedFigure.count(text.substring(1));
        return read.only()
                .<Typed<Integer>>map(count -> new Typed.Read<>(-count, text))
                .orElse(read);
    }

    private @Nullable ZoneId zone(ReadSheet in, String text) {
        if (ZoneId.getAvailableZoneIds().contains(text)) {
            return ZoneId.of(text);
        }
        in.wrong(field, Problem.unread(field, text, component.form()));
        return null;
    }

    private @Nullable LocalDate day(ReadSheet in, Fact written) {
        ReadValues values = new ReadValues(in);
        return AHEAD.contains(component.name()) || written instanceof PlannedRun
                ? values.dayAhead(field)
                : values.echoed(field, values::nearest);
    }

    private @Nullable Moment moment(ReadSheet in, Fact written) {
        SheetField at = clock;
        if (at == null || (in.text(field).isEmpty() && component.nullable())) {
            return null;
        }
        in.needed(field);
        ReadValues values = new ReadValues(in);
        LocalDate day = day(in, written);
        LocalTime time = values.read(at, TypedClock::read);
        in.note(at, time == null ? SheetNote.of("after_last_run") : SheetNote.echo("understood", time));
        if (day == null || (time == null && !in.text(at).isEmpty())) {
            return null;
        }
        ZoneId zone = Optional.ofNullable((Moment) component.value(written))
                .map(Moment::zone)
                .orElse(in.sight().view().zone());
        return time == null ? Moment.endOf(day, zone) : Moment.of(day.atTime(time), zone);
    }
}
