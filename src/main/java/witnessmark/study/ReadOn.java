package witnessmark.study;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.ReadingLimits;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * What readings are made on: an engine, or a part.
 *
 * @param engine the engine, or the one the part is in; null on the shelf
 * @param part the part, or null when the readings are the engine's
 * @param kind of the part, or null
 * @param builds of the engine that are closed, where the readings are its own
 */
record ReadOn(
        @Nullable Entry<Engine> engine,
        @Nullable Entry<Part> part,
        @Nullable PartKind kind,
        List<Entry<Build>> builds) {
    private static final double PER_HOUR = 3_600_000;

    static ReadOn engine(LifeLedger ledger, Entry<Engine> engine) {
        return new ReadOn(
                engine,
                null,
                null,
                ledger.facts()
                        .of(Build.class)
                        .where(build -> build.engine().equals(engine.id())
                                && build.closed() != null
                                && ledger.asOf().counts(build.closed())));
    }

    static ReadOn part(LifeLedger ledger, Entry<Part> part) {
        Entry<Engine> engine = ledger.whereIs(part.id(), ledger.asOf().last())
                .map(fitment -> fitment.fact().engine())
                .flatMap(id -> ledger.facts().of(Engine.class).find(id))
                .orElse(null);
        PartKind kind =
                ledger.facts().of(PartDesign.class).get(part.fact().design()).kind();
        return new ReadOn(engine, part, kind, List.of());
    }

    Id<?> id() {
        return part != null ? part.id() : Objects.requireNonNull(engine).id();
    }

    @Nullable
    Id<EngineDesign> design() {
        return engine == null ? null : engine.fact().design();
    }

    boolean is(@Nullable Id<Engine> other) {
        return engine != null && engine.id().equals(other);
    }

    /** The signed decision to go on past a limit of its readings, or null. */
    @Nullable
    Entry<RunOn> runOn(LifeLedger ledger, Entry<ReadingLimit> limit) {
        return ReadingLimits.runOn(
                ledger, limit.id(), part == null ? null : part.id(), engine == null ? null : engine.id());
    }

    Life life(LifeLedger ledger) {
        return part != null
                ? ledger.life(part.id(), Counter.RUNNING)
                : ledger.engineLife(Objects.requireNonNull(engine).id(), Counter.RUNNING);
    }

    /** What it had run by a moment, hours. */
    double hoursAt(LifeLedger ledger, Moment at) {
        Life since = part != null
                ? ledger.since(part.id(), Counter.RUNNING, at)
                : ledger.engineSince(Objects.requireNonNull(engine).id(), Counter.RUNNING, at);
        return (life(ledger).total() - since.total()) / PER_HOUR;
    }

    double hours(LifeLedger ledger) {
        return life(ledger).total() / PER_HOUR;
    }
}
