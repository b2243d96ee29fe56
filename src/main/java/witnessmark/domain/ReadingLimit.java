package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.RunningTime;

/**
 * What a reading may be, and how old it may get.
 *
 * @param name what is asked, in words
 * @param kind readings of this kind
 * @param design in engines of this design, or null for all
 * @param partKind on parts of this kind, or null when it is the engine's
 * @param engine on this engine only, or null
 * @param atLeast not less than this in the kind's unit, or null
 * @param atMost not more than this in the kind's unit, or null
 * @param changeAtMost not further than this from the baseline, either way, in the kind's unit; or null
 * @param fallAtMost not further below the baseline than this, in hundredths of a percent of it; or null
 * @param worstGrade not worse than this, or null
 * @param every read again after this running, or null
 * @param rank whose limit it is
 * @param source where it is written
 * @param validFrom first day it counts
 * @param validTo last day it counts, or null while it stands
 */
public record ReadingLimit(
        String name,
        ReadingKind kind,
        @Nullable Id<EngineDesign> design,
        @Nullable PartKind partKind,
        @Nullable Id<Engine> engine,
        @Nullable Long atLeast,
        @Nullable Long atMost,
        @Nullable Long changeAtMost,
        @Nullable Integer fallAtMost,
        @Nullable Grade worstGrade,
        @Nullable RunningTime every,
        LimitRank rank,
        String source,
        LocalDate validFrom,
        @Nullable LocalDate validTo)
        implements Fact {
    public ReadingLimit {
        boolean figures = atLeast != null || atMost != null || changeAtMost != null || fallAtMost != null;
        if (!figures && worstGrade == null && every == null) {
            throw new IllegalArgumentException("a limit of readings says a figure, a grade or an age");
        }
        if (kind.graded() ? figures : worstGrade != null) {
            throw new IllegalArgumentException("figures are for what is measured, grades for what is graded");
        }
        if (worstGrade != null && !worstGrade.of(kind)) {
            throw new IllegalArgumentException(kind.code() + " is not graded " + worstGrade.code());
        }
        if (atLeast != null && atMost != null && atLeast > atMost) {
            throw new IllegalArgumentException("the least lies below the most");
        }
        if (changeAtMost != null && changeAtMost < 0 || fallAtMost != null && (fallAtMost < 0 || fallAtMost > 10_000)) {
            throw new IllegalArgumentException("a change is 0 or more, and nothing falls by more than all of it");
        }
        if (every != null && every.millis() == 0) {
            throw new IllegalArgumentException("readings are some running apart");
        }
    }
}
