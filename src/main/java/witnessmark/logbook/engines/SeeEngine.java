package witnessmark.logbook.engines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.SeeLives;
import witnessmark.logbook.Subject;
import witnessmark.logbook.View;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.trends.SeeTrends;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** Sees what is in an engine and what it has done, as of the day looked at. Reads only. */
public final class SeeEngine {
    private final View view;
    private final Facts facts;
    private final LifeLedger ledger;

    private SeeEngine(View view) {
        this.view = view;
        this.facts = view.facts();
        this.ledger = view.ledger();
    }

    /** All engines and heads. */
    public static Engines all(View view) {
        return new SeeEngine(view).all();
    }

    /** One engine in full; empty when the logbook has no such engine in force. */
    public static Optional<EngineSheet> of(View view, Id<Engine> engine) {
        return view.facts()
                .of(Engine.class)
                .find(engine)
                .filter(Entry::inForce)
                .map(found -> new SeeEngine(view).sheet(found));
    }

    /**
     * The engine a part is in on the day looked at.
     *
     * @param part the text form of its identity; another record's is in none
     */
    public static Optional<Id<Engine>> engineOf(View view, String part) {
        return view.ledger()
                .whereIs(Id.parse(part), view.ledger().asOf().last())
                .map(fitment -> fitment.fact().engine());
    }

    private Engines all() {
        EngineRows rows = new EngineRows(ledger);
        List<EngineRow> engines = facts.of(Engine.class)
                .inForce()
                .sorted(Comparator.comparing(engine -> engine.fact().number()))
                .map(rows::row)
                .toList();
        List<HeadRow> heads = new Heads(ledger).all();
        Curves curves = new Curves(ledger);
        return new Engines(
                view.day(),
                view.zone(),
                view.readOnly(),
                engines,
                heads,
                SeePart.offEngines(view),
                engines.stream()
                        .map(row -> curves.sinceRebuild(row.engine()))
                        .filter(curve -> !curve.steps().isEmpty())
                        .toList(),
                heads.stream()
                        .map(row -> curves.sinceSkim(row.head()))
                        .filter(curve -> !curve.steps().isEmpty())
                        .toList(),
                facts.of(Event.class)
                        .inForce()
                        .filter(event -> !event.fact().firstDay().isAfter(view.day()))
                        .sorted(Comparator.comparing(event -> event.fact().firstDay()))
                        .toList());
    }

    private EngineSheet sheet(Entry<Engine> engine) {
        EngineRows rows = new EngineRows(ledger);
        return new EngineSheet(
                view.day(),
                rows.row(engine),
                SeeLives.of(view, new Subject.OfEngine(engine)),
                Counter.fedByRuns().stream()
                        .map(counter -> ledger.sinceRebuild(engine.id(), Limits.REBUILD, counter))
                        .toList(),
                build(engine, rows.marks(engine.id())),
                new LineOfLife(ledger).of(engine.id()),
                SeeTrends.of(view, engine.id()));
    }

    private List<FittedPart> build(Entry<Engine> engine, List<MarkOn> worstFirst) {
        Moment now = ledger.asOf().last();
        Map<Id<Part>, MarkOn> worst = new HashMap<>();
        Map<Id<Part>, MarkOn> nearest = new HashMap<>();
        for (MarkOn on : worstFirst) {
            Id<Part> part = on.mark().part();
            if (part != null) {
                worst.putIfAbsent(part, on);
                if (on.use() != null) {
                    nearest.putIfAbsent(part, on);
                }
            }
        }
        List<FittedPart> build = new ArrayList<>();
        ledger.fittedAt(engine.id(), now).forEach((position, fitment) -> {
            Id<Part> part = fitment.fact().part();
            build.add(filled(position, fitment, worst.get(part), nearest.get(part)));
        });
        ledger.emptyPositions(engine.id(), now)
                .forEach(
                        position -> build.add(new FittedPart(position, null, null, null, List.of(), null, null, null)));
        build.sort(Comparator.comparingInt(fitted -> fitted.position().fact().ordinal()));
        return build;
    }

    private FittedPart filled(
            Id<Position> position, Entry<Fitment> fitment, @Nullable MarkOn worst, @Nullable MarkOn nearest) {
        Entry<Part> part = facts.of(Part.class).find(fitment.fact().part()).orElseThrow();
        Life running = ledger.life(part.id(), Counter.RUNNING);
        return new FittedPart(
                facts.of(Position.class).find(position).orElseThrow(),
                fitment,
                part,
                facts.of(PartDesign.class).get(part.fact().design()),
                SeePart.members(ledger, part.id()),
                running,
                worst,
                nearest);
    }
}
