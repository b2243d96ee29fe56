package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** Writes an account: one charge for each entry, and the life they add up to. */
final class AccountSheet {
    private static final Comparator<Charge> ORDER = Comparator.comparing(Charge::at)
            .thenComparing(charge -> charge.source().id().value());

    private final Counter counter;
    private final Origin origin;
    private final List<Charge> carriedIn = new ArrayList<>();
    private final List<Charge> ran = new ArrayList<>();
    private final Tally tally;

    AccountSheet(Counter counter, Origin origin, long since) {
        this.counter = counter;
        this.origin = origin;
        this.tally = new Tally(counter);
        origin.charge(tally, since);
        Entry<PriorLife> prior = origin.prior();
        if (prior != null && origin.adds(since)) {
            Tally own = new Tally(counter);
            origin.charge(own, since);
            HowKnown how = prior.fact().kind() == PriorKind.KNOWN && since == Origin.EVER ? null : HowKnown.TOLD;
            carriedIn.add(charge(prior, prior.fact().at(), own.life(), how, null, Counted.YES));
        }
    }

    /** Charges what a line ran within a stretch. */
    void charge(Line line, long from, long to, @Nullable Entry<Fitment> fitment) {
        if (from >= to) {
            return;
        }
        for (Entry<?> entry : line.counting(from, to)) {
            Moment at = Line.happened(entry);
            if (at.epochMillis() < origin.from()) {
                ran.add(charge(entry, at, Life.none(counter), null, fitment, Counted.BEFORE_PRIOR_LIFE));
                continue;
            }
            Tally own = new Tally(counter);
            Line.add(own, entry.fact());
            Line.add(tally, entry.fact());
            boolean read = own.runsNotRead == 0;
            ran.add(charge(
                    entry, at, own.life(), read ? how(entry) : null, fitment, read ? Counted.YES : Counted.NOT_READ));
        }
        for (Entry<Run> run : line.aside(from, to)) {
            ran.add(charge(run, run.fact().start(), Life.none(counter), null, fitment, Counted.PERHAPS_SAME));
        }
    }

    Account account() {
        ran.sort(ORDER);
        List<Charge> charges = new ArrayList<>(carriedIn);
        charges.addAll(ran);
        return new Account(counter, tally.life(), charges);
    }

    private HowKnown how(Entry<?> entry) {
        return entry.fact() instanceof Run run ? run.knownBy().of(counter) : HowKnown.TOLD;
    }

    private static Charge charge(
            Entry<?> source,
            Moment at,
            Life life,
            @Nullable HowKnown how,
            @Nullable Entry<Fitment> fitment,
            Counted counted) {
        return new Charge(source, at, life.total(), life.lowest(), life.highest(), how, fitment, counted);
    }
}
