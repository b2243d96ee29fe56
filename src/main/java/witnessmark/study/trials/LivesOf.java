package witnessmark.study.trials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartHarm;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.Stay;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.study.FailedAt;
import witnessmark.study.result.TrialLife;

/**
 * Each time a part was fitted as a life of its own. A part that is fitted again is watched from the age it has by then, so that its
 * lives add up to its running in the logbook.
 */
final class LivesOf {
    private final LifeLedger ledger;
    private final Facts facts;
    private final Counter counter;
    private final PartKind kind;

    LivesOf(LifeLedger ledger, Counter counter, PartKind kind) {
        this.ledger = ledger;
        this.facts = ledger.facts();
        this.counter = counter;
        this.kind = kind;
    }

    /** Oldest first. What was split from a set has those since; before, they are the set's. */
    List<TrialLife> part(Entry<Part> part) {
        List<Stay> stays = own(part.id());
        List<TrialLife.Harm> harms = harms(part.id());
        List<TrialLife> lives = new ArrayList<>();
        for (int i = 0; i < stays.size(); i++) {
            Stay stay = stays.get(i);
            int turn = i;
            List<TrialLife.Harm> here = harms.stream()
                    .filter(harm -> turn(stays, FailedAt.of(facts, harm.incident())) == turn)
                    .toList();
            List<Entry<Finding>> found = facts
                    .of(Finding.class)
                    .where(finding -> ledger.asOf().counts(finding.at()) && of(finding, part.id(), stays, turn))
                    .stream()
                    .sorted(Comparator.comparing(finding -> finding.fact().at()))
                    .toList();
            lives.add(life(part, stay, here, found));
        }
        return lives;
    }

    private List<TrialLife.Harm> harms(Id<Part> part) {
        return facts.of(IncidentPart.class)
                .inForce()
                .flatMap(named -> facts.of(Incident.class).find(named.fact().incident()).filter(Entry::inForce).stream()
                        .map(incident -> new TrialLife.Harm(named, incident)))
                .filter(harm -> ledger.asOf().counts(harm.incident().fact().at())
                        && part.equals(ran(harm.named().fact().part(), FailedAt.of(facts, harm.incident()))))
                .sorted(Comparator.comparing(harm -> harm.incident().fact().at()))
                .toList();
    }

    /** As what a part ran to a moment: as itself, else as the set it was split from since, or after which it ran no more. */
    private @Nullable Id<Part> ran(@Nullable Id<Part> part, Moment at) {
        Set<Id<Part>> met = new HashSet<>();
        Id<Part> now = part;
        while (now != null && met.add(now)) {
            Part fact = facts.of(Part.class).get(now);
            if (fact.splitAt() == null || fact.splitAt().isBefore(at) && !own(now).isEmpty()) {
                return now;
            }
            now = fact.ofSet();
        }
        return part;
    }

    private List<Stay> own(Id<Part> part) {
        return ledger.stays(part).stream()
                .filter(stay -> stay.fitment().fact().part().equals(part))
                .toList();
    }

    /** To which of the times it was fitted something belongs that was seen then: the last that had begun, else the first. */
    private static int turn(List<Stay> stays, Moment at) {
        int turn = 0;
        for (int i = 1; i < stays.size(); i++) {
            turn = stays.get(i).from().isAfter(at) ? turn : i;
        }
        return turn;
    }

    private boolean of(Finding finding, Id<Part> part, List<Stay> stays, int turn) {
        if (finding.part() != null) {
            return part.equals(ran(finding.part(), finding.at())) && turn(stays, finding.at()) == turn;
        }
        return finding.place() != null
                && FoundAt.places(kind).contains(finding.place())
                && stays.get(turn)
                        .fitment()
                        .id()
                        .equals(lastThere(
                                finding, stays.get(turn).fitment().fact().position()));
    }

    /** Of the engine it was found on, what was fitted last in that position by then. */
    private @Nullable Id<Fitment> lastThere(Finding finding, Id<Position> position) {
        return facts
                .of(Fitment.class)
                .where(fitment -> fitment.position().equals(position)
                        && fitment.engine() != null
                        && fitment.engine().equals(finding.engine())
                        && !fitment.from().isAfter(finding.at()))
                .stream()
                .max(Comparator.comparing(fitment -> fitment.fact().from()))
                .map(Entry::id)
                .orElse(null);
    }

    private TrialLife life(Entry<Part> part, Stay stay, List<TrialLife.Harm> harms, List<Entry<Finding>> found) {
        Optional<Moment> failed = harms.stream()
                .filter(harm -> harm.named().fact().harm() == PartHarm.FAILED)
                .map(harm -> FailedAt.of(facts, harm.incident()))
                .findFirst();
        Moment off = stay.to();
        Moment until = failed.filter(at -> off == null || at.isBefore(off)).orElse(off);
        Life whole = ledger.life(part.id(), counter);
        Life since = ledger.since(part.id(), counter, stay.from());
        Life after = until == null ? Life.none(counter) : ledger.since(part.id(), counter, until);
        long entry = whole.total() - since.total();
        Fitment fitment = stay.fitment().fact();
        return new TrialLife(
                part,
                stay,
                fitment.engine(),
                place(fitment),
                facts.of(Position.class).get(fitment.position()).name(),
                entry,
                Math.max(entry, whole.total() - after.total()),
                doubt(whole, since, after),
                failed.isPresent()
                        ? TrialLife.End.FAILED
                        : off == null ? TrialLife.End.STILL_IN : TrialLife.End.CAME_OFF,
                harms,
                found);
    }

    private static TrialLife.Doubt doubt(Life whole, Life since, Life after) {
        if (whole.atLeast()) {
            return TrialLife.Doubt.BEFORE_NOT_KNOWN;
        }
        if (range(whole) != range(since) || range(whole) != range(after)) {
            return TrialLife.Doubt.TOLD;
        }
        return whole.runsNotRead() > after.runsNotRead() ? TrialLife.Doubt.NOT_READ : TrialLife.Doubt.NONE;
    }

    private static long range(Life life) {
        return life.toldHighest() - life.toldLowest();
    }

    private String place(Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        if (engine != null) {
            return facts.of(Engine.class).get(engine).number();
        }
        return car == null ? "" : facts.of(Car.class).get(car).name();
    }
}
