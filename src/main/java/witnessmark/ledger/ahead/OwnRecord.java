package witnessmark.ledger.ahead;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.result.Expected;
import witnessmark.ledger.result.Expected.Basis;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;

/**
 * What a run to come will take, by the team's own record of such runs: of that kind at that circuit, once there are
 * three, else of that kind anywhere. Where the timetable states how long a run should last, the record says how much
 * longer or shorter than stated such runs were. Until there are three, the timetable, else what is usual in the trade.
 * Each answer is worked out once; for one thread.
 */
public final class OwnRecord {
    /** Fewer say nothing. */
    private static final int ENOUGH = 3;

    /** How finely a share of the stated time is kept: millionths. */
    private static final long FINE = 1_000_000;

    /** Running time of one run where nothing is known, minutes; common practice, no source. */
    private static final Map<RunKind, Integer> USUAL_MINUTES = Map.of(
            RunKind.PRACTICE, 25, RunKind.QUALIFYING, 20, RunKind.RACE, 28, RunKind.TEST, 24, RunKind.WARM_UP, 10);

    private record Kind(RunKind kind, @Nullable String circuit) {}

    private record Past(Run run, Id<Event> event, @Nullable RunningTime stated) {}

    private record Asked(Id<?> run, Counter counter) {}

    private final Facts facts;
    private final AsOf asOf;
    private final Map<Asked, Optional<Expected>> said = new HashMap<>();
    private final Map<Kind, List<Past>> past = new HashMap<>();
    private boolean read;

    /** The record as of a day. */
    public OwnRecord(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.asOf = asOf;
    }

    /** The team's runs by kind, gone through once something is asked. */
    private Map<Kind, List<Past>> past() {
        if (!read) {
            read = true;
            facts.of(Run.class)
                    .inForce()
                    .map(Entry::fact)
                    .filter(run -> run.event() != null && run.perhapsSame() == null)
                    .filter(run -> asOf.counts(run.start()))
                    .forEach(this::add);
        }
        return past;
    }

    private void add(Run run) {
        Id<Event> event = Objects.requireNonNull(run.event());
        RunningTime stated = run.planned() == null
                ? null
                : facts.of(PlannedRun.class).get(run.planned()).expected();
        Past one = new Past(run, event, stated);
        past.computeIfAbsent(new Kind(run.kind(), null), kind -> new ArrayList<>())
                .add(one);
        past.computeIfAbsent(
                        new Kind(run.kind(), facts.of(Event.class).get(event).circuit()), kind -> new ArrayList<>())
                .add(one);
    }

    /** What a run to come takes of a counter; empty when nothing says. */
    public Optional<Expected> of(Step step, Counter counter) {
        Id<?> run = step.planned() == null ? step.event().id() : step.planned().id();
        return said.computeIfAbsent(new Asked(run, counter), asked -> workedOut(step, counter));
    }

    private Optional<Expected> workedOut(Step step, Counter counter) {
        if (!counter.isFedByRuns() || counter == Counter.OVER_REVS) {
            return Optional.empty(); // nobody plans an over-rev
        }
        if (step.planned() == null) {
            return ofWholeEvent(counter);
        }
        PlannedRun planned = step.planned().fact();
        String circuit = step.event().fact().circuit();
        return known(planned, circuit, counter)
                .or(() -> known(planned, null, counter))
                .or(() -> unknown(planned, counter));
    }

    private Optional<Expected> known(PlannedRun planned, @Nullable String circuit, Counter counter) {
        List<Past> such = past().getOrDefault(new Kind(planned.kind(), circuit), List.of());
        Basis basis = circuit == null ? Basis.OWN : Basis.OWN_THERE;
        RunningTime stated = planned.expected();
        if (stated != null && growsWithTime(counter)) {
            List<Past> told = such.stream()
                    .filter(one -> one.stated() != null && one.run().of(counter) != null)
                    .toList();
            if (told.size() >= ENOUGH) {
                Quartiles shares = Quartiles.of(told.stream()
                        .map(one -> share(
                                Objects.requireNonNull(one.run().of(counter)), Objects.requireNonNull(one.stated())))
                        .toList());
                return Optional.of(expected(counter, shares.times(stated.millis(), FINE), told, basis));
            }
        }
        List<Past> told =
                such.stream().filter(one -> one.run().of(counter) != null).toList();
        if (told.size() < ENOUGH) {
            return Optional.empty();
        }
        Quartiles plain = Quartiles.of(told.stream()
                .map(one -> Objects.requireNonNull(one.run().of(counter)))
                .toList());
        return Optional.of(expected(counter, plain, told, basis));
    }

    private static long share(long figure, RunningTime stated) {
        return Quartiles.scaled(figure, FINE, Math.max(1, stated.millis()));
    }

    private static Expected expected(Counter counter, Quartiles range, List<Past> such, Basis basis) {
        Set<Id<Event>> events = new HashSet<>();
        such.forEach(one -> events.add(one.event()));
        return new Expected(counter, range.low(), range.middle(), range.high(), such.size(), events.size(), basis);
    }

    private static Optional<Expected> unknown(PlannedRun planned, Counter counter) {
        return switch (counter) {
            case RUNNING -> {
                RunningTime stated = planned.expected();
                Integer usual = USUAL_MINUTES.get(planned.kind());
                yield stated != null
                        ? plain(counter, stated.millis(), Basis.TIMETABLE)
                        : usual == null ? Optional.empty() : plain(counter, usual * 60_000L, Basis.USUAL);
            }
            case RACE_STARTS -> plain(counter, planned.kind() == RunKind.RACE ? 1 : 0, Basis.USUAL);
            case ENGINE_STARTS, HEAT_CYCLES -> plain(counter, 1, Basis.USUAL);
            default -> Optional.empty();
        };
    }

    private static Optional<Expected> plain(Counter counter, long figure, Basis basis) {
        return Optional.of(new Expected(counter, figure, figure, figure, 0, 0, basis));
    }

    /** An event without a timetable takes what the team's events took. */
    private Optional<Expected> ofWholeEvent(Counter counter) {
        Map<Id<Event>, Map<Id<?>, Long>> sums = new HashMap<>();
        Set<Id<Event>> unread = new HashSet<>();
        past().forEach((kind, runs) -> {
            if (kind.circuit() == null) {
                for (Past one : runs) {
                    Long figure = one.run().of(counter);
                    if (figure == null) {
                        unread.add(one.event());
                    } else {
                        sums.computeIfAbsent(one.event(), event -> new HashMap<>())
                                .merge(one.run().engine(), figure, Math::addExact);
                    }
                }
            }
        });
        sums.keySet().removeAll(unread);
        List<Long> all = sums.values().stream()
                .flatMap(byEngine -> byEngine.values().stream())
                .toList();
        if (sums.size() < ENOUGH) {
            return Optional.empty();
        }
        Quartiles range = Quartiles.of(all);
        return Optional.of(
                new Expected(counter, range.low(), range.middle(), range.high(), all.size(), sums.size(), Basis.OWN));
    }

    private static boolean growsWithTime(Counter counter) {
        return counter.unit() != Counter.Unit.COUNT || counter == Counter.LAPS;
    }
}
