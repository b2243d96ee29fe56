package witnessmark.logbook.strip;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.PartSpot;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.study.result.StripLine;

/**
 * Writes down what is found at a strip, position by position. What is said of a position again is the same finding amended; each
 * time is one change. What it is of, which part sat there and which engine, is worked out and not asked.
 */
public final class WriteStrip {
    private final Desk desk;
    private final Ids ids;

    public WriteStrip(Desk desk, Ids ids) {
        this.desk = desk;
        this.ids = ids;
    }

    /**
     * A position of a strip.
     *
     * @param number which cylinder or main bearing, counted from 1; null for all of them
     */
    public record Where(
            Id<Build> build, StripLine line, @Nullable Integer number) {}

    /**
     * A mark.
     *
     * @param on where on its part, or null where nobody says so now
     */
    public record Seen(FindingMark mark, @Nullable PartSpot on) {
        /** What was found before, as it is now: how far it has gone and where it is stay unless they are said again. */
        private Finding over(Finding was) {
            Finding marked = was.marked(mark, was.how() == HowMarked.NONE ? far() : was.how());
            Finding judged = mark == FindingMark.NO_MARK ? marked.judged(HowMarked.NONE) : marked;
            return on == null ? judged : judged.placed(on);
        }

        /** What is no mark has gone no way; of others nobody has said yet. */
        private @Nullable HowMarked far() {
            return mark == FindingMark.NO_MARK ? HowMarked.NONE : null;
        }
    }

    /**
     * There is such a mark, so far gone. Where something was found there already, that is what it is now.
     *
     * @param finding which of those there, or null for the last of them or the first to be written
     * @param seen what there is now
     * @param why the words for the history
     */
    public Outcome<Written> mark(Where where, @Nullable Id<Finding> finding, Seen seen, String why) {
        Optional<Entry<Finding>> was = found(where, finding);
        if (was.isEmpty() && finding != null) {
            return gone();
        }
        return was.isPresent() ? amend(was.get(), seen::over, why) : first(where, seen, why);
    }

    /** Another mark beside those that are there. */
    public Outcome<Written> another(Where where, Seen seen, String why) {
        return first(where, seen, why);
    }

    /**
     * It has gone that far. Where nothing was found there yet, it was looked at and is as it should be, or nobody has said what it is.
     *
     * @return refused where it is marked and nobody has said by what
     */
    public Outcome<Written> how(Where where, @Nullable Id<Finding> finding, HowMarked how, String why) {
        Optional<Entry<Finding>> was = found(where, finding);
        if (was.isEmpty() && finding != null) {
            return gone();
        }
        if (was.isEmpty()) {
            return how == HowMarked.NONE
                    ? first(where, new Seen(FindingMark.NO_MARK, null), why)
                    : Outcome.didNot(Problem.of(ProblemKind.NOT_MARKED));
        }
        FindingMark mark = was.get().fact().mark();
        boolean none = mark == FindingMark.NO_MARK || mark == FindingMark.AS_NEW;
        return none && how != HowMarked.NONE
                ? Outcome.didNot(Problem.of(ProblemKind.NOT_MARKED))
                : amend(was.get(), seen -> seen.judged(how), why);
    }

    /** In words, and where there. */
    public Outcome<Written> told(Id<Finding> finding, String beyondSide, String words, String why) {
        return amend(finding, seen -> seen.told(spot(seen, beyondSide), words.strip()), why);
    }

    private static String spot(Finding seen, String beyondSide) {
        StripLine line = StripLine.of(seen);
        return line == null ? beyondSide.strip() : line.spot(beyondSide);
    }

    /**
     * Where on its part.
     *
     * @param finding which of those there, or null for the last of them
     * @param on null for nowhere in particular
     * @return refused where nobody has said yet what is there
     */
    public Outcome<Written> placed(Where where, @Nullable Id<Finding> finding, @Nullable PartSpot on, String why) {
        return found(where, finding)
                .map(was -> amend(was, seen -> seen.placed(on), why))
                .orElseGet(() -> finding == null ? Outcome.didNot(Problem.of(ProblemKind.NOT_MARKED)) : gone());
    }

    /** Evidence of an incident, or of none. */
    public Outcome<Written> evidenceOf(Id<Finding> finding, @Nullable Id<Incident> incident, String why) {
        return amend(finding, seen -> seen.evidenceOf(incident), why);
    }

    /**
     * It was not there after all: struck out.
     *
     * @param finding which of those there, or null for the last of them
     * @param reason with which it is struck out
     */
    public Outcome<Written> takeAway(Where where, @Nullable Id<Finding> finding, String reason, String why) {
        return found(where, finding)
                .map(was -> desk.write(
                        why, List.of(new Entry<>(was.id(), was.fact(), Standing.STRUCK_OUT, reason, was.rev() + 1))))
                .orElseGet(WriteStrip::gone);
    }

    private Outcome<Written> amend(Id<Finding> finding, UnaryOperator<Finding> to, String why) {
        return desk.view()
                .facts()
                .of(Finding.class)
                .find(finding)
                .filter(was -> was.standing() == Standing.IN_FORCE)
                .map(was -> amend(was, to, why))
                .orElseGet(WriteStrip::gone);
    }

    private static Outcome<Written> gone() {
        return Outcome.didNot(Problem.of(ProblemKind.FINDING_GONE));
    }

    private Outcome<Written> amend(Entry<Finding> was, UnaryOperator<Finding> to, String why) {
        return desk.write(
                why, List.of(new Entry<>(was.id(), to.apply(was.fact()), Standing.IN_FORCE, null, was.rev() + 1)));
    }

    /** The one asked for, as it is now; else the last that was found there. */
    private Optional<Entry<Finding>> found(Where where, @Nullable Id<Finding> finding) {
        return desk
                .view()
                .facts()
                .of(Finding.class)
                .where(each -> where.build().equals(each.build())
                        && StripLine.of(each) == where.line()
                        && Objects.equals(each.number(), where.number()))
                .stream()
                .filter(each -> finding == null || each.id().equals(finding))
                .reduce((one, next) -> next);
    }

    private Outcome<Written> first(Where where, Seen what, String why) {
        View view = desk.view();
        Entry<Build> build = view.facts().of(Build.class).find(where.build()).orElseThrow();
        AtStrip at = AtStrip.of(view, build);
        Finding seen = at.finding(
                null,
                at.part(where.line()).orElse(null),
                new AtStrip.Where(
                        where.line().place(), where.number(), where.line().spot("")),
                new AtStrip.What(what.mark(), what.far(), ""),
                when(view, build.fact()),
                desk.who());
        return desk.write(
                why, List.of(new Entry<>(ids.<Finding>next(), seen.placed(what.on()), Standing.IN_FORCE, null, 1)));
    }

    /** Seen on the day looked at, as long as the engine is apart; of one that was closed by then, while it still was. */
    private static Moment when(View view, Build build) {
        LocalDate day = view.day();
        Moment today = Moment.endOf(day, view.zone());
        Moment closed = build.closed();
        Moment seen = closed != null && closed.isBefore(today) ? closed.before() : today;
        return seen.isBefore(build.opened()) ? build.opened() : seen;
    }
}
