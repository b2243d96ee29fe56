package witnessmark.study.proof;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ActionCarried;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.ProofBy;
import witnessmark.domain.ProofSeen;
import witnessmark.domain.ProofWanted;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.ProofLine;
import witnessmark.study.result.ProofMade;

/** Looks, readings and running asked for as proof, and how far each is there by the day of the ledger. */
final class AskedFor {
    private final LifeLedger ledger;
    private final RanBetween ran;
    private final List<Entry<ActionCarried>> carriers;

    /** @param carriers what carries the fix */
    AskedFor(LifeLedger ledger, RanBetween ran, List<Entry<ActionCarried>> carriers) {
        this.ledger = ledger;
        this.ran = ran;
        this.carriers = carriers;
    }

    /**
     * In the order they were set.
     *
     * @param ranSince running with the fix until now
     * @param since when it came in, or null while nothing carries it
     */
    List<ProofLine> lines(Id<Incident> incident, RunningTime ranSince, @Nullable Moment since) {
        return ledger
                .facts()
                .of(ProofWanted.class)
                .where(wanted ->
                        wanted.incident().equals(incident) && ledger.asOf().counts(wanted.set()))
                .stream()
                .sorted(Comparator.comparing(each -> each.fact().set()))
                .map(wanted -> line(wanted, ranSince, since))
                .toList();
    }

    private ProofLine line(Entry<ProofWanted> wanted, RunningTime ranSince, @Nullable Moment since) {
        ProofWanted asked = wanted.fact();
        RunningTime after = asked.after() == null ? new RunningTime(0) : asked.after();
        List<ProofMade> made = ledger
                .facts()
                .of(ProofSeen.class)
                .where(seen ->
                        seen.wanted().equals(wanted.id()) && ledger.asOf().counts(seen.at()))
                .stream()
                .sorted(Comparator.comparing(seen -> seen.fact().at()))
                .map(seen -> new ProofMade(seen, ranBy(seen.fact())))
                .toList();
        int met = (int) made.stream()
                .filter(each -> each.seen().fact().met() && each.ran().compareTo(after) >= 0)
                .count();
        boolean late = since != null
                && asked.set().isAfter(since)
                && ranBy(carriers, asked.set()).millis() > 0;
        return new ProofLine(wanted, state(asked, after, made, met, ranSince), met, made, late);
    }

    private static ProofLine.State state(
            ProofWanted asked, RunningTime after, List<ProofMade> made, int met, RunningTime ranSince) {
        boolean far = ranSince.compareTo(after) >= 0;
        if (asked.kind() == ProofBy.RUNNING) {
            return far ? ProofLine.State.MET : ProofLine.State.NOT_YET;
        }
        if (!made.isEmpty() && !made.get(made.size() - 1).seen().fact().met()) {
            return ProofLine.State.NOT_MET;
        }
        if (met >= asked.times()) {
            return ProofLine.State.MET;
        }
        return far && ranSince.millis() > 0 ? ProofLine.State.DUE : ProofLine.State.NOT_YET;
    }

    /** What the engine or part that was looked at had run with the fix by then; where nobody says which, the farthest. */
    private RunningTime ranBy(ProofSeen seen) {
        List<Entry<ActionCarried>> of = carriers.stream()
                .filter(each -> seen.part() == null
                        || seen.part().equals(each.fact().part())
                        || each.fact().part() == null)
                .filter(each -> seen.engine() == null
                        || seen.engine().equals(each.fact().engine()))
                .toList();
        return ranBy(of.isEmpty() ? carriers : of, seen.at());
    }

    private RunningTime ranBy(List<Entry<ActionCarried>> carriers, Moment at) {
        return carriers.stream()
                .map(Entry::fact)
                .map(each -> each.from().isBefore(at)
                        ? ran.of(each.engine(), each.part(), each.from(), at)
                        : new RunningTime(0))
                .max(Comparator.naturalOrder())
                .orElse(new RunningTime(0));
    }
}
