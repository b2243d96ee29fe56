package witnessmark.logbook.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Speaks;
import witnessmark.domain.Standing;
import witnessmark.domain.Weighing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Says how a finding speaks to a cause. Weighed again, it is the same weighing amended; each time is one change. */
public final class WeighFinding {
    private final Desk desk;
    private final Ids ids;

    public WeighFinding(Desk desk, Ids ids) {
        this.desk = desk;
        this.ids = ids;
    }

    /**
     * The finding speaks so. What was said of why stays.
     *
     * @param why the words for the history
     */
    public Outcome<Written> speaks(Evidence.Pair pair, Speaks speaks, String why) {
        Entry<Weighing> was = last(pair);
        return write(pair, was, speaks, was == null ? "" : was.fact().why(), why);
    }

    /**
     * The finding speaks more that way than it last did, which is looked up here and not where it is shown: what is shown may be
     * older.
     *
     * @param way for, neither or against; strongly where it speaks that way already
     * @param why the words for the history of how it speaks then
     * @return how it speaks then; empty where it did so before, and nothing was written
     */
    public Outcome<Optional<Speaks>> towards(Evidence.Pair pair, Speaks way, Function<Speaks, String> why) {
        Entry<Weighing> was = last(pair);
        Speaks before = was == null ? null : was.fact().speaks();
        Speaks now = way.onceMore(before);
        return now == before
                ? Outcome.worked(Optional.empty())
                : speaks(pair, now, why.apply(now)).map(written -> Optional.of(now));
    }

    /**
     * Why it speaks so.
     *
     * @param because in a few words; empty takes them away
     * @return refused where nobody has said yet how it speaks
     */
    public Outcome<Written> because(Evidence.Pair pair, String because, String why) {
        Entry<Weighing> was = last(pair);
        return was == null
                ? Outcome.didNot(Problem.of(ProblemKind.NOT_WEIGHED))
                : write(pair, was, was.fact().speaks(), because.strip(), why);
    }

    /**
     * Nothing is said of it any more: struck out, with all that was said of the two before.
     *
     * @param reason with which it is struck out
     */
    public Outcome<Written> takeAway(Evidence.Pair pair, String reason, String why) {
        List<Entry<?>> struck = new ArrayList<>();
        all(pair)
                .forEach(was ->
                        struck.add(new Entry<>(was.id(), was.fact(), Standing.STRUCK_OUT, reason, was.rev() + 1)));
        return struck.isEmpty() ? Outcome.didNot(Problem.of(ProblemKind.NOT_WEIGHED)) : desk.write(why, struck);
    }

    private Outcome<Written> write(
            Evidence.Pair pair, @Nullable Entry<Weighing> was, Speaks speaks, String because, String why) {
        Weighing now = new Weighing(pair.finding(), pair.cause(), speaks, because, desk.who());
        Entry<Weighing> next = was == null
                ? new Entry<>(ids.next(), now, Standing.IN_FORCE, null, 1)
                : new Entry<>(was.id(), now, Standing.IN_FORCE, null, was.rev() + 1);
        return desk.write(why, List.of(next));
    }

    private @Nullable Entry<Weighing> last(Evidence.Pair pair) {
        List<Entry<Weighing>> all = all(pair);
        return all.isEmpty() ? null : all.get(all.size() - 1);
    }

    private List<Entry<Weighing>> all(Evidence.Pair pair) {
        return desk.view()
                .facts()
                .of(Weighing.class)
                .where(each ->
                        each.finding().equals(pair.finding()) && each.cause().equals(pair.cause()));
    }
}
