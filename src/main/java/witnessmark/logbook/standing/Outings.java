package witnessmark.logbook.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Counter;

/** Who was last out, and what that moved. A run that is perhaps the same as another is no outing yet. */
final class Outings {
    private final Facts facts;
    private final LifeLedger ledger;
    private final List<Entry<Run>> latestFirst;

    Outings(Facts facts, LifeLedger ledger) {
        this.facts = facts;
        this.ledger = ledger;
        this.latestFirst = facts.of(Run.class)
                .inForce()
                .filter(run -> run.fact().perhapsSame() == null)
                .filter(run -> ledger.asOf().counts(run.fact().start()))
                .sorted(Comparator.comparing((Entry<Run> run) -> run.fact().start())
                        .thenComparing(Entry::id)
                        .reversed())
                .toList();
    }

    boolean any() {
        return !latestFirst.isEmpty();
    }

    /** The last run of each car, the latest first; of two at once the car that comes first by name. */
    List<LastOut> lastOut() {
        Map<Id<Car>, LastOut> last = new LinkedHashMap<>();
        for (Entry<Run> run : latestFirst) {
            Id<Car> car = run.fact().car();
            if (car != null && !last.containsKey(car)) {
                last.put(
                        car,
                        new LastOut(
                                car,
                                facts.of(Car.class).get(car).name(),
                                number(run.fact().engine()),
                                event(run.fact().event()),
                                run));
            }
        }
        return last.values().stream()
                .sorted(Comparator.comparing((LastOut out) -> out.run().fact().start())
                        .reversed()
                        .thenComparing(LastOut::name))
                .toList();
    }

    /** What the last outing, an event or the runs of a day, added to each engine that was on it, in the order of their numbers. */
    List<LifeMoved> moved() {
        if (latestFirst.isEmpty()) {
            return List.of();
        }
        Run last = latestFirst.get(0).fact();
        Map<Id<Engine>, List<Entry<Run>>> byEngine = new LinkedHashMap<>();
        for (Entry<Run> run : latestFirst) {
            if (isOneOuting(run.fact(), last)) {
                byEngine.computeIfAbsent(run.fact().engine(), engine -> new ArrayList<>())
                        .add(0, run);
            }
        }
        List<LifeMoved> moved = new ArrayList<>();
        byEngine.forEach((engine, runs) -> moved.add(moved(engine, runs, last.event())));
        moved.sort(Comparator.comparing(LifeMoved::number));
        return moved;
    }

    /** An event is one, and so are the runs of a day that belong to none. */
    private static boolean isOneOuting(Run run, Run last) {
        return Objects.equals(run.event(), last.event())
                && (last.event() != null
                        || run.start().day().equals(last.start().day()));
    }

    private LifeMoved moved(Id<Engine> engine, List<Entry<Run>> runs, @Nullable Id<Event> event) {
        Run first = runs.get(0).fact();
        Run last = runs.get(runs.size() - 1).fact();
        return new LifeMoved(
                engine,
                number(engine),
                event(event),
                runs,
                ledger.fittedAt(engine, last.start()).size(),
                ledger.engineLife(engine, Counter.RUNNING),
                ledger.engineSince(engine, Counter.RUNNING, first.start()));
    }

    private String number(Id<Engine> engine) {
        return facts.of(Engine.class).get(engine).number();
    }

    private @Nullable String event(@Nullable Id<Event> event) {
        return event == null ? null : facts.of(Event.class).get(event).name();
    }
}
