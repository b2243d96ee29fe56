package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Run;
import witnessmark.domain.SentOut;
import witnessmark.quantity.Moment;

/**
 * What happened to a part on a day without a time, when something with a time follows on that day. What is entered later
 * came later: as long as nothing ran from then on, what has no time is put just before it and keeps its own order. After a
 * run it stays where it is, since the day alone means after the last run, and somebody has to say when it was.
 */
final class EarlierThatDay {
    private final Moment at;
    private final List<Moment> untimed;
    private final Set<Id<?>> changed = new HashSet<>();

    private EarlierThatDay(Moment at, List<Moment> untimed) {
        this.at = at;
        this.untimed = untimed;
    }

    /**
     * Puts whatever of a part ended that day without a time before a moment.
     *
     * @param field beside which a contradiction about it is shown
     * @return what was put before it
     */
    static Set<Id<?>> makeWay(ReadSheet in, SheetField field, Id<Part> part, Moment at) {
        if (at.dayOnly() || ranSince(in.sight(), at)) {
            return Set.of();
        }
        List<Entry<Quarantine>> aside = in.sight()
                .facts()
                .of(Quarantine.class)
                .where(each -> each.part().equals(part));
        List<Entry<SentOut>> away = in.sight().facts().of(SentOut.class).where(each -> part.equals(each.part()));
        List<Entry<Fitment>> fitted =
                in.sight().facts().of(Fitment.class).where(each -> each.part().equals(part));
        TreeSet<Moment> moments = new TreeSet<>();
        aside.forEach(each -> add(moments, each.fact().from(), each.fact().to(), at));
        away.forEach(each -> add(moments, each.fact().from(), each.fact().back(), at));
        fitted.forEach(each -> add(moments, each.fact().from(), each.fact().to(), at));
        EarlierThatDay day = new EarlierThatDay(at, new ArrayList<>(moments));
        for (Entry<Quarantine> each : aside) {
            Quarantine was = each.fact();
            day.change(
                    in,
                    field,
                    each,
                    new Quarantine(
                            was.part(),
                            was.member(),
                            day.moved(was.from()),
                            was.why(),
                            was.by(),
                            day.movedEnd(was.to()),
                            was.released(),
                            was.releasedBy()));
        }
        for (Entry<SentOut> each : away) {
            day.change(in, field, each, day.moved(each.fact()));
        }
        for (Entry<Fitment> each : fitted) {
            day.change(in, field, each, day.moved(each.fact()));
        }
        return day.changed;
    }

    /** Whether anything went out on the day of a moment, then or later: what has no time may belong after it. */
    static boolean ranSince(SheetSight sight, Moment at) {
        return !sight.facts()
                .of(Run.class)
                .where(run -> run.start().day().equals(at.day()) && !run.start().isBefore(at))
                .isEmpty();
    }

    /** Whether something without a time may be put before a moment of its day. */
    static boolean isUntimed(@Nullable Moment moment, Moment at) {
        return moment != null && moment.dayOnly() && moment.day().equals(at.day()) && !moment.isBefore(at);
    }

    private static void add(TreeSet<Moment> moments, Moment from, @Nullable Moment to, Moment at) {
        if (to != null && isUntimed(to, at)) {
            moments.add(to);
            if (isUntimed(from, at)) {
                moments.add(from);
            }
        }
    }

    /** The last of them is at the moment itself, each one before it a millisecond earlier. */
    private Moment moved(Moment moment) {
        int place = untimed.indexOf(moment);
        Moment to = at;
        for (int i = untimed.size() - 1; i > place; i--) {
            to = to.before();
        }
        return place < 0 ? moment : to;
    }

    private @Nullable Moment movedEnd(@Nullable Moment moment) {
        return moment == null ? null : moved(moment);
    }

    private SentOut moved(SentOut was) {
        return new SentOut(
                was.part(),
                was.engine(),
                was.design(),
                was.count(),
                was.sentTo(),
                was.asked(),
                was.target(),
                moved(was.from()),
                was.promised(),
                movedEnd(was.back()),
                was.result(),
                was.by(),
                was.note());
    }

    private Fitment moved(Fitment was) {
        return new Fitment(
                was.part(),
                was.engine(),
                was.car(),
                was.position(),
                moved(was.from()),
                movedEnd(was.to()),
                was.buildIn(),
                was.buildOut(),
                was.why(),
                was.condition(),
                was.borrowed());
    }

    private <F extends Fact> void change(ReadSheet in, SheetField field, Entry<F> entry, F moved) {
        if (!moved.equals(entry.fact())) {
            in.change(field, entry, moved);
            changed.add(entry.id());
        }
    }
}
