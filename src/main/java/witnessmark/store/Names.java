package witnessmark.store;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.domain.StockBatch;
import witnessmark.quantity.Moment;

/** What people call a record, for problems that name one. Never an id where there is a word. */
final class Names {
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    /** Columns in which a thing's own name stands. */
    private static final Set<String> NAMING = Set.of("name", "number", "serial", "code", "title");

    private final Facts facts;

    Names(Facts facts) {
        this.facts = facts;
    }

    String of(Entry<?> entry) {
        Fact fact = entry.fact();
        String known = fact.knownAs();
        if (known != null && !known.isBlank()) {
            return fact instanceof Build build ? engine(build.engine()) + " " + known : known;
        }
        String made = described(fact);
        return made.isBlank() ? entry.id().text() : made;
    }

    /**
     * What people call a record of which no entry can be made: the names it holds and refers to, and when it was, as far as that
     * can be read. The id where nothing can.
     */
    String ofRemains(UUID record, Map<String, @Nullable Object> image) {
        Stream<String> named = image.entrySet().stream()
                .filter(column -> NAMING.contains(column.getKey()))
                .map(column -> String.valueOf(column.getValue()));
        Stream<String> referred = image.entrySet().stream()
                .filter(column -> column.getKey().endsWith("_id"))
                .flatMap(column -> referred(String.valueOf(column.getValue())).stream());
        Stream<String> when = image.entrySet().stream()
                .filter(column -> column.getKey().endsWith("_utc_ms") && column.getValue() instanceof Number)
                .limit(1)
                .map(column -> said(Moment.of(
                        Instant.ofEpochMilli(((Number) column.getValue()).longValue()), ZoneId.systemDefault())));
        String words = Stream.of(named, referred, when)
                .flatMap(each -> each)
                .filter(word -> !word.isBlank())
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? record.toString() : words;
    }

    private Optional<String> referred(String id) {
        try {
            UUID value = UUID.fromString(id);
            return Stream.of(Engine.class, Car.class, Event.class, Part.class)
                    .flatMap(kind -> Entries.find(facts, kind, value).stream())
                    .map(entry -> Objects.requireNonNullElse(entry.fact().knownAs(), ""))
                    .findFirst();
        } catch (IllegalArgumentException e) {
            return Optional.empty(); // that is what is wrong with it
        }
    }

    String part(@Nullable Id<Part> id) {
        return known(Part.class, id);
    }

    String engine(@Nullable Id<Engine> id) {
        return known(Engine.class, id);
    }

    String car(@Nullable Id<Car> id) {
        return known(Car.class, id);
    }

    String position(@Nullable Id<Position> id) {
        return known(Position.class, id);
    }

    String planned(@Nullable Id<PlannedRun> id) {
        return known(PlannedRun.class, id);
    }

    /** Items on the shelf: what they are and of which batch. */
    String batch(Id<StockBatch> id) {
        StockBatch batch = Entries.fact(facts, StockBatch.class, id);
        return batch == null ? "" : known(PartDesign.class, batch.design()) + " " + batch.batch();
    }

    /** The engine or car a part is fitted to. */
    String place(Fitment fitment) {
        return fitment.engine() != null ? engine(fitment.engine()) : car(fitment.car());
    }

    private String described(Fact fact) {
        if (fact instanceof Fitment fitment) {
            return joined(part(fitment.part()), position(fitment.position()), place(fitment), fitment.from());
        }
        if (fact instanceof EngineInCar in) {
            return joined(engine(in.engine()), car(in.car()), "", in.from());
        }
        if (fact instanceof Run run) {
            return joined(run.name(), engine(run.engine()), known(Event.class, run.event()), run.start());
        }
        return joined("", "", "", fact.happened());
    }

    private static String joined(String first, String second, String third, @Nullable Moment moment) {
        return Stream.of(first, second, third, moment == null ? "" : said(moment))
                .filter(word -> !word.isBlank())
                .collect(Collectors.joining(", "));
    }

    private static String said(Moment moment) {
        return moment.dayOnly() ? moment.day().toString() : DAY_AND_TIME.format(moment.wallClock());
    }

    private <F extends Fact> String known(Class<F> kind, @Nullable Id<F> id) {
        F fact = Entries.fact(facts, kind, id);
        return fact == null ? "" : Objects.requireNonNullElse(fact.knownAs(), "");
    }
}
