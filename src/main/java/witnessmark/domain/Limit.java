package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Counter;

/**
 * A figure at which something falls due.
 *
 * @param name the work due, in words
 * @param action look or renew
 * @param design parts in engines of this design, or null for all
 * @param partKind parts of this kind, or null
 * @param partDesign parts of this design, or null
 * @param part this part only, or null
 * @param engine this engine only, or null
 * @param car this car only, or null
 * @param counter counted in what
 * @param amount in the counter's unit, more than 0
 * @param rank whose limit it is
 * @param source where it is written
 * @param validFrom first day it counts
 * @param validTo last day it counts, or null while it stands
 */
public record Limit(
        String name,
        LimitAction action,
        @Nullable Id<EngineDesign> design,
        @Nullable PartKind partKind,
        @Nullable Id<PartDesign> partDesign,
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        Counter counter,
        long amount,
        LimitRank rank,
        String source,
        LocalDate validFrom,
        @Nullable LocalDate validTo)
        implements Fact {
    public Limit {
        if (amount <= 0) {
            throw new IllegalArgumentException("a limit is more than 0");
        }
        if (partKind == null && partDesign == null && part == null && engine == null && car == null) {
            throw new IllegalArgumentException("a limit names what it is for");
        }
    }
}
