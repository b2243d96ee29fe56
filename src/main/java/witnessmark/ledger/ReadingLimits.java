package witnessmark.ledger;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.PartKind;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;

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

    /** Whether a limit is for an engine as a whole, or a part in it, as far as engine and design say. */
    static boolean meant(ReadingLimit limit, @Nullable Id<Engine> engine, @Nullable Id<EngineDesign> design) {
        return (limit.engine() == null || limit.engine().equals(engine))
                && (limit.design() == null || limit.design().equals(design));
    }
}
