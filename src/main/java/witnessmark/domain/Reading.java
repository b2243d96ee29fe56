package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * One figure or grade read on an engine or a part.
 *
 * @param kind what was read
 * @param at when
 * @param engine on which engine, or null when the part was off
 * @param part of which part, or null when it is the engine's
 * @param place cylinder, valve, metal … as the crew says it; empty when the thing has one place only
 * @param value in the kind's unit, or null when graded
 * @param grade or null when a figure
 * @param heardAt where the air of a leak-down hissed; empty when nothing was heard
 * @param warmth hot or cold
 * @param baseline what later readings of this place are held against
 * @param by by whom
 * @param note anything else
 * @param tool with which tester, or null when not said
 */
public record Reading(
        ReadingKind kind,
        Moment at,
        @Nullable Id<Engine> engine,
        @Nullable Id<Part> part,
        String place,
        @Nullable Long value,
        @Nullable Grade grade,
        String heardAt,
        Warmth warmth,
        boolean baseline,
        String by,
        String note,
        @AddedLater @Nullable Id<Tool> tool)
        implements Fact {
    public Reading {
        if (engine == null && part == null) {
            throw new IllegalArgumentException("a reading is of an engine or a part");
        }
        if ((value == null) == (grade == null) || kind.graded() != (grade != null)) {
            throw new IllegalArgumentException("a reading has a figure, or a grade where its kind is graded");
        }
        if (grade != null && !grade.of(kind)) {
            throw new IllegalArgumentException(kind.code() + " is not graded " + grade.code());
        }
        if (value != null && value < 0) {
            throw new IllegalArgumentException("a reading is 0 or more");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
