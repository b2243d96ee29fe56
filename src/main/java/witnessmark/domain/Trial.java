package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A part design tried against the one that is usual.
 *
 * @param name what it is called
 * @param tried the design that is tried
 * @param usual the design it is held against, or null for every other of its kind
 * @param hoped what is hoped for
 * @param from since which day
 * @param by who set it up
 * @param ended on which day it was judged, or null while it goes on
 * @param verdict what came of it, or null while it goes on
 * @param because on what grounds; empty while it goes on
 * @param judgedBy who judged; empty while it goes on
 */
public record Trial(
        String name,
        Id<PartDesign> tried,
        @Nullable Id<PartDesign> usual,
        String hoped,
        LocalDate from,
        String by,
        @Nullable LocalDate ended,
        @Nullable TrialVerdict verdict,
        String because,
        String judgedBy)
        implements Fact {
    public Trial {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a trial has a name");
        }
        if (tried.equals(usual)) {
            throw new IllegalArgumentException("a design is not tried against itself");
        }
        if ((ended == null) != (verdict == null) || ended != null && ended.isBefore(from)) {
            throw new IllegalArgumentException("a trial is judged on a day after it began");
        }
        if (verdict != null && because.isBlank()) {
            throw new IllegalArgumentException("a verdict has its grounds");
        }
    }

    @Override
    public String knownAs() {
        return name;
    }
}
