package witnessmark.logbook.standing;

import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.Refunds;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.ProofSeen;
import witnessmark.domain.ProofWanted;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.DebrisLeft;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Meters;
import witnessmark.ledger.Notices;
import witnessmark.ledger.OpenJobs;
import witnessmark.ledger.OutWithOthers;
import witnessmark.ledger.Stock;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.ledger.result.StockLevel;
import witnessmark.study.proof.Proofs;
import witnessmark.study.result.ProofLine;

/** Sees what is waited for. */
final class SeeOpen {
    private final LifeLedger ledger;
    private final Facts facts;
    private final AsOf asOf;
    private final @Nullable NextEvent next;
    private final Set<Id<Car>> going;
    private final Set<Id<Engine>> engines;

    /**
     * @param next the next event, or null when none is written down
     * @param going the cars that go, to it or anywhere
     * @param engines the engines that go
     */
    SeeOpen(LifeLedger ledger, @Nullable NextEvent next, Set<Id<Car>> going, Set<Id<Engine>> engines) {
        this.ledger = ledger;
        this.next = next;
        this.going = going;
        this.engines = engines;
        this.facts = ledger.facts();
        this.asOf = ledger.asOf();
    }

    StillOpen open() {
        return new StillOpen(
                jobs(),
                out(),
                new SeeBorrowed(ledger).all(),
                low(),
                Notices.left(facts, asOf),
                apart(),
                bare(),
                incomplete(),
                incidents(),
                Refunds.open(facts, asOf),
                new SeeUnlogged(facts, asOf).all(),
                new SeeReadings(ledger, engines).all(),
                new DebrisLeft(ledger)
                        .all().stream()
                                .filter(each -> going.contains(each.car().id()))
                                .toList());
    }

    private List<StillOpen.OpenJob> jobs() {
        return OpenJobs.of(facts, asOf).stream().map(this::job).toList();
    }

    private StillOpen.OpenJob job(Entry<Job> entry) {
        Job job = entry.fact();
        Event before = event(job.before());
        boolean late = before != null && !asOf.day().isBefore(before.firstDay());
        String name = before == null ? null : before.name();
        if (job.part() != null) {
            return new StillOpen.OpenJob(
                    entry, facts.of(Part.class).get(job.part()).mark(), StillOpen.On.PART, name, late);
        }
        if (job.engine() != null) {
            return new StillOpen.OpenJob(
                    entry, facts.of(Engine.class).get(job.engine()).number(), StillOpen.On.ENGINE, name, late);
        }
        return job.car() == null
                ? new StillOpen.OpenJob(entry, "", StillOpen.On.NOTHING, name, late)
                : new StillOpen.OpenJob(
                        entry, facts.of(Car.class).get(job.car()).name(), StillOpen.On.CAR, name, late);
    }

    private List<StillOpen.BareCar> bare() {
        NextEvent event = next;
        if (event == null) {
            return List.of();
        }
        return facts.of(EventEntry.class).where(entry -> entry.event().equals(event.id())).stream()
                .map(Entry::fact)
                .filter(entry -> ledger.engineIn(entry.car(), asOf.last()).isEmpty())
                .map(entry -> new StillOpen.BareCar(
                        facts.of(Car.class).find(entry.car()).orElseThrow(),
                        event.event().name(),
                        entry.engine() == null
                                ? null
                                : facts.of(Engine.class).find(entry.engine()).orElse(null)))
                .toList();
    }

    /** An engine of which nothing is written down as fitted is not told: its parts are not kept at all. */
    private List<StillOpen.Incomplete> incomplete() {
        return going.stream()
                .flatMap(car -> incomplete(car).stream())
                .sorted(Comparator.comparing(StillOpen.Incomplete::car))
                .toList();
    }

    private Optional<StillOpen.Incomplete> incomplete(Id<Car> car) {
        return ledger.engineIn(car, asOf.last())
                .map(stay -> stay.fact().engine())
                .filter(engine -> !ledger.fittedAt(engine, asOf.last()).isEmpty())
                .map(engine -> new StillOpen.Incomplete(
                        facts.of(Engine.class).find(engine).orElseThrow(),
                        facts.of(Car.class).get(car).name(),
                        ledger.emptyPositions(engine, asOf.last())))
                .filter(engine -> !engine.empty().isEmpty());
    }

    private List<StillOpen.OpenIncident> incidents() {
        Set<Id<Incident>> against = against();
        return facts.of(Incident.class)
                .inForce()
                .filter(incident -> asOf.counts(incident.fact().at())
                        && (incident.fact().openAt(asOf.last()) || against.contains(incident.id())))
                .filter(incident -> going.contains(incident.fact().car())
                        || engines.contains(incident.fact().engine()))
                .map(this::incident)
                .filter(open -> open.incident().fact().openAt(asOf.last()) || open.asksToBeOpened() && isAgainst(open))
                .sorted(Comparator.comparing((StillOpen.OpenIncident open) -> !open.asksToBeOpened())
                        .thenComparing(open -> open.incident().fact().at(), Comparator.reverseOrder()))
                .toList();
    }

    /** Incidents of which something asked for as proof was once not as asked for: only these can be closed too early. */
    private Set<Id<Incident>> against() {
        Set<Id<Incident>> against = new HashSet<>();
        facts.of(ProofSeen.class)
                .where(seen -> !seen.met() && asOf.counts(seen.at()))
                .forEach(seen -> against.add(
                        facts.of(ProofWanted.class).get(seen.fact().wanted()).incident()));
        return against;
    }

    private static boolean isAgainst(StillOpen.OpenIncident open) {
        return open.proof().lines().stream().anyMatch(line -> line.state() == ProofLine.State.NOT_MET);
    }

    private StillOpen.OpenIncident incident(Entry<Incident> entry) {
        Incident incident = entry.fact();
        return new StillOpen.OpenIncident(
                entry,
                incident.car() == null
                        ? null
                        : facts.of(Car.class).get(incident.car()).name(),
                incident.engine() == null
                        ? null
                        : facts.of(Engine.class).get(incident.engine()).number(),
                ChronoUnit.DAYS.between(incident.at().day(), asOf.day()),
                incident.before() == null
                        ? null
                        : facts.of(Incident.class).get(incident.before()).mark(),
                new Proofs(ledger).of(entry));
    }

    private List<MeterStretch> apart() {
        return new Meters(ledger)
                .all().stream().filter(MeterStretch::unexplained).toList();
    }

    private @Nullable Event event(@Nullable Id<Event> event) {
        return event == null
                ? null
                : facts.of(Event.class).find(event).map(Entry::fact).orElse(null);
    }

    /** The latest past its day first, then those silent for longest. */
    private List<Away> out() {
        return new OutWithOthers(facts, asOf)
                .all().stream()
                        .sorted(Comparator.comparingLong(Away::daysLate)
                                .thenComparingLong(Away::daysSilent)
                                .reversed())
                        .toList();
    }

    private List<StillOpen.LowStock> low() {
        Set<Id<PartDesign>> told = new HashSet<>();
        return new Stock(facts, asOf)
                .all().stream()
                        .filter(StockLevel::isShort)
                        .filter(level -> told.add(level.batch().fact().design()))
                        .map(level -> new StillOpen.LowStock(
                                level,
                                facts.of(PartDesign.class)
                                        .get(level.batch().fact().design())))
                        .toList();
    }
}
