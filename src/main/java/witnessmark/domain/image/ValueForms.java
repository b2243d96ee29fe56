package witnessmark.domain.image;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import witnessmark.domain.Coded;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;

/** The form of every type a fact may hold. */
final class ValueForms {
    private static final Map<Class<?>, ValueForm> FORMS = forms();

    private ValueForms() {}

    /**
     * The form of a component's type.
     *
     * @throws IllegalArgumentException if no fact may hold that type
     */
    static ValueForm of(Type type) {
        if (type instanceof ParameterizedType generic) {
            if (generic.getRawType().equals(Id.class)) {
                return ValueForm.words(Id.class, "_id", id -> id.text(), text -> Id.parse(text), "id or name");
            }
            if (generic.getRawType() == Set.class
                    && generic.getActualTypeArguments()[0] instanceof Class<?> words
                    && words.isEnum()) {
                return several(words);
            }
        }
        if (type instanceof Class<?> plain) {
            if (plain.isEnum() && Coded.class.isAssignableFrom(plain)) {
                return coded(plain);
            }
            ValueForm form = FORMS.get(plain);
            if (form != null) {
                return form;
            }
        }
        throw new IllegalArgumentException("no form for " + type);
    }

    private static Map<Class<?>, ValueForm> forms() {
        Map<Class<?>, ValueForm> forms = new HashMap<>();
        measures(forms);
        conditions(forms);
        forms.put(String.class, ValueForm.words(String.class, "", s -> s, s -> s, "text"));
        forms.put(
                LocalDate.class,
                ValueForm.words(LocalDate.class, "", LocalDate::toString, LocalDate::parse, "2026-07-05"));
        forms.put(
                LocalTime.class, ValueForm.words(LocalTime.class, "", LocalTime::toString, LocalTime::parse, "15:00"));
        forms.put(ZoneId.class, ValueForm.words(ZoneId.class, "", ZoneId::getId, ZoneId::of, "Europe/London"));
        forms.put(
                KnownBy.class,
                ValueForm.words(KnownBy.class, "", KnownBy::text, KnownBy::parse, "running=timed;laps=trace"));
        forms.put(
                Counter.class,
                ValueForm.words(Counter.class, "", Counter::code, ValueForms::counter, codes(Counter.values())));
        ValueForm whole = ValueForm.whole(
                Integer.class, "", i -> (long) i, Math::toIntExact, "", Object::toString, Integer::valueOf, "12");
        forms.put(int.class, whole);
        forms.put(Integer.class, whole);
        ValueForm large =
                ValueForm.whole(Long.class, "", l -> l, l -> l, "", Object::toString, Long::valueOf, "46332000");
        forms.put(long.class, large);
        forms.put(Long.class, large);
        forms.put(
                boolean.class,
                ValueForm.whole(
                        Boolean.class,
                        "",
                        b -> b ? 1L : 0L,
                        l -> l != 0,
                        "",
                        b -> b ? "yes" : "no",
                        ValueForms::yesOrNo,
                        "yes or no"));
        forms.put(
                BigDecimal.class,
                ValueForm.words(BigDecimal.class, "", BigDecimal::toPlainString, BigDecimal::new, "0.8573"));
        forms.put(Moment.class, moment());
        forms.put(Money.class, money());
        return forms;
    }

    private static void measures(Map<Class<?>, ValueForm> forms) {
        forms.put(
                RunningTime.class,
                ValueForm.whole(
                        RunningTime.class,
                        "_ms",
                        RunningTime::millis,
                        RunningTime::new,
                        "_s",
                        RunningTime::text,
                        RunningTime::parse,
                        "seconds: 1452 or 1452.5"));
        forms.put(
                Distance.class,
                ValueForm.whole(
                        Distance.class,
                        "_m",
                        Distance::metres,
                        Distance::new,
                        "_km",
                        Distance::text,
                        Distance::parse,
                        "kilometres: 39.8"));
        forms.put(
                Length.class,
                ValueForm.whole(
                        Length.class,
                        "_nm",
                        Length::nanometres,
                        Length::new,
                        "_mm",
                        Length::text,
                        Length::parse,
                        "millimetres: 117.86"));
    }

    private static void conditions(Map<Class<?>, ValueForm> forms) {
        forms.put(
                Pressure.class,
                ValueForm.whole(
                        Pressure.class,
                        "_pa",
                        Pressure::pascals,
                        Pressure::new,
                        "_bar",
                        Pressure::text,
                        Pressure::parse,
                        "bar: 4.6"));
        forms.put(
                Volume.class,
                ValueForm.whole(
                        Volume.class,
                        "_ul",
                        Volume::microlitres,
                        Volume::new,
                        "_l",
                        Volume::text,
                        Volume::parse,
                        "litres: 0.2"));
        forms.put(
                Temperature.class,
                ValueForm.whole(
                        Temperature.class,
                        "_mk",
                        Temperature::millikelvin,
                        Temperature::new,
                        "_degc",
                        Temperature::text,
                        Temperature::parse,
                        "degrees Celsius: 84"));
        forms.put(
                EngineSpeed.class,
                ValueForm.whole(
                        EngineSpeed.class,
                        "_rpm",
                        s -> (long) s.rpm(),
                        l -> new EngineSpeed(Math.toIntExact(l)),
                        "_rpm",
                        EngineSpeed::text,
                        EngineSpeed::parse,
                        "rpm: 8205"));
    }

    private static ValueForm moment() {
        return new ValueForm(
                List.of("_utc_ms", "_zone", "_offset_s"),
                List.of(Storage.INTEGER, Storage.TEXT, Storage.INTEGER),
                value -> {
                    Moment moment = (Moment) value;
                    return new Object[] {
                        moment.epochMillis(),
                        moment.zone().getId(),
                        (long) moment.offset().getTotalSeconds()
                    };
                },
                columns -> new Moment(
                        ((Number) ValueForm.present(columns[0])).longValue(),
                        ZoneId.of((String) ValueForm.present(columns[1])),
                        ZoneOffset.ofTotalSeconds(((Number) ValueForm.present(columns[2])).intValue())),
                "",
                value -> ((Moment) value).text(),
                Moment::parse,
                "2026-07-05T15:00:00+01:00[Europe/London]");
    }

    private static ValueForm money() {
        return new ValueForm(
                List.of("_minor", "_currency"),
                List.of(Storage.INTEGER, Storage.TEXT),
                value -> {
                    Money money = (Money) value;
                    return new Object[] {money.minor(), money.currency().getCurrencyCode()};
                },
                columns -> new Money(((Number) ValueForm.present(columns[0])).longValue(), Currency.getInstance((String)
                        ValueForm.present(columns[1]))),
                "",
                value -> ((Money) value).text(),
                Money::parse,
                "520.00 EUR");
    }

    /** Several words of a closed list in its order, joined by semicolons; empty for none. */
    private static ValueForm several(Class<?> list) {
        ValueForm one = coded(list);
        List<?> all = Arrays.asList(list.getEnumConstants());
        return ValueForm.words(
                Set.class,
                "",
                set -> all.stream()
                        .filter(((Set<?>) set)::contains)
                        .map(one.text())
                        .collect(Collectors.joining(";")),
                text -> text.isEmpty()
                        ? Set.of()
                        : Arrays.stream(text.split(";")).map(one.parse()).collect(Collectors.toSet()),
                all.stream().limit(2).map(one.text()).collect(Collectors.joining(";")));
    }

    private static ValueForm coded(Class<?> list) {
        Object[] words = list.getEnumConstants();
        Map<String, Object> byCode = new HashMap<>();
        for (Object word : words) {
            byCode.put(((Coded) word).code(), word);
        }
        String known = Arrays.stream(words).map(word -> ((Coded) word).code()).collect(Collectors.joining(", "));
        return ValueForm.words(
                Object.class,
                "",
                word -> ((Coded) word).code(),
                code -> {
                    Object word = byCode.get(code);
                    if (word == null) {
                        throw new IllegalArgumentException(known);
                    }
                    return word;
                },
                known);
    }

    private static String codes(Counter[] counters) {
        return Arrays.stream(counters).map(Counter::code).collect(Collectors.joining(", "));
    }

    private static Counter counter(String code) {
        for (Counter counter : Counter.values()) {
            if (counter.code().equals(code)) {
                return counter;
            }
        }
        throw new IllegalArgumentException(codes(Counter.values()));
    }

    private static Boolean yesOrNo(String text) {
        return switch (text) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw new IllegalArgumentException("yes or no");
        };
    }
}
