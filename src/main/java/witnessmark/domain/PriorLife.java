package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * Life carried in from before the logbook, stated at a moment: only running from then on is added.
 *
 * @param part whose, or null when an engine's
 * @param engine whose, or null when a part's
 * @param counter of what
 * @param kind how well it is known
 * @param amount in the counter's unit, 0 or more; the likely figure when told; the least when unknown
 * @param lowest in the counter's unit; equal to the amount when known
 * @param highest in the counter's unit; equal to the amount when known; without meaning when unknown
 * @param at the moment it is stated for
 * @param words who says so, and how he knows
 */
public record PriorLife(
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        Counter counter,
        PriorKind kind,
        long amount,
        long lowest,
        long highest,
        Moment at,
        String words)
        implements Fact {
    public PriorLife {
        if ((part == null) == (engine == null)) {
            throw new IllegalArgumentException("a prior life is a part's or an engine's");
        }
        if (lowest < 0 || lowest > amount || (kind != PriorKind.UNKNOWN && highest < amount)) {
            throw new IllegalArgumentException("a prior life lies between its lowest and its highest, from 0 up");
        }
        if (kind == PriorKind.KNOWN && (lowest != amount || highest != amount)) {
            throw new IllegalArgumentException("a known prior life has no range");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
