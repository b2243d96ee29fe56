package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.SentOut;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** An engine that could go into a car: where it is, what it has run, how it stands, and what speaks against it. */
final class SpareEngine {
    /** No more empty positions than this are named one by one. */
    private static final int FEW = 3;

    private final SheetSight sight;
    private final LifeLedger ledger;
    private final Entry<Engine> engine;
    private final Moment at;

    SpareEngine(SheetSight sight, Entry<Engine> engine, Moment at) {
        this.sight = sight;
        this.ledger = sight.view().ledger();
        this.engine = engine;
        this.at = at;
    }

    /** Every engine but those that are in the car, the spare ones first, then those in other cars, then those away or apart. */
    static List<Choice> choices(SheetSight sight, @Nullable Id<Car> car, Moment at) {
        List<SpareEngine> all = new ArrayList<>();
        sight.facts()
                .of(Engine.class)
                .inForce()
                .map(engine -> new SpareEngine(sight, engine, at))
                .filter(spare -> spare.stay()
                        .filter(stay -> stay.fact().car().equals(car)
                                && !stay.fact().from().day().equals(at.day()))
                        .isEmpty())
                .forEach(all::add);
        all.sort(Comparator.comparingInt(SpareEngine::turn)
                .thenComparing(spare -> spare.engine.fact().number()));
        return all.stream().map(SpareEngine::choice).toList();
    }

    /** What has to be said before it goes in: away, open, held, incomplete, over. Empty when nothing has. */
    List<SheetNote> against() {
        List<SheetNote> against = new ArrayList<>();
        away().ifPresent(sent -> against.add(
                SheetNote.of("against_away", sent.fact().sentTo(), sent.fact().from())));
        open().ifPresent(build ->
                against.add(SheetNote.of("against_open", build.fact().opened())));
        marks().stream().filter(mark -> mark.state() == MarkState.HELD).forEach(mark -> held(against, mark));
        List<String> empty = empty();
        if (!empty.isEmpty()) {
            against.add(
                    empty.size() > FEW
                            ? SheetNote.of("against_many_empty", empty.size())
                            : SheetNote.of("against_empty", String.join(", ", empty)));
        }
        marks().stream()
                .filter(mark -> mark.state() == MarkState.OVER)
                .map(this::named)
                .distinct()
                .forEach(what -> against.add(SheetNote.of("against_over", what)));
        return against;
    }

    private void held(List<SheetNote> against, Mark mark) {
        if (mark.reason() instanceof HeldBy by) {
            against.add(SheetNote.of("against_held", named(mark), by.since()));
        }
    }

    /** "K05: spare, 12.46 h since rebuild, over, incomplete". */
    private Choice choice() {
        return Choice.of(
                engine.id().text(),
                SheetNote.of(
                        empty().isEmpty() ? "engine_stands" : "engine_stands_incomplete",
                        engine.fact(),
                        where(),
                        ledger.sinceRebuild(engine.id(), Limits.REBUILD, Counter.RUNNING),
                        marks().stream().findFirst().map(Mark::state).orElse(MarkState.NOT_KNOWN)));
    }

    private SheetNote where() {
        return away().map(sent -> SheetNote.of("engine_away", sent.fact().sentTo()))
                .or(() -> open().map(build ->
                        SheetNote.of("engine_apart", build.fact().opened())))
                .or(() -> stay().map(stay -> SheetNote.of(
                        "engine_elsewhere", sight.name(Car.class, stay.fact().car()))))
                .orElse(SheetNote.of("engine_spare"));
    }

    private int turn() {
        return away().isPresent() || open().isPresent() ? 2 : stay().isPresent() ? 1 : 0;
    }

    private Optional<Entry<EngineInCar>> stay() {
        return InCar.ofEngine(sight, engine.id(), at);
    }

    private Optional<Entry<SentOut>> away() {
        return sight
                .facts()
                .of(SentOut.class)
                .where(sent -> engine.id().equals(sent.engine())
                        && !at.isBefore(sent.from())
                        && (sent.back() == null || at.isBefore(sent.back())))
                .stream()
                .findFirst();
    }

    /** The build it is open for then. */
    private Optional<Entry<Build>> open() {
        return sight
                .facts()
                .of(Build.class)
                .where(build -> build.engine().equals(engine.id())
                        && !at.isBefore(build.opened())
                        && (build.closed() == null || at.isBefore(build.closed())))
                .stream()
                .findFirst();
    }

    /** The needed positions that are empty; an engine nobody wrote a part of is not known, rather than incomplete. */
    private List<String> empty() {
        return ledger.fittedAt(engine.id(), at).isEmpty()
                ? List.of()
                : ledger.emptyPositions(engine.id(), at).stream()
                        .map(position -> position.fact().name())
                        .toList();
    }

    private List<Mark> marks() {
        return sight.standing().marks().stream()
                .filter(mark -> engine.id().equals(mark.engine()))
                .toList();
    }

    /** The part a mark is on, or the engine. */
    private String named(Mark mark) {
        Id<Part> part = mark.part();
        return part == null ? engine.fact().number() : sight.name(Part.class, part);
    }
}
