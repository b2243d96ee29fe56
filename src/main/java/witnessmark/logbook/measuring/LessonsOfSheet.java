package witnessmark.logbook.measuring;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.domain.PartKind;
import witnessmark.domain.TrackRepair;
import witnessmark.fit.LessonChecks;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.LessonCheck;
import witnessmark.ledger.FittedAnew;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/**
 * The lessons a build sheet is asked. Those that stood when it was signed or its build was closed, whichever came first: what
 * was learned later does not touch it. A repair at the track has no sheet, and is asked none.
 */
final class LessonsOfSheet {
    private final View view;
    private final Facts facts;

    LessonsOfSheet(View view) {
        this.view = view;
        this.facts = view.facts();
    }

    /**
     * In the order they were learned.
     *
     * @param signed when the sheet is signed; null while it is not
     * @param answers all that is worked out of the sheet
     * @param accepted what is accepted as it is in that build
     */
    List<LessonCheck> of(
            Entry<Build> build, @Nullable Moment signed, List<Answer> answers, List<Entry<Concession>> accepted) {
        return held(asked(build, signed, facts.of(Lesson.class).where(lesson -> true)), build, answers, accepted);
    }

    /**
     * Those of some lessons that a sheet is asked, in the order they were learned. The sheet itself is not worked out for it.
     *
     * @param signed when the sheet is signed; null while it is not
     */
    List<Entry<Lesson>> asked(Entry<Build> build, @Nullable Moment signed, List<Entry<Lesson>> lessons) {
        if (lessons.isEmpty() || isTrackRepair(build.id())) {
            return List.of();
        }
        Id<EngineDesign> design =
                facts.of(Engine.class).get(build.fact().engine()).design();
        Set<PartKind> anew = FittedAnew.kinds(view.ledger(), build);
        Moment then = then(build.fact(), signed);
        return lessons.stream()
                .filter(lesson -> LessonChecks.concerns(lesson.fact(), design, anew, then))
                .sorted(Comparator.comparing(
                                (Entry<Lesson> lesson) -> lesson.fact().from())
                        .thenComparing(Entry::id))
                .toList();
    }

    /** Lessons that a sheet is asked, held against it. */
    List<LessonCheck> held(
            List<Entry<Lesson>> asked, Entry<Build> build, List<Answer> answers, List<Entry<Concession>> accepted) {
        return asked.stream()
                .map(lesson -> LessonChecks.of(lesson, answers, answer(lesson.id(), build.id()), accepted))
                .toList();
    }

    /**
     * Whether a lesson is asked on a sheet.
     *
     * @param signed when the sheet was signed
     */
    boolean concerns(Lesson lesson, Entry<Build> build, Moment signed) {
        Moment then = then(build.fact(), signed);
        return lesson.standsAt(then)
                && !isTrackRepair(build.id())
                && LessonChecks.concerns(
                        lesson,
                        facts.of(Engine.class).get(build.fact().engine()).design(),
                        FittedAnew.kinds(view.ledger(), build),
                        then);
    }

    /** The same lessons held against other figures. */
    static List<LessonCheck> again(List<LessonCheck> lessons, List<Answer> answers, List<Entry<Concession>> accepted) {
        return lessons.stream()
                .map(each -> LessonChecks.of(each.lesson(), answers, each.answer(), accepted))
                .toList();
    }

    private Moment then(Build build, @Nullable Moment signed) {
        Moment then = view.ledger().asOf().last();
        for (Moment ended : new Moment[] {signed, build.closed()}) {
            then = ended != null && ended.isBefore(then) ? ended : then;
        }
        return then;
    }

    private boolean isTrackRepair(Id<Build> build) {
        return !facts.of(TrackRepair.class)
                .where(repair -> repair.build().equals(build))
                .isEmpty();
    }

    private @Nullable Entry<LessonAnswer> answer(Id<Lesson> lesson, Id<Build> build) {
        return facts
                .of(LessonAnswer.class)
                .where(answer -> answer.lesson().equals(lesson)
                        && answer.build().equals(build)
                        && view.ledger().asOf().counts(answer.at()))
                .stream()
                .max(Comparator.comparing(
                                (Entry<LessonAnswer> answer) -> answer.fact().at())
                        .thenComparing(Entry::id))
                .orElse(null);
    }
}
