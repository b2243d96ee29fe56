package witnessmark.logbook.engines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Position;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.ToldRunning;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Charge;
import witnessmark.logbook.View;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** Sees the entries behind a figure: those in the sum, and those that are not with the reason. Reads only. */
public final class SeeBehind {
    private final Facts facts;
    private final LifeLedger ledger;
    private final Figure figure;

    private SeeBehind(View view, Figure figure) {
        this.facts = view.facts();
        this.ledger = view.ledger();
        this.figure = figure;
    }

    /** Every entry behind a figure as of the day looked at. */
    public static Behind of(View view, Figure figure) {
        return new SeeBehind(view, figure).behind();
    }

    private Behind behind() {
        Account account = account();
        List<Behind.Line> lines = new ArrayList<>();
        account.charges().forEach(charge -> lines.add(line(charge)));
        aside().forEach(lines::add);
        lines.sort(Comparator.comparing((Behind.Line line) -> line.source().fact() instanceof PriorLife ? 0 : 1)
                .thenComparing(Behind.Line::at)
                .thenComparing(line -> line.source().id().value()));
        return new Behind(figure, first().orElse(null), account.life(), lines);
    }

    private Optional<Moment> first() {
        return figure instanceof Figure.OfPart of
                ? ledger.firstEntry(of.part().id())
                : ledger.firstEngineEntry(((Figure.OfEngine) figure).engine().id());
    }

    private Account account() {
        Counter counter = figure.counter();
        Moment since = figure.since();
        if (figure instanceof Figure.OfPart of) {
            return since == null
                    ? ledger.account(of.part().id(), counter)
                    : ledger.account(of.part().id(), counter, since);
        }
        Id<Engine> engine = ((Figure.OfEngine) figure).engine().id();
        return since == null ? ledger.engineAccount(engine, counter) : ledger.engineAccount(engine, counter, since);
    }

    private Behind.Line line(Charge charge) {
        Behind.Why why = switch (charge.counted()) {
            case YES -> Behind.Why.COUNTED;
            case NOT_READ -> Behind.Why.NOT_READ;
            case PERHAPS_SAME -> Behind.Why.PERHAPS_SAME;
            case BEFORE_PRIOR_LIFE -> Behind.Why.BEFORE_PRIOR_LIFE;
        };
        return line(
                charge.source(),
                charge.at(),
                new long[] {charge.amount(), charge.lowest(), charge.highest()},
                charge.how(),
                why,
                charge.fitment());
    }

    /** Entries that would be behind the figure if they were in force. */
    private Stream<Behind.Line> aside() {
        Stream<Behind.Line> runs = facts.of(Run.class).all().stream()
                .filter(run -> !run.inForce())
                .flatMap(run -> aside(
                        run, run.fact().engine(), run.fact().car(), run.fact().start()));
        Stream<Behind.Line> told = facts.of(ToldRunning.class).all().stream()
                .filter(entry -> !entry.inForce())
                .flatMap(entry ->
                        aside(entry, entry.fact().engine(), null, entry.fact().from()));
        Stream<Behind.Line> priors = facts.of(PriorLife.class).all().stream()
                .filter(prior -> !prior.inForce() && prior.fact().counter() == figure.counter())
                .filter(prior -> concerns(prior.fact()) && inTime(prior.fact().at()))
                .map(prior -> notInForce(prior, prior.fact().at(), null));
        return Stream.of(runs, told, priors).flatMap(lines -> lines);
    }

    private Stream<Behind.Line> aside(Entry<?> entry, Id<Engine> engine, @Nullable Id<Car> car, Moment at) {
        if (!inTime(at)) {
            return Stream.empty();
        }
        if (figure instanceof Figure.OfEngine of) {
            return of.engine().id().equals(engine) ? Stream.of(notInForce(entry, at, null)) : Stream.empty();
        }
        Optional<Entry<Fitment>> fitment =
                ledger.whereIs(((Figure.OfPart) figure).part().id(), at);
        return fitment
                .filter(there -> engine.equals(there.fact().engine())
                        || (car != null && car.equals(there.fact().car())))
                .map(there -> notInForce(entry, at, there))
                .stream();
    }

    private boolean concerns(PriorLife prior) {
        return figure instanceof Figure.OfPart of
                ? of.part().id().equals(prior.part())
                : ((Figure.OfEngine) figure).engine().id().equals(prior.engine());
    }

    private boolean inTime(Moment at) {
        Moment since = figure.since();
        return ledger.asOf().counts(at) && (since == null || !at.isBefore(since));
    }

    private Behind.Line notInForce(Entry<?> entry, Moment at, @Nullable Entry<Fitment> fitment) {
        Behind.Why why = entry.standing() == Standing.STRUCK_OUT ? Behind.Why.STRUCK_OUT : Behind.Why.IN_CONFLICT;
        return line(entry, at, new long[3], null, why, fitment);
    }

    private Behind.Line line(
            Entry<?> source,
            Moment at,
            long[] amounts,
            @Nullable HowKnown how,
            Behind.Why why,
            @Nullable Entry<Fitment> fitment) {
        Fact fact = source.fact();
        Run run = fact instanceof Run r ? r : null;
        Id<Event> event = run == null ? null : run.event();
        Id<Run> same = run == null ? null : run.perhapsSame();
        return new Behind.Line(
                source,
                at,
                amounts[0],
                amounts[1],
                amounts[2],
                says(fact),
                how,
                why,
                event == null ? null : facts.of(Event.class).get(event).name(),
                fitment == null
                        ? null
                        : facts.of(Position.class)
                                .get(fitment.fact().position())
                                .name(),
                fitment == null ? null : place(fitment.fact()),
                same == null ? null : facts.of(Run.class).find(same).orElse(null));
    }

    private @Nullable Long says(Fact fact) {
        if (fact instanceof Run run) {
            return run.of(figure.counter());
        }
        if (fact instanceof PriorLife prior) {
            return prior.amount();
        }
        return fact instanceof ToldRunning told && figure.counter() == Counter.RUNNING
                ? told.likely().millis()
                : null;
    }

    private String place(Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        return engine != null
                ? facts.of(Engine.class).get(engine).number()
                : facts.of(Car.class).get(java.util.Objects.requireNonNull(car)).name();
    }
}
