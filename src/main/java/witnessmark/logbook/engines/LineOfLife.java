package witnessmark.logbook.engines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.MissedRun;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Moment;
import witnessmark.study.FailedAt;

/** What happened to an engine, entry by entry. A run that is perhaps the same as another is on it too. */
final class LineOfLife {
    private final Facts facts;
    private final LifeLedger ledger;
    private final Moment now;

    LineOfLife(LifeLedger ledger) {
        this.facts = ledger.facts();
        this.ledger = ledger;
        this.now = ledger.asOf().last();
    }

    List<Happening> of(Id<Engine> engine) {
        List<Happening> line = new ArrayList<>();
        facts.of(Build.class)
                .where(build -> build.engine().equals(engine))
                .forEach(build ->
                        line.add(new Happening.Built(build, ended(build.fact().closed()))));
        facts.of(Run.class)
                .where(run -> run.engine().equals(engine))
                .forEach(run -> line.add(new Happening.Ran(
                        run, event(run.fact().event()), car(run.fact().car()))));
        facts.of(MissedRun.class)
                .where(missed -> engine.equals(missed.engine()))
                .forEach(missed -> line.add(new Happening.Missed(
                        missed,
                        facts.of(Event.class).get(missed.fact().event()).name(),
                        facts.of(Car.class).get(missed.fact().car()).name())));
        facts.of(Incident.class)
                .where(incident -> engine.equals(FailedAt.engine(facts, incident)))
                .forEach(incident -> line.add(new Happening.Broke(
                        incident,
                        event(incident.fact().event()),
                        car(incident.fact().car()))));
        facts.of(EngineInCar.class)
                .where(stay -> stay.engine().equals(engine))
                .forEach(stay -> line.add(new Happening.InCar(
                        stay,
                        facts.of(Car.class).get(stay.fact().car()).name(),
                        ended(stay.fact().to()))));
        facts.of(ToldRunning.class)
                .where(told -> told.engine().equals(engine))
                .forEach(told -> line.add(new Happening.Told(told)));
        line.addAll(works(engine));
        return line.stream()
                .filter(happening -> !happening.from().isAfter(now))
                .sorted(Comparator.comparing(Happening::from)
                        .thenComparing(happening -> happening.source().id().value()))
                .toList();
    }

    private List<Happening> works(Id<Engine> engine) {
        List<Happening> works = new ArrayList<>();
        facts.of(Work.class).inForce().forEach(work -> {
            Id<Part> part = work.fact().part();
            if (engine.equals(work.fact().engine())) {
                works.add(new Happening.Worked(work, part == null ? null : mark(part)));
            } else if (part != null && engine.equals(engineOf(part, work.fact().at()))) {
                works.add(new Happening.Worked(work, mark(part)));
            }
        });
        return works;
    }

    /**
     * The engine a part was in at a moment; off the engine, the one it came from; never fitted before, the one it
     * went into.
     */
    private @Nullable Id<Engine> engineOf(Id<Part> part, Moment at) {
        Entry<Fitment> before = null;
        Entry<Fitment> after = null;
        for (Entry<Fitment> fitment :
                facts.of(Fitment.class).where(f -> f.part().equals(part))) {
            Moment from = fitment.fact().from();
            if (!from.isAfter(at)) {
                before = before == null || from.isAfter(before.fact().from()) ? fitment : before;
            } else if (ledger.asOf().counts(from)) {
                after = after == null || from.isBefore(after.fact().from()) ? fitment : after;
            }
        }
        Entry<Fitment> own = before != null ? before : after;
        return own == null ? null : own.fact().engine();
    }

    private String mark(Id<Part> part) {
        return facts.of(Part.class).get(part).mark();
    }

    private @Nullable String event(@Nullable Id<Event> event) {
        return event == null ? null : facts.of(Event.class).get(event).name();
    }

    private @Nullable String car(@Nullable Id<Car> car) {
        return car == null ? null : facts.of(Car.class).get(car).name();
    }

    /** An end that came after the day looked at is not yet known. */
    private @Nullable Moment ended(@Nullable Moment end) {
        return end == null || end.isAfter(now) ? null : end;
    }
}
