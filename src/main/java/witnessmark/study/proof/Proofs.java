package witnessmark.study.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ActionCarried;
import witnessmark.domain.ActionKind;
import witnessmark.domain.Build;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.ProofBy;
import witnessmark.domain.ProofWanted;
import witnessmark.domain.Zone;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.statistics.QuietRun;
import witnessmark.study.result.CarriedSince;
import witnessmark.study.result.FailedAfter;
import witnessmark.study.result.ProofLine;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.ProofState;
import witnessmark.study.result.StripLine;
import witnessmark.study.result.UseOfRuns;

/**
 * How far it is proven that what was done about incidents holds, as of the day of the ledger. Running counts from the repair, not
 * from the failure; looks and readings go before any chance. A person closes a case, never the program.
 */
public final class Proofs {
    /** A fix is not taken as proven before twice the running after which it failed last (common practice, no source). */
    private static final int TIMES_THE_INTERVAL = 2;

    private static final double ONE_IN_TEN = 0.1;

    private final LifeLedger ledger;
    private final Facts facts;
    /** Debris gathers there and combustion is read there: what is found says that something failed, and not where. */
    private static final Set<FindingPlace> ELSEWHERE =
            EnumSet.of(FindingPlace.OIL_FILTER, FindingPlace.SUMP, FindingPlace.PLUG);

    private final RanBetween ran;

    public Proofs(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
        this.ran = new RanBetween(ledger);
    }

    /** Of every incident about which something is done or proof is asked for, the latest first. */
    public List<ProofOfCase> all() {
        Set<Id<Incident>> asked = new HashSet<>();
        facts.of(CaseAction.class)
                .inForce()
                .forEach(each -> asked.add(each.fact().incident()));
        facts.of(ProofWanted.class)
                .inForce()
                .forEach(each -> asked.add(each.fact().incident()));
        return facts.of(Incident.class)
                .inForce()
                .filter(each -> asked.contains(each.id()) && counts(each.fact().at()))
                .sorted(Comparator.comparing(
                                (Entry<Incident> each) -> each.fact().at())
                        .reversed())
                .map(this::of)
                .toList();
    }

    /** Of one incident. */
    public ProofOfCase of(Entry<Incident> incident) {
        List<Entry<CaseAction>> done = done(incident.id());
        List<Entry<ActionCarried>> carriers = carriers(done);
        Moment since = carriers.stream()
                .map(each -> each.fact().from())
                .min(Comparator.naturalOrder())
                .orElse(null);
        Entry<Incident> again = again(incident).orElse(null);
        List<FailedAfter> failed = failed(incident);
        List<CarriedSince> carried = carriers.stream()
                .map(each -> since(each, again == null ? null : ran.failedAt(again)))
                .toList();
        RunningTime together = sum(carried);
        List<ProofLine> lines = new AskedFor(ledger, ran, carriers).lines(incident.id(), together, since);
        RunningTime byRule = failed.isEmpty() ? null : twice(failed.get(failed.size() - 1));
        RunningTime asked = asked(lines).orElse(null);
        QuietRun quiet = quiet(failed).orElse(null);
        return new ProofOfCase(
                incident,
                state(incident, done, again, together, lines),
                failed,
                carried,
                since,
                together,
                carried.stream().anyMatch(CarriedSince::atLeast),
                lines,
                asked != null ? asked : byRule,
                asked == null,
                cameTogether(done, carriers),
                again,
                before(incident, since),
                now(carriers, again),
                quiet == null ? Double.NaN : quiet.chance(together.millis()),
                quiet == null ? null : new RunningTime(Math.round(quiet.needed(ONE_IN_TEN))));
    }

    private boolean counts(@Nullable Moment at) {
        return at != null && ledger.asOf().counts(at);
    }

    /** What was done to put it right or to keep it from coming, by the day. */
    private List<Entry<CaseAction>> done(Id<Incident> incident) {
        return facts
                .of(CaseAction.class)
                .where(action -> action.incident().equals(incident)
                        && action.kind() != ActionKind.CONTAINMENT
                        && counts(action.done()))
                .stream()
                .toList();
    }

    /** One for each engine or part: several actions on the same one are carried from the first that came in. */
    private List<Entry<ActionCarried>> carriers(List<Entry<CaseAction>> done) {
        Set<Id<CaseAction>> ids = new HashSet<>();
        done.forEach(each -> ids.add(each.id()));
        List<Entry<ActionCarried>> carriers = new ArrayList<>();
        Set<Object> seen = new HashSet<>();
        facts.of(ActionCarried.class).where(each -> ids.contains(each.action()) && counts(each.from())).stream()
                .sorted(Comparator.comparing(each -> each.fact().from()))
                .filter(each -> seen.add(
                        each.fact().part() != null
                                ? each.fact().part()
                                : each.fact().engine()))
                .forEach(carriers::add);
        return carriers;
    }

    private CarriedSince since(Entry<ActionCarried> carrier, @Nullable Moment until) {
        ActionCarried carried = carrier.fact();
        return new CarriedSince(
                carrier,
                ran.of(carried.engine(), carried.part(), carried.from(), until),
                ran.atLeast(carried.engine(), carried.part(), carried.from()));
    }

    private static RunningTime sum(List<CarriedSince> carried) {
        return new RunningTime(
                carried.stream().mapToLong(each -> each.ran().millis()).sum());
    }

    /** The incident by which it came back, the earliest. */
    private Optional<Entry<Incident>> again(Entry<Incident> incident) {
        return facts
                .of(Incident.class)
                .where(other -> incident.id().equals(other.before()) && counts(other.at()))
                .stream()
                .min(Comparator.comparing(each -> each.fact().at()));
    }

    /** The incident and those it is again, the earliest first, where an engine is known. */
    private List<FailedAfter> failed(Entry<Incident> incident) {
        List<FailedAfter> failed = new ArrayList<>();
        Set<Id<Incident>> met = new HashSet<>();
        Entry<Incident> each = incident;
        while (each != null && met.add(each.id())) {
            Id<Engine> engine = each.fact().engine();
            if (engine != null) {
                Moment from = beganBefore(each, engine).orElse(null);
                RunningTime interval = ran.of(engine, null, from, ran.failedAt(each));
                failed.add(new FailedAfter(each, interval, ran.atLeast(engine, null, from)));
            }
            Id<Incident> before = each.fact().before();
            each = before == null ? null : facts.of(Incident.class).find(before).orElse(null);
        }
        Collections.reverse(failed);
        return failed;
    }

    /**
     * Where running before a failure begins: at the repair after the one before, else at the last build; else with its life. Where its
     * findings have places, each was last closed up by the last build that laid it open, and the earliest of those counts: a shell is
     * no newer for work on the head.
     */
    private Optional<Moment> beganBefore(Entry<Incident> incident, Id<Engine> engine) {
        Moment at = ran.failedAt(incident);
        Id<Incident> before = incident.fact().before();
        if (before != null) {
            Optional<Moment> repaired = carriers(done(before)).stream()
                    .filter(each -> each.fact().engine().equals(engine))
                    .map(each -> each.fact().from())
                    .filter(from -> from.isBefore(at))
                    .min(Comparator.naturalOrder());
            Optional<Moment> failed = facts.of(Incident.class).find(before).map(ran::failedAt);
            return repaired.or(() -> failed.filter(then -> then.isBefore(at)));
        }
        List<Set<Zone>> places = places(incident.id());
        return places.isEmpty()
                ? lastClosed(engine, at, EnumSet.allOf(Zone.class))
                : places.stream()
                        .map(zones -> lastClosed(engine, at, zones))
                        .reduce((one, other) ->
                                one.flatMap(first -> other.map(second -> first.isBefore(second) ? first : second)))
                        .orElseThrow();
    }

    /** When the last build before a moment was closed that had opened one of these; empty for none. */
    private Optional<Moment> lastClosed(Id<Engine> engine, Moment before, Set<Zone> zones) {
        return facts
                .of(Build.class)
                .where(build -> build.engine().equals(engine)
                        && build.closed() != null
                        && build.closed().isBefore(before)
                        && build.zones().stream().anyMatch(zones::contains))
                .stream()
                .map(build -> build.fact().closed())
                .max(Comparator.naturalOrder());
    }

    /** What lays each place open at which something was found that speaks to it; what is as it should be tells no place. */
    private List<Set<Zone>> places(Id<Incident> incident) {
        return facts
                .of(Finding.class)
                .where(finding ->
                        incident.equals(finding.incident()) && finding.how() != HowMarked.NONE && counts(finding.at()))
                .stream()
                .map(finding -> finding.fact().place())
                .filter(place -> place != null && !ELSEWHERE.contains(place))
                .map(StripLine::opening)
                .filter(zones -> !zones.isEmpty())
                .distinct()
                .toList();
    }

    private static @Nullable RunningTime twice(FailedAfter last) {
        long millis = TIMES_THE_INTERVAL * last.ran().millis();
        return millis > 0 ? new RunningTime(millis) : null;
    }

    private static Optional<RunningTime> asked(List<ProofLine> lines) {
        return lines.stream()
                .map(line -> line.wanted().fact())
                .filter(wanted -> wanted.kind() == ProofBy.RUNNING)
                .map(ProofWanted::after)
                .max(Comparator.naturalOrder());
    }

    private static Optional<QuietRun> quiet(List<FailedAfter> failed) {
        long running = failed.stream().mapToLong(each -> each.ran().millis()).sum();
        return running > 0 ? Optional.of(new QuietRun(running, failed.size())) : Optional.empty();
    }

    // How far

    private ProofState state(
            Entry<Incident> incident,
            List<Entry<CaseAction>> done,
            @Nullable Entry<Incident> again,
            RunningTime ranSince,
            List<ProofLine> lines) {
        if (again != null) {
            return ProofState.CAME_BACK;
        }
        if (counts(incident.fact().closed())) {
            return ProofState.CLOSED;
        }
        if (done.isEmpty()) {
            return ProofState.OPEN;
        }
        boolean against = lines.stream().anyMatch(line -> line.state() == ProofLine.State.NOT_MET);
        return ranSince.millis() > 0 && !against ? ProofState.HOLDING : ProofState.DONE;
    }

    /** Actions that one engine carries from the same moment: two or more, or none. */
    private List<Entry<CaseAction>> cameTogether(List<Entry<CaseAction>> done, List<Entry<ActionCarried>> carriers) {
        for (Entry<ActionCarried> carrier : carriers) {
            ActionCarried first = carrier.fact();
            List<Entry<CaseAction>> with = done.stream()
                    .filter(action -> !facts.of(ActionCarried.class)
                            .where(each -> each.action().equals(action.id())
                                    && each.engine().equals(first.engine())
                                    && ran.of(first.engine(), null, earlier(each, first), later(each, first))
                                                    .millis()
                                            == 0)
                            .isEmpty())
                    .toList();
            if (with.size() > 1) {
                return with;
            }
        }
        return List.of();
    }

    private static Moment earlier(ActionCarried one, ActionCarried other) {
        return one.from().isBefore(other.from()) ? one.from() : other.from();
    }

    private static Moment later(ActionCarried one, ActionCarried other) {
        return one.from().isBefore(other.from()) ? other.from() : one.from();
    }

    private @Nullable UseOfRuns before(Entry<Incident> incident, @Nullable Moment since) {
        Id<Engine> engine = incident.fact().engine();
        if (engine == null || since == null) {
            return null;
        }
        return ran.use(engine, beganBefore(incident, engine).orElse(null), ran.failedAt(incident));
    }

    private @Nullable UseOfRuns now(List<Entry<ActionCarried>> carriers, @Nullable Entry<Incident> again) {
        return carriers.isEmpty()
                ? null
                : ran.use(
                        carriers.get(0).fact().engine(),
                        carriers.get(0).fact().from(),
                        again == null ? null : ran.failedAt(again));
    }
}
