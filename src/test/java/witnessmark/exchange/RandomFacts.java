package witnessmark.exchange;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
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

/**
 * Random facts of every kind, made from the records themselves so that a new kind or column is tried without being
 * named here. Names of entries in force are unique, as the logbook has it; all else is as odd as the records allow.
 */
final class RandomFacts {
    private static final List<String> TEXTS = List.of(
            "",
            "K03",
            "a,b",
            "say \"so\"",
            "two\nlines",
            "dos\r\nlines",
            "old\rmac",
            " space before",
            "space after ",
            "=1+1",
            "-5",
            "+44",
            "@SUM(A1)",
            "#",
            "in/out",
            "7 % überdruck",
            "\uD83D\uDD27 \u0645\u062D\u0631\u0643",
            "\uFEFF",
            "\t",
            "\"",
            "\"\"",
            ",",
            "\n",
            "null",
            "0197-6c2e",
            "01976c2e-0000-7000-8000-000000000000",
            "<html>",
            "x".repeat(300));
    private static final List<ZoneId> ZONES = List.of(
            ZoneId.of("Europe/London"),
            ZoneId.of("UTC"),
            ZoneOffset.UTC,
            ZoneId.of("+05:45"),
            ZoneId.of("UTC+01:00"),
            ZoneId.of("Australia/Lord_Howe"),
            ZoneId.of("Etc/GMT-14"));

    /** Asked of Java once: it reads them anew each time. */
    private static final Map<Class<?>, List<Type>> TYPES = new ConcurrentHashMap<>();

    private final Random random;
    private final Map<Class<?>, Function<Random, Object>> makers = makers();
    private Facts facts = Facts.none();
    /** One for each fact: a line of money is in one currency. */
    private Currency currency = Currency.getInstance("EUR");

    private final Set<List<Object>> names = new HashSet<>();

    RandomFacts(long seed) {
        this.random = new Random(seed);
    }

    /** Facts with up to this many entries of each kind; a kind may have none. */
    Facts upTo(int each) {
        for (RecordType<?> type : RecordTypes.all()) {
            int count = type.kind() == Team.class ? 1 : random.nextInt(each + 1);
            for (int i = 0; i < count; i++) {
                add(type);
            }
        }
        return facts;
    }

    private <F extends Fact> void add(RecordType<F> type) {
        for (int attempt = 0; attempt < 300; attempt++) {
            F fact = attempt(type);
            if (fact == null) {
                continue;
            }
            Standing standing = random.nextInt(5) == 0 ? pick(Standing.values()) : Standing.IN_FORCE;
            String name = WholeName.of(fact, facts);
            if (standing == Standing.IN_FORCE && name != null && !names.add(List.of(type.kind(), name))) {
                continue;
            }
            String because = standing == Standing.STRUCK_OUT ? notEmpty(text()) : null;
            facts = facts.with(List.of(new Entry<>(new Id<F>(id()), fact, standing, because, 1)));
            return;
        }
    }

    private <F extends Fact> @Nullable F attempt(RecordType<F> type) {
        List<Type> types = TYPES.computeIfAbsent(type.kind(), RandomFacts::types);
        Object[] values = new Object[types.size()];
        currency = Currency.getInstance(pick(new String[] {"EUR", "JPY", "KWD"}));
        for (int i = 0; i < values.length; i++) {
            boolean mayBeNull = type.components().get(i).nullable();
            values[i] = mayBeNull && random.nextBoolean() ? null : value(types.get(i), mayBeNull);
            if (values[i] == null && !mayBeNull) {
                return null;
            }
        }
        try {
            return type.of(values);
        } catch (IllegalArgumentException impossible) {
            return null;
        }
    }

    private static List<Type> types(Class<?> kind) {
        return Arrays.stream(kind.getRecordComponents())
                .map(RecordComponent::getGenericType)
                .toList();
    }

    private @Nullable Object value(Type of, boolean mayBeNull) {
        if (of instanceof ParameterizedType generic) {
            return generic.getRawType() == Id.class
                    ? reference((Class<?>) generic.getActualTypeArguments()[0])
                    : words((Class<?>) generic.getActualTypeArguments()[0]);
        }
        Class<?> plain = (Class<?>) of;
        if (plain.isEnum()) {
            return pick(plain.getEnumConstants());
        }
        if (plain == String.class) {
            String text = text();
            // a text that is empty and one that was not written down are the same in a folder
            return mayBeNull ? notEmpty(text) : text;
        }
        return makers.get(plain).apply(random);
    }

    private @Nullable Object reference(Class<?> kind) {
        List<? extends Entry<?>> all = facts.of(kind.asSubclass(Fact.class)).all();
        return all.isEmpty() ? null : all.get(random.nextInt(all.size())).id();
    }

    private Map<Class<?>, Function<Random, Object>> makers() {
        return Map.ofEntries(
                Map.entry(int.class, r -> r.nextInt(6)),
                Map.entry(Integer.class, r -> r.nextInt(3) == 0 ? Integer.MAX_VALUE : r.nextInt(9)),
                Map.entry(long.class, r -> r.nextInt(4) == 0 ? Long.MAX_VALUE : (long) r.nextInt(3)),
                Map.entry(Long.class, r -> r.nextInt(4) == 0 ? Long.MAX_VALUE : (long) r.nextInt(3)),
                Map.entry(boolean.class, Random::nextBoolean),
                Map.entry(ZoneId.class, r -> pick(ZONES.toArray())),
                Map.entry(LocalDate.class, r -> LocalDate.ofEpochDay(20_000 + r.nextInt(9))),
                Map.entry(LocalTime.class, r -> LocalTime.ofNanoOfDay(r.nextInt(86_400) * 1_000_000_000L)),
                Map.entry(KnownBy.class, r -> knownBy()),
                Map.entry(Moment.class, r -> moment()),
                Map.entry(RunningTime.class, r -> new RunningTime(figure(r))),
                Map.entry(Distance.class, r -> new Distance(figure(r))),
                Map.entry(Length.class, r -> new Length(figure(r) - 5)),
                Map.entry(Pressure.class, r -> new Pressure(figure(r) - 5)),
                Map.entry(Volume.class, r -> new Volume(figure(r))),
                Map.entry(Temperature.class, r -> new Temperature(figure(r))),
                Map.entry(EngineSpeed.class, r -> new EngineSpeed(r.nextInt(12_000))),
                Map.entry(Money.class, r -> new Money(r.nextInt(3) == 0 ? 0 : figure(r), currency)),
                Map.entry(BigDecimal.class, r -> BigDecimal.valueOf(1 + r.nextInt(99_999), r.nextInt(6))),
                Map.entry(Counter.class, r -> pick(Counter.values())));
    }

    private static long figure(Random r) {
        return switch (r.nextInt(4)) {
            case 0 -> r.nextInt(10);
            case 1 -> r.nextInt(100_000) * 100L;
            case 2 -> Long.MAX_VALUE / 4 - r.nextInt(1000);
            default -> r.nextInt(10_000_000);
        };
    }

    private Moment moment() {
        ZoneId zone = (ZoneId) pick(ZONES.toArray());
        long millis = 1_770_000_000_000L + random.nextInt(100) * 86_399_999L * random.nextInt(3);
        ZoneOffset offset = zone.getRules().getOffset(java.time.Instant.ofEpochMilli(millis));
        boolean otherRules = random.nextInt(10) == 0 && !(zone instanceof ZoneOffset);
        return new Moment(millis, zone, otherRules ? ZoneOffset.ofHours(3) : offset);
    }

    private KnownBy knownBy() {
        Map<Counter, HowKnown> known = new EnumMap<>(Counter.class);
        Arrays.stream(Counter.values())
                .filter(counter -> random.nextInt(4) == 0)
                .forEach(counter -> known.put(counter, pick(HowKnown.values())));
        return new KnownBy(known);
    }

    private Set<Object> words(Class<?> list) {
        Set<Object> words = new HashSet<>(List.of(pick(list.getEnumConstants())));
        words.add(pick(list.getEnumConstants()));
        return words;
    }

    private String text() {
        String text = TEXTS.get(random.nextInt(TEXTS.size()));
        return random.nextBoolean() ? text + random.nextInt(40) : text;
    }

    private UUID id() {
        return new UUID((random.nextLong() & ~0xF000L) | 0x7000L, (random.nextLong() >>> 2) | (1L << 63));
    }

    private static @Nullable String notEmpty(String text) {
        return text.isEmpty() ? null : text;
    }

    private <T> T pick(T[] from) {
        return from[random.nextInt(from.length)];
    }

    /** The entries of facts in an order of their own, with the kinds mixed. */
    static List<Entry<?>> shuffled(Facts facts, Random random) {
        List<Entry<?>> all = new ArrayList<>();
        RecordTypes.all().forEach(type -> all.addAll(facts.of(type.kind()).all()));
        java.util.Collections.shuffle(all, random);
        return all;
    }
}
