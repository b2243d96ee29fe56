package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * What an incident taught: a check on every later build sheet it concerns, until it is withdrawn. It asks for a figure, with
 * a limit, or puts a question.
 *
 * @param incident by which incident, or null
 * @param what what was learned
 * @param question what is asked of whoever signs; empty where a figure is asked for
 * @param kind the figure, or null for a question
 * @param atLeast in whole parts of the kind's dimension, or null
 * @param atMost in whole parts of the kind's dimension, or null
 * @param design on sheets of engines of this design, or null for all
 * @param partKind on sheets of engines in which a part of this kind is fitted anew, or null for all
 * @param from since when
 * @param by who set it
 * @param withdrawn when it was withdrawn, or null while it stands
 * @param withdrawnBy who withdrew it; empty while it stands
 * @param withdrawnBecause for what reason; empty while it stands
 */
public record Lesson(
        @Nullable Id<Incident> incident,
        String what,
        String question,
        @Nullable MeasureKind kind,
        @Nullable Long atLeast,
        @Nullable Long atMost,
        @Nullable Id<EngineDesign> design,
        @Nullable PartKind partKind,
        Moment from,
        String by,
        @Nullable Moment withdrawn,
        String withdrawnBy,
        String withdrawnBecause)
        implements Fact {
    public Lesson {
        if (what.isBlank()) {
            throw new IllegalArgumentException("a lesson says what was learned");
        }
        if ((kind == null) == question.isBlank()) {
            throw new IllegalArgumentException("a lesson asks for a figure or puts a question");
        }
        if (kind == null && (atLeast != null || atMost != null)) {
            throw new IllegalArgumentException("a limit is of a figure");
        }
        if (atLeast != null && atMost != null && atLeast > atMost) {
            throw new IllegalArgumentException("the least lies below the most");
        }
        if (withdrawn != null && (withdrawn.isBefore(from) || withdrawnBecause.isBlank())) {
            throw new IllegalArgumentException("a lesson is withdrawn after it was set, for a reason");
        }
    }

    /** Whether it stands at that time. */
    public boolean standsAt(Moment then) {
        return !from.isAfter(then) && (withdrawn == null || withdrawn.isAfter(then));
    }

    @Override
    public Moment happened() {
        return from;
    }
}
