package witnessmark.logbook.run;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Run;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.RunEffect;
import witnessmark.ledger.result.EffectOfRun;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Counter;

/** Works out what a run would do, against a logbook without it. */
final class Forecast {
    private final Facts facts;
    private final LifeLedger ledger;

    /** @param without the lives of everything but the run */
    Forecast(LifeLedger without) {
        this.facts = without.facts();
        this.ledger = without;
    }

    /** What a run that is not yet written would do. */
    RunDoes of(Entry<Run> run) {
        return of(run, null);
    }

    /**
     * What a written run does once it is corrected.
     *
     * @param asWritten the lives with the run as it is written now
     */
    RunDoes of(Entry<Run> run, @Nullable LifeLedger asWritten) {
        EffectOfRun effect = RunEffect.of(ledger, run);
        Id<Engine> engine = run.fact().engine();
        LifeLedger after = ledger.after(facts.with(List.of(run)));
        return new RunDoes(
                facts.of(Engine.class).get(engine).number(),
                sinceRebuild(ledger, engine),
                sinceRebuild(after, engine),
                asWritten == null ? null : sinceRebuild(asWritten, engine),
                effect.engine(),
                run.fact().event(),
                effect.marks().stream()
                        .map(change -> new MarkEffect(change, MarkOn.of(facts, change.after())))
                        .toList(),
                effect.bare().stream().map(part -> bare(part, after)).toList());
    }

    private RunDoes.Bare bare(Id<Part> id, LifeLedger after) {
        Part part = facts.of(Part.class).get(id);
        return new RunDoes.Bare(
                facts.of(PartDesign.class).get(part.design()).kind(),
                part.mark(),
                ledger.life(id, Counter.RUNNING),
                after.life(id, Counter.RUNNING));
    }

    private static Life sinceRebuild(LifeLedger from, Id<Engine> engine) {
        return from.sinceRebuild(engine, Limits.REBUILD, Counter.RUNNING);
    }
}
