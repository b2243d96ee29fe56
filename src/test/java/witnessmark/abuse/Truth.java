package witnessmark.abuse;

import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Part;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.port.Logbook;
import witnessmark.quantity.Counter;

/**
 * What a logbook says: every entry with every figure in it, every life worked out of them, and the history.
 *
 * @param entries in no order
 * @param lives what is counted and its life, in words
 * @param history in the order of the logbook's clock
 */
record Truth(Map<Object, Entry<?>> entries, Map<String, String> lives, List<Amendment> history) {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    /** Later than anything that is written in these logbooks. */
    private static final LocalDate AFTER_ALL = LocalDate.of(2160, 1, 1);

    static Truth of(Logbook logbook) {
        return new Truth(entries(logbook.facts()), lives(logbook.facts()), logbook.history());
    }

    static Map<Object, Entry<?>> entries(Facts facts) {
        Map<Object, Entry<?>> all = new HashMap<>();
        RecordTypes.all().forEach(type -> facts.of(type.kind()).all().forEach(entry -> all.put(entry.id(), entry)));
        return all;
    }

    /** The life of everything that has one, by every counter. */
    static Map<String, String> lives(Facts facts) {
        LifeLedger ledger = LifeLedger.of(facts, new AsOf(AFTER_ALL, LONDON));
        Map<String, String> lives = new HashMap<>();
        for (Counter counter : Counter.values()) {
            for (Entry<Part> part : facts.of(Part.class).all()) {
                put(lives, "part " + part.id().text(), counter, () -> ledger.life(part.id(), counter));
            }
            for (Entry<Engine> engine : facts.of(Engine.class).all()) {
                put(lives, "engine " + engine.id().text(), counter, () -> ledger.engineLife(engine.id(), counter));
            }
            for (Entry<Car> car : facts.of(Car.class).all()) {
                put(lives, "car " + car.id().text(), counter, () -> ledger.carLife(car.id(), counter));
            }
        }
        return lives;
    }

    private static void put(Map<String, String> lives, String what, Counter counter, Supplier<Life> life) {
        Life found = life.get();
        lives.put(
                what + " " + counter.code(),
                found.total() + " " + found.lowest() + " " + found.highest() + " " + found.complete());
    }

    /** Whether a logbook says the same. Lives come of the entries alone, and are worked out where those differ in nothing. */
    boolean isReadIn(Logbook logbook) {
        try {
            return entries.equals(entries(logbook.facts()))
                    && history.equals(logbook.history())
                    && lives.equals(lives(logbook.facts()));
        } catch (UncheckedIOException | IllegalArgumentException unreadable) {
            return false;
        }
    }
}
