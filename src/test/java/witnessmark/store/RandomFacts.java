package witnessmark.store;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentLink;
import witnessmark.domain.KnownBy;
import witnessmark.domain.Part;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Run;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.domain.image.Component;
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
 * Seeded facts of every kind that break no guard: names are never used twice, each part is fitted once, and no two
 * fitments or engines in cars overlap. A fact that its record refuses is thrown again.
 */
public final class RandomFacts {
    private static final List<String> ZONES =
            List.of("Europe/London", "Europe/Rome", "America/New_York", "Australia/Lord_Howe", "Asia/Kolkata", "UTC");
    private static final List<String> WORDS = List.of(
            "",
            "oil",
            "two\nlines",
            "a 'quoted' \"word\"",
            "größer; Ærø",
            "東京",
            "\uD83D\uDD27",
            "tab\there",
            "\\0 \u0001",
            "'); DROP TABLE run; --",
            "{\"json\":1}",
            " spaces ");

    private static final Set<Class<?>> WINDOWS =
            Set.of(Fitment.class, EngineInCar.class, Quarantine.class, SentOut.class);
    /** Later than any window, so that nothing is fitted after it was scrapped. */
    private static final long AFTER_ALL = (1L << 32) - 10_000_000;

    private final Random random;
    private final Set<UUID> usedParts = new HashSet<>();
    private int counter;
    /** One for each fact: a line of money is in one currency. */
    private Currency currency = Currency.getInstance("EUR");

    public RandomFacts(long seed) {
        this.random = new Random(seed);
    }

    public int upTo(int bound) {
        return random.nextInt(bound);
    }

    public UUID uuid() {
        return new UUID(random.nextLong(), random.nextLong());
    }

    public <T> T oneOf(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** One new entry of every kind, each after those it refers to. */
    public List<Entry<?>> oneOfEach(Facts known) {
        List<Entry<?>> made = new ArrayList<>();
        Facts facts = known;
        for (RecordType<?> type : RecordTypes.all()) {
            if (type.kind() == Team.class && facts.of(Team.class).size() > 0) {
                continue;
            }
            if (type.kind() == IncidentLink.class && facts.of(Incident.class).size() < 2) { // a link is of two
                facts = facts.with(List.of(kept(fresh(RecordTypes.of(Incident.class), facts), made)));
            }
            facts = facts.with(List.of(kept(fresh(type, facts), made)));
        }
        return made;
    }

    private static <F extends Fact> Entry<F> kept(Entry<F> entry, List<Entry<?>> made) {
        made.add(entry);
        return entry;
    }

    public <F extends Fact> Entry<F> fresh(RecordType<F> type, Facts facts) {
        return new Entry<>(new Id<>(uuid()), fact(type, facts, null), Standing.IN_FORCE, null, 1);
    }

    /** An existing entry written again: another fact, struck out, or restored. */
    public <F extends Fact> Entry<F> edited(Entry<F> entry, Facts facts) {
        @SuppressWarnings("unchecked") // an entry's fact is of the kind its id stands for
        RecordType<F> type = (RecordType<F>) RecordTypes.of(entry.fact().getClass());
        long rev = entry.rev() + 1;
        if (entry.standing() != Standing.IN_FORCE) {
            return new Entry<>(entry.id(), entry.fact(), Standing.IN_FORCE, null, rev);
        }
        return switch (random.nextInt(4)) {
            case 0 -> new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, word(), rev);
            case 1 -> new Entry<>(entry.id(), entry.fact(), Standing.IN_CONFLICT, null, rev);
            default -> new Entry<>(entry.id(), fact(type, facts, entry.fact()), Standing.IN_FORCE, null, rev);
        };
    }

    public Entry<?> any(Facts facts) {
        List<Entry<?>> all = new ArrayList<>();
        RecordTypes.all().forEach(type -> all.addAll(facts.of(type.kind()).all()));
        return oneOf(all);
    }

    private <F extends Fact> F fact(RecordType<F> type, Facts facts, @Nullable Fact before) {
        for (int i = 0; i < 5_000; i++) {
            try {
                F fact = type.of(values(type, facts, before));
                if (fact instanceof Fitment fitment) {
                    usedParts.add(fitment.part().value());
                }
                return fact;
            } catch (IllegalArgumentException e) {
                continue; // the record refuses: thrown again
            }
        }
        throw new IllegalStateException("no possible fact found for " + type);
    }

    private @Nullable Object[] values(RecordType<?> type, Facts facts, @Nullable Fact before) {
        RecordComponent[] components = type.kind().getRecordComponents();
        @Nullable Object[] values = new Object[components.length];
        counter++;
        currency = Currency.getInstance(oneOf(List.of("EUR", "JPY", "KWD")));
        boolean window = WINDOWS.contains(type.kind());
        for (int i = 0; i < components.length; i++) {
            Component component = type.components().get(i);
            boolean none = component.nullable() && random.nextInt(3) == 0;
            values[i] = none ? null : value(component, components[i].getGenericType(), facts);
            if (window && component.name().equals("from")) {
                values[i] = moment(counter * 100_000L);
            } else if (window && List.of("to", "back").contains(component.name())) {
                values[i] = moment(counter * 100_000L + 1 + random.nextInt(99_999));
            } else if (type.kind() == Scrapping.class && component.name().equals("at")) {
                values[i] = moment(AFTER_ALL + counter);
            } else if (type.kind() == Fitment.class && component.name().equals("part")) {
                values[i] = before instanceof Fitment fitment ? fitment.part() : unusedPart(facts);
            } else if (type.kind() == Run.class && component.name().equals("planned")) {
                values[i] = before instanceof Run run ? run.planned() : null;
            } else if (type.kind() == Run.class
                    && before instanceof Run run
                    && component.name().equals("car")) {
                values[i] = run.car();
            }
        }
        return values;
    }

    private @Nullable Object value(Component component, Type type, Facts facts) {
        Class<? extends Fact> kind = component.refersTo();
        if (kind != null) {
            List<? extends Entry<?>> known = facts.of(kind).all();
            return known.isEmpty()
                    ? null
                    : known.get(random.nextInt(known.size())).id();
        }
        if (type instanceof ParameterizedType set) {
            List<?> words = List.of(((Class<?>) set.getActualTypeArguments()[0]).getEnumConstants());
            return Set.of(oneOf(words));
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            boolean name = List.of("name", "number", "mark", "batch", "what", "title", "question", "statement")
                    .contains(component.name());
            if (List.of("content", "samples", "kept").contains(component.name())) {
                return String.format("%064x", random.nextLong());
            }
            return name ? word() + "#" + counter : word();
        }
        return plain.isEnum() ? oneOf(List.of(plain.getEnumConstants())) : measure(plain);
    }

    private Object measure(Class<?> type) {
        long number = random.nextInt(4) == 0 ? random.nextLong(1L << 40) : random.nextInt(100_000);
        if (type == int.class || type == Integer.class) {
            return 1 + counter;
        } else if (type == long.class || type == Long.class) {
            return number;
        } else if (type == boolean.class) {
            return random.nextBoolean();
        } else if (type == RunningTime.class) {
            return new RunningTime(number);
        } else if (type == Distance.class) {
            return new Distance(number);
        } else if (type == Length.class) {
            return new Length(number);
        } else if (type == Pressure.class) {
            return new Pressure(number);
        } else if (type == Volume.class) {
            return new Volume(number);
        } else if (type == Temperature.class) {
            return new Temperature(number);
        } else if (type == EngineSpeed.class) {
            return new EngineSpeed(random.nextInt(20_000));
        } else if (type == Money.class) {
            return new Money(random.nextInt(3) == 0 ? 0 : number, currency);
        } else if (type == BigDecimal.class) {
            return BigDecimal.valueOf(1 + random.nextInt(100_000), random.nextInt(6));
        } else if (type == Counter.class) {
            return oneOf(Counter.fedByRuns());
        } else if (type == Moment.class) {
            return moment(number);
        } else if (type == LocalDate.class) {
            return LocalDate.of(2020, 1, 1).plusDays(random.nextInt(5_000));
        } else if (type == LocalTime.class) {
            return LocalTime.of(random.nextInt(24), random.nextInt(60));
        } else if (type == ZoneId.class) {
            return ZoneId.of(oneOf(ZONES));
        } else if (type == KnownBy.class) {
            return new KnownBy(Map.of(
                    Counter.RUNNING, oneOf(List.of(HowKnown.values())),
                    Counter.LAPS, oneOf(List.of(HowKnown.values()))));
        }
        throw new IllegalArgumentException("no value for " + type);
    }

    private Moment moment(long seconds) {
        return Moment.of(Instant.ofEpochSecond(1_500_000_000L + seconds % (1L << 32)), ZoneId.of(oneOf(ZONES)));
    }

    private @Nullable Id<Part> unusedPart(Facts facts) {
        for (Entry<Part> part : facts.of(Part.class).all()) {
            if (!usedParts.contains(part.id().value())) {
                return part.id();
            }
        }
        return null;
    }

    private String word() {
        return oneOf(WORDS);
    }
}
