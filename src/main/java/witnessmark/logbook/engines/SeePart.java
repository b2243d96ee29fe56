package witnessmark.logbook.engines;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.SetMember;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Whereabouts;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.Stay;
import witnessmark.logbook.SeeLives;
import witnessmark.logbook.Subject;
import witnessmark.logbook.View;
import witnessmark.quantity.Counter;

/** Sees where a part has been and what it has done, wherever it is now. Reads only. */
public final class SeePart {
    private final View view;
    private final Facts facts;
    private final LifeLedger ledger;

    private SeePart(View view) {
        this.view = view;
        this.facts = view.facts();
        this.ledger = view.ledger();
    }

    /** One part in full; empty when the logbook has no such part in force. */
    public static Optional<PartSheet> of(View view, Id<Part> part) {
        return view.facts()
                .of(Part.class)
                .find(part)
                .filter(Entry::inForce)
                .map(found -> new SeePart(view).sheet(found));
    }

    /** One part as a list shows it. */
    public static PartRow row(View view, Entry<Part> part) {
        return new SeePart(view).row(part);
    }

    /** A time a part was fitted, with the names of where. */
    public static FittedTime time(View view, Stay stay) {
        return new SeePart(view).fitted(stay);
    }

    /** The parts that are in no engine, heads aside, by their marks: in a car, on the shelf, never fitted. */
    static List<PartRow> offEngines(View view) {
        SeePart see = new SeePart(view);
        return see.facts
                .of(Part.class)
                .inForce()
                .filter(part -> see.design(part).kind() != PartKind.HEAD)
                .filter(part -> !see.inEngine(part.id()))
                .map(see::row)
                .sorted(Comparator.comparing(row -> row.part().fact().mark()))
                .toList();
    }

    /** The members of a set that were not split off by the end of the day looked at. */
    static List<String> members(LifeLedger ledger, Id<Part> set) {
        Facts facts = ledger.facts();
        List<String> gone =
                facts
                        .of(Part.class)
                        .where(part -> set.equals(part.ofSet()) && ledger.asOf().counts(part.splitAt()))
                        .stream()
                        .map(part -> part.fact().memberMark())
                        .toList();
        return facts.of(SetMember.class).where(member -> member.set().equals(set)).stream()
                .sorted(Comparator.comparingInt(member -> member.fact().ordinal()))
                .map(member -> member.fact().mark())
                .filter(mark -> !gone.contains(mark))
                .toList();
    }

    private boolean inEngine(Id<Part> part) {
        return ledger.whereIs(part, ledger.asOf().last())
                .filter(fitment -> fitment.fact().engine() != null)
                .isPresent();
    }

    private PartRow row(Entry<Part> part) {
        List<Stay> stays = ledger.stays(part.id());
        return new PartRow(
                part,
                design(part),
                stays.isEmpty() ? null : fitted(stays.get(stays.size() - 1)),
                ledger.firstEntry(part.id()).orElse(null),
                ledger.life(part.id(), Counter.RUNNING));
    }

    private PartSheet sheet(Entry<Part> part) {
        return new PartSheet(
                row(part),
                new Whereabouts(ledger).of(part),
                new WorstMarks(ledger).onPart(part.id()).stream().findFirst().orElse(null),
                members(ledger, part.id()),
                times(part.id()),
                SeeLives.of(view, new Subject.OfPart(part)));
    }

    private List<PartSheet.Time> times(Id<Part> part) {
        Map<Id<Fitment>, Life> ran = new HashMap<>();
        for (Charge charge : ledger.account(part, Counter.RUNNING).charges()) {
            Entry<Fitment> through = charge.fitment();
            if (through != null && charge.counted() == Counted.YES) {
                ran.merge(through.id(), Charged.life(Counter.RUNNING, charge), Life::plus);
            }
        }
        List<PartSheet.Time> times = new ArrayList<>();
        for (Stay stay : ledger.stays(part)) {
            Life there = ran.getOrDefault(stay.fitment().id(), Life.none(Counter.RUNNING));
            times.add(new PartSheet.Time(fitted(stay), there));
        }
        Collections.reverse(times);
        return times;
    }

    private FittedTime fitted(Stay stay) {
        Fitment fitment = stay.fitment().fact();
        return new FittedTime(
                stay,
                place(fitment),
                facts.of(Position.class).get(fitment.position()).name());
    }

    private String place(Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        if (engine != null) {
            return facts.of(Engine.class).get(engine).number();
        }
        return car == null ? "" : facts.of(Car.class).get(car).name();
    }

    private PartDesign design(Entry<Part> part) {
        return facts.of(PartDesign.class).get(part.fact().design());
    }
}
