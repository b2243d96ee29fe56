package witnessmark.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Concession;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.domain.PartKind;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.LessonCheck;
import witnessmark.fit.result.LessonCheck.State;
import witnessmark.quantity.Moment;

/**
 * What lessons ask of a build sheet. A figure is the one the sheet has already, held against the limit of the lesson
 * beside the sheet's own; what somebody answers cannot make it another. A question is met once somebody says so.
 */
public final class LessonChecks {
    private LessonChecks() {}

    /**
     * Whether a lesson is asked on a sheet.
     *
     * @param design of the engine
     * @param anew kinds of parts fitted in that build
     * @param then when the sheet was signed or the build closed, whichever came first; or the day looked at
     */
    public static boolean concerns(Lesson lesson, Id<EngineDesign> design, Set<PartKind> anew, Moment then) {
        return lesson.standsAt(then)
                && (lesson.design() == null || lesson.design().equals(design))
                && (lesson.partKind() == null || anew.contains(lesson.partKind()));
    }

    /**
     * How a sheet answers a lesson.
     *
     * @param answers all that is worked out of the sheet
     * @param answer the last answer to the lesson on that sheet, or null
     * @param accepted what is accepted as it is in that build
     */
    public static LessonCheck of(
            Entry<Lesson> lesson,
            List<Answer> answers,
            @Nullable Entry<LessonAnswer> answer,
            List<Entry<Concession>> accepted) {
        Optional<Entry<Concession>> named = Optional.ofNullable(answer)
                .map(each -> each.fact().concession())
                .flatMap(id ->
                        accepted.stream().filter(each -> each.id().equals(id)).findFirst());
        if (lesson.fact().kind() == null) {
            State state = answer == null ? State.NOT_ANSWERED : answer.fact().met() ? State.MET : State.NOT_MET;
            return new LessonCheck(lesson, state, List.of(), null, answer, named.orElse(null));
        }
        List<Check> checks = answers.stream()
                .filter(each -> each.kind() == lesson.fact().kind())
                .flatMap(each -> each.checks().stream())
                .toList();
        State state = state(lesson.fact(), checks);
        return new LessonCheck(
                lesson,
                state,
                checks,
                worst(lesson.fact(), checks),
                answer,
                state == State.MET
                        ? null
                        : named.or(() -> ofFigures(lesson.fact(), checks, accepted))
                                .orElse(null));
    }

    private static State state(Lesson lesson, List<Check> checks) {
        if (checks.stream().anyMatch(check -> check.value() != null && room(lesson, check.value()) < 0)) {
            return State.NOT_MET;
        }
        return checks.isEmpty() || checks.stream().anyMatch(check -> check.value() == null)
                ? State.NOT_MEASURED
                : State.MET;
    }

    private static @Nullable Check worst(Lesson lesson, List<Check> checks) {
        return checks.stream()
                .filter(check -> check.value() != null)
                .min(Comparator.comparingLong(check -> room(lesson, Objects.requireNonNull(check.value()))))
                .orElse(null);
    }

    /** How far a figure lies inside the limit of a lesson, below 0 outside; without a limit as far as can be. */
    private static long room(Lesson lesson, long value) {
        long below = lesson.atLeast() == null ? Long.MAX_VALUE : value - lesson.atLeast();
        long above = lesson.atMost() == null ? Long.MAX_VALUE : lesson.atMost() - value;
        return Math.min(below, above);
    }

    /**
     * What accepts the figures themselves, every one that does not meet the lesson. What was accepted before the lesson was
     * set was accepted without knowing it.
     */
    private static Optional<Entry<Concession>> ofFigures(
            Lesson lesson, List<Check> checks, List<Entry<Concession>> accepted) {
        List<Entry<Concession>> since = accepted.stream()
                .filter(each ->
                        each.fact().kind() == lesson.kind() && !each.fact().at().isBefore(lesson.from()))
                .toList();
        boolean all = checks.stream()
                .filter(check -> check.value() == null || room(lesson, check.value()) < 0)
                .allMatch(check -> since.stream().anyMatch(each -> covers(each.fact(), check)));
        return all ? since.stream().findFirst() : Optional.empty();
    }

    private static boolean covers(Concession concession, Check check) {
        return concession.number() == null
                || concession.number().equals(check.place().number());
    }
}
