package witnessmark.ledger;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;

/** On what limits of readings fall. */
public final class ReadingLimits {
    private ReadingLimits() {}

    /**
     * The limits that stand on the ledger's day for readings of a kind.
     *
     * @param engine on which engine, or the one the part is in; null on the shelf
     * @param design what that is built to, or null
     * @param part of which kind of part, or null when the readings are the engine's
     */
    public static List<Entry<ReadingLimit>> of(
            LifeLedger ledger,
            ReadingKind kind,
            @Nullable Id<Engine> engine,
            @Nullable Id<EngineDesign> design,
            @Nullable PartKind part) {
        return ledger.facts()
                .of(ReadingLimit.class)
                .where(limit -> limit.kind() == kind
                        && limit.partKind() == part
                        && ledger.asOf().stands(limit)
                        && meant(limit, engine, design));
    }

    /**
     * The decision by which readings past a limit go on; null when none was signed, or what it goes up to is reached.
     *
     * @param part the part the readings are of, or null when they are the engine's
     * @param engine the engine, or null on the shelf
     */
    public static @Nullable Entry<RunOn> runOn(
            LifeLedger ledger, Id<ReadingLimit> limit, @Nullable Id<Part> part, @Nullable Id<Engine> engine) {
        return runOn(RunOns.of(ledger.facts(), ledger.asOf()), ledger, limit, part, engine);
    }

    static @Nullable Entry<RunOn> runOn(
            RunOns runOns,
            LifeLedger ledger,
            Id<ReadingLimit> limit,
            @Nullable Id<Part> part,
            @Nullable Id<Engine> engine) {
        Entry<RunOn> signed = runOns.past(limit, new Seat(part, null, null, null, engine, null, null));
        if (signed == null) {
            return null;
        }
        Life run = part != null
                ? ledger.life(part, Counter.RUNNING)
                : ledger.engineLife(Objects.requireNonNull(engine), Counter.RUNNING);
        return run.highest() < signed.fact().upTo() ? signed : null;
    }

    /** Whether a limit is for an engine as a whole, or a part in it, as far as engine and design say. */
    static boolean meant(ReadingLimit limit, @Nullable Id<Engine> engine, @Nullable Id<EngineDesign> design) {
        return (limit.engine() == null || limit.engine().equals(engine))
                && (limit.design() == null || limit.design().equals(design));
    }
}
