package witnessmark.ledger;

import java.math.BigInteger;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.ReadingUse.Broken;
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
    public static boolean meant(ReadingLimit limit, @Nullable Id<Engine> engine, @Nullable Id<EngineDesign> design) {
        return (limit.engine() == null || limit.engine().equals(engine))
                && (limit.design() == null || limit.design().equals(design));
    }

    /**
     * Which figure of the limit a reading breaks, the worst first.
     *
     * @param base what it is held against
     */
    public static Broken broken(ReadingLimit limit, Reading reading, Reading base) {
        if (reading.grade() != null) {
            return limit.worstGrade() != null
                            && reading.grade().badness() > limit.worstGrade().badness()
                    ? Broken.GRADE
                    : Broken.NONE;
        }
        long value = Objects.requireNonNull(reading.value());
        long from = Objects.requireNonNull(base.value());
        if (limit.atMost() != null && value > limit.atMost()) {
            return Broken.AT_MOST;
        }
        if (limit.atLeast() != null && value < limit.atLeast()) {
            return Broken.AT_LEAST;
        }
        if (limit.fallAtMost() != null && fellFurther(from, value, limit.fallAtMost())) {
            return Broken.FALL;
        }
        return limit.changeAtMost() != null && Math.abs(value - from) > limit.changeAtMost()
                ? Broken.CHANGE
                : Broken.NONE;
    }

    /** Whether (from - value) / from is more than some hundredths of a percent, without dividing. */
    private static boolean fellFurther(long from, long value, int most) {
        BigInteger fell = BigInteger.valueOf(from - value).multiply(BigInteger.valueOf(10_000));
        return fell.compareTo(BigInteger.valueOf(from).multiply(BigInteger.valueOf(most))) > 0;
    }
}
