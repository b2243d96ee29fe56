package witnessmark.domain;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.RunningTime;

/**
 * A rule that holds an engine or its parts, whatever their hours, when something happened to it.
 *
 * @param name what happened, in words
 * @param kind what raises it
 * @param design in engines of this design, or null for all
 * @param figure in the kind's unit, or null when grades raise it
 * @param lasting and for this long, where that is known; or null
 * @param readingKind readings of this kind raise it, or null when runs do
 * @param grade this grade or a worse one raises it, or null
 * @param holds parts of these kinds; empty for the engine as a whole
 * @param asks what is to be looked at before it may be cleared
 * @param rank whose rule it is
 * @param source where it is written
 * @param validFrom first day it counts
 * @param validTo last day it counts, or null while it stands
 */
public record Trigger(
        String name,
        TriggerKind kind,
        @Nullable Id<EngineDesign> design,
        @Nullable Long figure,
        @Nullable RunningTime lasting,
        @Nullable ReadingKind readingKind,
        @Nullable Grade grade,
        Set<PartKind> holds,
        String asks,
        LimitRank rank,
        String source,
        LocalDate validFrom,
        @Nullable LocalDate validTo)
        implements Fact {
    public Trigger {
        holds = holds.isEmpty()
                ? Collections.unmodifiableSet(EnumSet.noneOf(PartKind.class))
                : Collections.unmodifiableSet(EnumSet.copyOf(holds));
        if ((kind.figure() == null) != (figure == null) || (kind.figure() == null) != (readingKind != null)) {
            throw new IllegalArgumentException("runs raise a trigger by a figure, readings by their kind");
        }
        if ((kind == TriggerKind.GRADED) != (grade != null)) {
            throw new IllegalArgumentException("a trigger by grade names the grade");
        }
        if (readingKind != null && (!readingKind.graded() || grade != null && !grade.of(readingKind))) {
            throw new IllegalArgumentException("the grade is one of its kind of reading");
        }
        if (figure != null && figure <= 0 || lasting != null && kind != TriggerKind.SPEED_ABOVE) {
            throw new IllegalArgumentException("a figure is more than 0, and only a speed lasts");
        }
    }

    @Override
    public String knownAs() {
        return name;
    }
}
