package witnessmark.domain;

import java.time.LocalDate;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a figure of a build sheet may be, and what is aimed at. Figures are whole parts of the kind's dimension.
 *
 * @param kind what it is set for, measured or worked out
 * @param spot for this spot of its places only, or null for every one
 * @param design for engines of this design, or null
 * @param partDesign for parts of this design wherever they are, or null
 * @param atLeast not less than this, or null
 * @param atMost not more than this, or null
 * @param aimLeast aimed at not less than this, or null
 * @param aimMost aimed at not more than this, or null; where both aims are the same it is the figure as designed
 * @param rank whose limit it is
 * @param source where it is written
 * @param validFrom first day it counts
 * @param validTo last day it counts, or null while it stands
 */
public record SizeLimit(
        MeasureKind kind,
        @Nullable Spot spot,
        @Nullable Id<EngineDesign> design,
        @Nullable Id<PartDesign> partDesign,
        @Nullable Long atLeast,
        @Nullable Long atMost,
        @Nullable Long aimLeast,
        @Nullable Long aimMost,
        LimitRank rank,
        String source,
        LocalDate validFrom,
        @Nullable LocalDate validTo)
        implements Fact {
    public SizeLimit {
        if (design == null && partDesign == null) {
            throw new IllegalArgumentException("a limit of size is an engine design's or a part design's");
        }
        if (spot != null && !kind.spots().contains(spot)) {
            throw new IllegalArgumentException(kind.code() + " has no such spot");
        }
        if (Stream.of(atLeast, atMost, aimLeast, aimMost).allMatch(Objects::isNull)) {
            throw new IllegalArgumentException("a limit of size says a figure");
        }
        if (above(atLeast, atMost) || above(aimLeast, aimMost) || above(atLeast, aimMost) || above(aimLeast, atMost)) {
            throw new IllegalArgumentException("the least lies below the most");
        }
    }

    /** The figure as designed: where what is aimed at is one figure. */
    public @Nullable Long designed() {
        return aimLeast != null && aimLeast.equals(aimMost) ? aimLeast : null;
    }

    private static boolean above(@Nullable Long least, @Nullable Long most) {
        return least != null && most != null && least > most;
    }
}
