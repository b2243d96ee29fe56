package witnessmark.logbook.run;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Run;
import witnessmark.domain.Zone;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.RunEffect;
import witnessmark.ledger.result.Effect;
import witnessmark.ledger.result.EffectOfRun;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Counter;

/** Works out what a run would do, against a logbook without it. */
final class Forecast {
    private static final EnumSet<Zone> REBUILT = EnumSet.of(Zone.BOTTOM_END);

    private final Facts facts;
    private final LifeLedger ledger;

    /** @param without the lives of everything but the run */
    Forecast(LifeLedger without) {
        this.facts = without.facts();
        this.ledger = without;
    }

    /** What a run that is not yet written would do. */
    RunDoes of(Entry<Run> run) {
        return looking(run, run.fact().start().day(), null);
    }

    /**
     * What a written run does once it is corrected.
     *
     * @param today what was to come before this day is past
     * @param asWritten the lives with the run as it is written now
     */
    RunDoes of(Entry<Run> run, LocalDate today, LifeLedger asWritten) {
        LocalDate day = run.fact().start().day();
        return looking(
                run,
                day.isBefore(today) ? today : day,
                sinceRebuild(asWritten, run.fact().engine()));
    }

    private RunDoes looking(Entry<Run> run, LocalDate from, @Nullable Life asWritten) {
        EffectOfRun effect = RunEffect.of(ledger, run);
        LookAhead ahead = LookAhead.after(facts, run.fact(), from);
        Id<Engine> engine = run.fact().engine();
        List<LimitEffect> limits =
                effect.limits().stream().map(each -> named(each, ahead)).toList();
        return new RunDoes(
                facts.of(Engine.class).get(engine).number(),
                sinceRebuild(ledger, engine),
                sinceRebuild(ledger.after(facts.with(List.of(run))), engine),
                asWritten,
                effect.engine(),
                limits,
                withoutLimit(run.fact(), effect));
    }

    private LimitEffect named(Effect effect, LookAhead ahead) {
        @Nullable Due due = ahead.usesUp(effect.after()).orElse(null);
        Id<Part> part = effect.after().part();
        if (part == null) {
            return new LimitEffect(effect, null, null, due);
        }
        Part fact = facts.of(Part.class).get(part);
        return new LimitEffect(
                effect,
                fact.mark(),
                facts.of(PartDesign.class).get(fact.design()).kind(),
                due);
    }

    /** Parts that no limit falls on, whatever it counts. A limit that this run does not move is a limit too. */
    private int withoutLimit(Run run, EffectOfRun effect) {
        Limits limits = new Limits(ledger);
        Id<Car> car = run.car();
        Set<Id<Part>> limited = new HashSet<>();
        Stream.of(
                        limits.nearest(run.engine()),
                        car == null ? List.<LimitUse>of() : limits.nearestInCar(car),
                        effect.limits().stream().map(Effect::after).toList())
                .flatMap(List::stream)
                .map(LimitUse::part)
                .filter(java.util.Objects::nonNull)
                .forEach(limited::add);
        return (int) effect.charged().stream()
                .filter(part -> !limited.contains(part))
                .count();
    }

    private static Life sinceRebuild(LifeLedger from, Id<Engine> engine) {
        return from.sinceRebuild(engine, REBUILT, Counter.RUNNING);
    }
}
