package witnessmark.ledger;

import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.domain.SentOut;
import witnessmark.ledger.result.PutAside;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Parts fitted while they were in quarantine, away or scrapped, and engines that ran while they were away. */
final class AsideChecks {
    private final Surroundings around;
    private final Clashes clashes;

    AsideChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    void check() {
        Asides asides = new Asides(around.facts);
        for (Id<Part> part : around.parts.owners()) {
            for (PutAside aside : asides.of(part)) {
                if (aside.whole()) {
                    around.parts.of(part).forEach(fitment -> check(aside, fitment));
                }
            }
        }
        around.facts.of(SentOut.class).inForce().forEach(this::ranWhileAway);
    }

    private void check(PutAside aside, Entry<Fitment> fitment) {
        Fitment there = fitment.fact();
        if (!Moment.overlap(aside.from(), aside.to(), there.from(), there.to())) {
            return;
        }
        String part = around.names.part(there.part());
        if (around.changed(fitment)) {
            switch (aside.kind()) {
                case QUARANTINE ->
                    clashes.add(fitment, ProblemKind.PART_IN_QUARANTINE, part, aside.from(), aside.words());
                case AWAY -> clashes.add(fitment, ProblemKind.PART_AWAY, part, aside.words(), aside.from());
                case SCRAPPED -> clashes.add(fitment, ProblemKind.PART_SCRAPPED, part, aside.from());
            }
        } else if (around.changed(aside.entry())) {
            clashes.add(
                    aside.entry(),
                    ProblemKind.PART_STILL_FITTED,
                    part,
                    around.names.place(there),
                    Spans.later(aside.from(), there.from()));
        }
    }

    private void ranWhileAway(Entry<SentOut> entry) {
        SentOut sent = entry.fact();
        if (sent.engine() == null) {
            return;
        }
        for (Entry<Run> run : around.engineRuns.of(sent.engine())) {
            Moment start = run.fact().start();
            if ((around.changed(run) || around.changed(entry))
                    && !start.isBefore(sent.from())
                    && (sent.back() == null || start.isBefore(sent.back()))) {
                clashes.add(
                        around.changed(run) ? run : entry,
                        ProblemKind.RUN_WHILE_AWAY,
                        around.names.of(sent.engine()),
                        sent.sentTo(),
                        sent.from());
            }
        }
    }
}
