package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Clearance;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Reading;
import witnessmark.domain.Run;
import witnessmark.domain.Trigger;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.Raised;
import witnessmark.quantity.Moment;

/**
 * What holds engines and parts as of the ledger's day: what a person held, and what a run or a reading raised under a
 * rule that stood then. A part is held wherever it is now, for it was there when it happened; a member split off later
 * is held with its set. Whatever was signed clear stays in the list, with its clearance.
 */
public final class Holds {
    private final LifeLedger ledger;
    private final Seats seats;
    private final List<Raised> raised;

    public Holds(LifeLedger ledger) {
        this.ledger = ledger;
        this.seats = new Seats(ledger);
        this.raised = Stream.of(written(), byRuns(), byReadings())
                .flatMap(List::stream)
                .sorted(Comparator.comparing((Raised each) -> each.by().since()))
                .toList();
    }

    /** Everything that ever held something, the first first. */
    public List<Raised> all() {
        return raised;
    }

    /** What holds something now, the first first. */
    public List<HeldBy> open() {
        return raised.stream()
                .filter(each -> each.clearance() == null)
                .map(Raised::by)
                .toList();
    }

    /** What holds a part by itself now, the engine it is in aside. */
    public List<HeldBy> on(Id<Part> part) {
        return open().stream().filter(by -> part.equals(by.part())).toList();
    }

    /** What holds an engine as a whole now. */
    public List<HeldBy> on(Id<Engine> engine, boolean whole) {
        return open().stream()
                .filter(by -> engine.equals(by.engine()) && (by.part() == null) == whole)
                .toList();
    }

    /** What raises a hold, before it is known what that falls on. */
    private record Evidence(
            Entry<?> cause,
            @Nullable Entry<Trigger> rule,
            Moment at,
            @Nullable Long figure) {
        HeldBy on(@Nullable Id<Part> part, @Nullable Id<Engine> engine) {
            return new HeldBy(cause, rule, part, engine, at, figure);
        }
    }

    private List<Raised> written() {
        List<Raised> all = new ArrayList<>();
        ledger.facts()
                .of(Hold.class)
                .inForce()
                .filter(hold -> ledger.asOf().counts(hold.fact().at()))
                .forEach(hold -> {
                    Evidence evidence = new Evidence(hold, null, hold.fact().at(), null);
                    Id<Part> part = hold.fact().part();
                    if (part == null) {
                        all.add(raised(evidence.on(null, hold.fact().engine())));
                    } else {
                        hold(all, evidence, List.of(part));
                    }
                });
        return all;
    }

    private List<Raised> byRuns() {
        List<Raised> all = new ArrayList<>();
        RunTriggers triggers = new RunTriggers(ledger.facts());
        if (triggers.none()) {
            return all;
        }
        ledger.facts()
                .of(Run.class)
                .inForce()
                .filter(run -> run.fact().perhapsSame() == null)
                .filter(run -> ledger.asOf().counts(run.fact().start()))
                .forEach(run -> triggers.raisedBy(run).forEach(rule -> {
                    Long reached = triggers.reached(run, rule.fact());
                    hold(
                            all,
                            new Evidence(run, rule, run.fact().start(), reached),
                            rule,
                            run.fact().engine());
                }));
        return all;
    }

    private List<Raised> byReadings() {
        List<Raised> all = new ArrayList<>();
        new ReadingTriggers(ledger)
                .raised()
                .forEach((reading, rules) -> rules.forEach(rule -> {
                    Reading fact = reading.fact();
                    Evidence evidence = new Evidence(reading, rule, fact.at(), null);
                    Id<Part> part = fact.part();
                    Id<Engine> engine = fact.engine() != null ? fact.engine() : engineOf(part, fact.at());
                    if (engine != null) {
                        hold(all, evidence, rule, engine);
                    } else if (part != null) {
                        hold(all, evidence, List.of(part));
                    }
                }));
        return all;
    }

    private @Nullable Id<Engine> engineOf(@Nullable Id<Part> part, Moment at) {
        return part == null
                ? null
                : ledger.whereIs(part, at).map(there -> there.fact().engine()).orElse(null);
    }

    /** Holds the engine as a whole, or what the rule names of what was in it and in the car it was in. */
    private void hold(List<Raised> all, Evidence evidence, Entry<Trigger> rule, Id<Engine> engine) {
        Set<PartKind> kinds = rule.fact().holds();
        if (kinds.isEmpty()) {
            all.add(raised(evidence.on(null, engine)));
            return;
        }
        Stream<Entry<Fitment>> inCar = ledger.carOf(engine, evidence.at()).stream()
                .flatMap(stay -> ledger.fittedInCar(stay.fact().car(), evidence.at()).values().stream());
        List<Id<Part>> there = Stream.concat(ledger.fittedAt(engine, evidence.at()).values().stream(), inCar)
                .map(Entry::fact)
                .map(Fitment::part)
                .filter(part -> kinds.contains(seats.kind(part)))
                .toList();
        hold(all, evidence, there);
    }

    private void hold(List<Raised> all, Evidence evidence, List<Id<Part>> parts) {
        for (Id<Part> part : parts) {
            for (Id<Part> each : withMembersSplitOff(part, evidence.at())) {
                all.add(raised(evidence.on(each, engineOf(part, evidence.at()))));
            }
        }
    }

    /** A part, and what was split off it after a moment, with what was split off that. */
    private List<Id<Part>> withMembersSplitOff(Id<Part> part, Moment at) {
        List<Id<Part>> all = new ArrayList<>(List.of(part));
        for (int i = 0; i < all.size(); i++) {
            Id<Part> set = all.get(i);
            ledger.facts()
                    .of(Part.class)
                    .inForce()
                    .filter(member -> set.equals(member.fact().ofSet()) && !all.contains(member.id()))
                    .filter(member -> {
                        Moment split = member.fact().splitAt();
                        return split != null
                                && split.isAfter(at)
                                && ledger.asOf().counts(split);
                    })
                    .forEach(member -> all.add(member.id()));
        }
        return all;
    }

    private Raised raised(HeldBy by) {
        return new Raised(by, clearance(by).orElse(null));
    }

    private Optional<Entry<Clearance>> clearance(HeldBy by) {
        return ledger.facts()
                .of(Clearance.class)
                .inForce()
                .filter(entry -> ledger.asOf().counts(entry.fact().at()))
                .filter(entry -> clears(entry.fact(), by))
                .min(Comparator.comparing(entry -> entry.fact().at()));
    }

    private static boolean clears(Clearance clearance, HeldBy by) {
        Id<?> cause = by.cause().id();
        boolean same =
                cause.equals(clearance.hold()) || cause.equals(clearance.run()) || cause.equals(clearance.reading());
        return same
                && Objects.equals(
                        clearance.trigger(),
                        by.rule() == null ? null : by.rule().id())
                && (clearance.part() == null || clearance.part().equals(by.part()));
    }
}
