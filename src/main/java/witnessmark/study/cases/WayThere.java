package witnessmark.study.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.OverRev;
import witnessmark.domain.Reading;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TraceMarkKind;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Holds;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.Raised;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.study.FailedAt;
import witnessmark.study.Trends;
import witnessmark.study.cases.ReadOnTheWay.Judged;
import witnessmark.study.cases.ReadOnTheWay.Read;
import witnessmark.study.result.Call;
import witnessmark.study.result.WayTo;
import witnessmark.study.result.WayTo.Kind;

/**
 * An engine's way up to a failure: last good look, what was changed, first signs, damage, with what it had run at each (common
 * practice, no source). It knows only what was written, and what was seen after the failure is not on it.
 */
public final class WayThere {
    private static final Set<TraceMarkKind> SIGNS =
            Set.of(TraceMarkKind.OIL_DIP, TraceMarkKind.LIMITER, TraceMarkKind.MECHANICAL, TraceMarkKind.OVER_REV);

    private final LifeLedger ledger;
    private final Facts facts;

    public WayThere(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
    }

    /** Of one incident; empty where it names no engine. */
    public Optional<WayTo> of(Entry<Incident> incident) {
        Id<Engine> id = FailedAt.engine(facts, incident.fact());
        Entry<Engine> engine =
                id == null ? null : facts.of(Engine.class).find(id).orElse(null);
        return engine == null ? Optional.empty() : Optional.of(new Walk(incident, engine).way());
    }

    /** One way, gathered day by day. */
    private final class Walk {
        private final Entry<Incident> incident;
        private final Entry<Engine> engine;
        private final Moment end;
        private final @Nullable Entry<Build> rebuilt;
        private final @Nullable Moment start;
        private final Map<LocalDate, Map<Kind, List<Entry<?>>>> days = new TreeMap<>();
        private final Map<LocalDate, List<HeldBy>> broken = new TreeMap<>();
        private final Map<LocalDate, Moment> firsts = new TreeMap<>();

        Walk(Entry<Incident> incident, Entry<Engine> engine) {
            this.incident = incident;
            this.engine = engine;
            this.end = FailedAt.of(facts, incident);
            this.rebuilt = rebuilt();
            this.start = rebuilt == null ? null : rebuilt.fact().closed();
        }

        WayTo way() {
            if (rebuilt != null && start != null) {
                add(Kind.REBUILT, start, rebuilt);
            }
            changed();
            read();
            held();
            broke();
            return new WayTo(incident, engine, rebuilt, points());
        }

        /** The last build that opened the bottom end and was closed by then. */
        private @Nullable Entry<Build> rebuilt() {
            return facts
                    .of(Build.class)
                    .where(build -> build.engine().equals(engine.id())
                            && build.closed() != null
                            && !build.closed().isAfter(end)
                            && build.zones().containsAll(Limits.REBUILD))
                    .stream()
                    .max(Comparator.comparing(build -> build.fact().closed()))
                    .orElse(null);
        }

        private void changed() {
            facts.of(Build.class)
                    .where(build ->
                            build.engine().equals(engine.id()) && build.closed() != null && within(build.closed()))
                    .forEach(build -> add(Kind.CHANGED, build.fact().closed(), build));
            facts.of(Fitment.class)
                    .where(fitment -> engine.id().equals(fitment.engine()) && within(fitment.from()))
                    .forEach(fitment -> {
                        if (rebuilt == null
                                || !rebuilt.id().equals(fitment.fact().buildIn())) {
                            add(Kind.CHANGED, fitment.fact().from(), fitment);
                        }
                    });
            facts.of(EngineInCar.class)
                    .where(stay -> stay.engine().equals(engine.id()) && within(stay.from()))
                    .forEach(stay -> add(Kind.CHANGED, stay.fact().from(), stay));
            facts.of(Work.class)
                    .where(work -> engine.id().equals(work.engine())
                            && work.kind() != WorkKind.MEASURE
                            && work.kind() != WorkKind.LOOK
                            && within(work.at()))
                    .forEach(work -> add(Kind.CHANGED, work.fact().at(), work));
        }

        /** A day of readings is good only where something was judged and none of it is worse than it should be. */
        private void read() {
            Set<Id<Reading>> going = going();
            Map<LocalDate, List<Read>> byDay = new TreeMap<>();
            for (Read read : new ReadOnTheWay(ledger, engine).all()) {
                Moment at = read.reading().fact().at();
                if (within(at)) {
                    byDay.computeIfAbsent(at.day(), none -> new ArrayList<>()).add(read);
                }
            }
            byDay.values().forEach(all -> {
                List<Read> worse = all.stream()
                        .filter(read -> read.judged() == Judged.WORSE
                                || going.contains(read.reading().id()))
                        .toList();
                boolean good = worse.isEmpty() && all.stream().anyMatch(read -> read.judged() == Judged.GOOD);
                Kind kind = good ? Kind.GOOD : Kind.SYMPTOM;
                (good ? all : worse)
                        .forEach(read -> add(kind, read.reading().fact().at(), read.reading()));
            });
        }

        /** The last readings of places that were going the wrong way by the day of the failure. */
        private Set<Id<Reading>> going() {
            Set<Id<Reading>> going = new HashSet<>();
            new Trends(then())
                    .ofEngine(engine.id())
                    .forEach(kind -> kind.places().stream()
                            .filter(place -> place.call() != Call.NONE && place.last() != null)
                            .forEach(place -> going.add(place.last().reading().id())));
            return going;
        }

        private LifeLedger then() {
            AsOf now = ledger.asOf();
            LocalDate day = end.day();
            return day.isBefore(now.day()) ? LifeLedger.of(facts, new AsOf(day, end.zone())) : ledger;
        }

        /** What held the engine by a rule, over-revs, and what a trace shows of the engine itself. */
        private void held() {
            for (Raised raised : new Holds(ledger).all()) {
                Entry<?> cause = raised.by().cause();
                boolean ours =
                        engine.id().equals(raised.by().engine()) && raised.by().rule() != null;
                if (ours && within(raised.by().since())) {
                    add(Kind.SYMPTOM, raised.by().since(), cause);
                    broken(raised.by());
                }
            }
            facts.of(OverRev.class).where(over -> on(over.run())).forEach(over -> {
                Moment at = facts.of(Run.class).get(over.fact().run()).start();
                add(Kind.SYMPTOM, at, over);
            });
            facts.of(TraceMark.class)
                    .where(mark -> SIGNS.contains(mark.kind()) && on(run(mark)))
                    .forEach(mark -> add(
                            Kind.SYMPTOM,
                            facts.of(Run.class).get(run(mark.fact())).start(),
                            mark));
        }

        private void broken(HeldBy by) {
            List<HeldBy> all = broken.computeIfAbsent(by.since().day(), none -> new ArrayList<>());
            if (by.cause().fact() instanceof Run
                    && all.stream()
                            .noneMatch(
                                    each -> each.cause().id().equals(by.cause().id())
                                            && Objects.equals(each.rule(), by.rule()))) {
                all.add(by); // a rule that holds several parts holds each of them by the same run
            }
        }

        private Id<Run> run(TraceMark mark) {
            return facts.of(Trace.class).get(mark.trace()).run();
        }

        private boolean on(Id<Run> id) {
            Run run = facts.of(Run.class).get(id);
            return run.engine().equals(engine.id()) && within(run.start());
        }

        private void broke() {
            facts.of(Incident.class)
                    .where(other -> engine.id().equals(FailedAt.engine(facts, other)) && within(other.at()))
                    .forEach(other -> {
                        if (!other.id().equals(incident.id())) {
                            add(Kind.BROKE, other.fact().at(), other);
                        }
                    });
            add(Kind.FAILURE, incident.fact().at(), incident);
        }

        private boolean within(Moment at) {
            return (start == null || at.isAfter(start))
                    && !at.isAfter(end)
                    && ledger.asOf().counts(at);
        }

        private void add(Kind kind, @Nullable Moment at, Entry<?> entry) {
            if (at == null) {
                return;
            }
            List<Entry<?>> all = days.computeIfAbsent(at.day(), none -> new EnumMap<>(Kind.class))
                    .computeIfAbsent(kind, none -> new ArrayList<>());
            if (all.stream().noneMatch(each -> each.id().equals(entry.id()))) {
                all.add(entry);
            }
            firsts.merge(at.day(), at, (one, other) -> one.isBefore(other) ? one : other);
        }

        private List<WayTo.Point> points() {
            List<WayTo.Point> points = new ArrayList<>();
            Life whole = life(start);
            long after = life(end).total();
            days.forEach((day, kinds) -> {
                boolean last = kinds.containsKey(Kind.FAILURE);
                Moment at = last ? end : firsts.getOrDefault(day, end);
                Life since = life(at);
                List<WayTo.Step> steps = new ArrayList<>();
                List<HeldBy> broke = broken.getOrDefault(day, List.of());
                kinds.forEach(
                        (kind, of) -> steps.add(new WayTo.Step(kind, of, kind == Kind.SYMPTOM ? broke : List.of())));
                points.add(new WayTo.Point(
                        at,
                        new RunningTime(Math.max(0, whole.total() - since.total())),
                        new RunningTime(Math.max(0, since.total() - after)),
                        whole.runsNotRead() > 0 || start == null && whole.atLeast(),
                        steps));
            });
            return points;
        }

        private Life life(@Nullable Moment since) {
            return since == null
                    ? ledger.engineLife(engine.id(), Counter.RUNNING)
                    : ledger.engineSince(engine.id(), Counter.RUNNING, since);
        }
    }
}
