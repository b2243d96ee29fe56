package witnessmark.logbook.engines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * Running time since the last rebuild and since the last skim, over time. A life carried in that is stated for later
 * than a setting back is left out, since nobody can say how much of it came after.
 */
final class Curves {
    private static final Set<Zone> REBUILD = Limits.REBUILD;

    private final LifeLedger ledger;

    Curves(LifeLedger ledger) {
        this.ledger = ledger;
    }

    /** Something that sets the count back to nothing. */
    private record SetBack(Moment at, Entry<?> source) {}

    Curve sinceRebuild(Entry<Engine> engine) {
        List<SetBack> backs = new ArrayList<>();
        for (Entry<Build> build :
                ledger.facts().of(Build.class).where(b -> b.engine().equals(engine.id()))) {
            Moment closed = build.fact().closed();
            if (closed != null
                    && ledger.asOf().counts(closed)
                    && build.fact().zones().containsAll(REBUILD)) {
                backs.add(new SetBack(closed, build));
            }
        }
        Account account = ledger.engineAccount(engine.id(), Counter.RUNNING);
        return new Curve(
                engine.fact().number(),
                engine.id().text(),
                steps(account, backs, since -> ledger.engineSince(engine.id(), Counter.RUNNING, since)));
    }

    Curve sinceSkim(Entry<Part> head) {
        List<SetBack> backs = new ArrayList<>();
        for (Entry<Work> work :
                ledger.facts().of(Work.class).where(w -> head.id().equals(w.part()))) {
            Work fact = work.fact();
            if (fact.kind() == WorkKind.SKIM
                    && fact.result() == WorkResult.DONE
                    && ledger.asOf().counts(fact.at())) {
                backs.add(new SetBack(fact.at(), work));
            }
        }
        Account account = ledger.account(head.id(), Counter.RUNNING);
        return new Curve(
                head.fact().mark(),
                head.id().text(),
                steps(account, backs, since -> ledger.since(head.id(), Counter.RUNNING, since)));
    }

    /** @param from what ran from a moment on, which tells whether all of that is written down */
    private static List<Curve.Step> steps(Account account, List<SetBack> backs, Function<Moment, Life> from) {
        record Event(Moment at, @Nullable Charge adds, Entry<?> source) {}
        List<Event> events = new ArrayList<>();
        for (SetBack back : backs) {
            events.add(new Event(back.at(), null, back.source()));
        }
        Moment leftOut = null;
        for (Charge charge : account.charges()) {
            boolean carriedInAfter = charge.source().fact() instanceof PriorLife
                    && backs.stream().anyMatch(back -> !back.at().isAfter(charge.at()));
            if (carriedInAfter) {
                leftOut = charge.at();
            } else if (charge.counted() == Counted.YES) {
                events.add(new Event(over(charge, backs), charge, charge.source()));
            }
        }
        events.sort(Comparator.comparing(Event::at).thenComparing(event -> event.adds() == null ? 0 : 1));
        List<Curve.Step> steps = new ArrayList<>();
        Life nothing = Life.none(Counter.RUNNING);
        Life since = account.life().atLeast() ? atLeast(nothing) : nothing;
        for (Event event : events) {
            Charge adds = event.adds();
            if (adds != null) {
                since = since.plus(Charged.life(Counter.RUNNING, adds));
                steps.add(new Curve.Step(event.at(), since, event.source()));
                continue;
            }
            steps.add(new Curve.Step(event.at(), nothing, event.source()));
            boolean missing = leftOut != null && !leftOut.isBefore(event.at());
            since = missing || from.apply(event.at()).atLeast() ? atLeast(nothing) : nothing;
        }
        return steps;
    }

    private static Life atLeast(Life nothing) {
        return new Life(nothing.counter(), 0, 0, 0, 0, 0, true, 0, 0);
    }

    /**
     * When an entry was over. Told running is charged where it begins; it is shown where it ends, unless the count was
     * set back in between.
     */
    private static Moment over(Charge charge, List<SetBack> backs) {
        if (charge.source().fact() instanceof Run run) {
            return run.back();
        }
        if (charge.source().fact() instanceof ToldRunning told) {
            boolean between = backs.stream()
                    .anyMatch(
                            back -> back.at().isAfter(told.from()) && !back.at().isAfter(told.to()));
            return between ? told.from() : told.to();
        }
        return charge.at();
    }
}
