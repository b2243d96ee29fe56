package witnessmark.fit.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Concession;
import witnessmark.domain.Entry;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;

/**
 * What a lesson asks of a build sheet, and how the sheet answers.
 *
 * @param lesson which lesson
 * @param state how it stands, whoever accepted it
 * @param checks the figures it asks for, with the limits of the sheet; none for a question
 * @param decides the check that lies worst by the limit of the lesson; null for a question and where nothing was measured
 * @param answer the last answer of somebody, or null
 * @param accepted what accepts it although it is not met, or null
 */
public record LessonCheck(
        Entry<Lesson> lesson,
        State state,
        List<Check> checks,
        @Nullable Check decides,
        @Nullable Entry<LessonAnswer> answer,
        @Nullable Entry<Concession> accepted) {
    /** How a lesson stands on a sheet, the worst first. */
    public enum State {
        /** A figure lies outside the limit of the lesson, or somebody answered that it is not so. */
        NOT_MET,
        /** A figure it asks for is not measured. */
        NOT_MEASURED,
        /** Nobody answered its question. */
        NOT_ANSWERED,
        MET
    }

    public LessonCheck {
        checks = List.copyOf(checks);
    }

    /** Whether it keeps the sheet from being signed: it is not met, and nobody accepted that. */
    public boolean open() {
        return state != State.MET && accepted == null;
    }
}
