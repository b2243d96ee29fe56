package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * What the sheet of a build says to a lesson.
 *
 * @param lesson which lesson
 * @param build on the sheet of which build
 * @param at when
 * @param met whether it is as the lesson asks
 * @param concession with which concession it is accepted although it is not, or null
 * @param words what was done or seen
 * @param by who answers
 */
public record LessonAnswer(
        Id<Lesson> lesson,
        Id<Build> build,
        Moment at,
        boolean met,
        @Nullable Id<Concession> concession,
        String words,
        String by)
        implements Fact {
    public LessonAnswer {
        if (met && concession != null) {
            throw new IllegalArgumentException("what is met is not conceded");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
