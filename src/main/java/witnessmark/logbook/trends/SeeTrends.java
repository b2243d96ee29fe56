package witnessmark.logbook.trends;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.study.Trends;
import witnessmark.study.result.KindTrends;

/** Sees where the readings of engines, and of the parts in them, are going, as of the day looked at. Reads only. */
public final class SeeTrends {
    private SeeTrends() {}

    /** Of one engine: what asks for most first. */
    public static List<KindTrends> of(View view, Id<Engine> engine) {
        return new Trends(view.ledger()).ofEngine(engine);
    }

    /** Of every engine of which something was read, by number. */
    public static List<EngineTrends> all(View view) {
        Trends trends = new Trends(view.ledger());
        List<EngineTrends> all = new ArrayList<>();
        view.facts()
                .of(Engine.class)
                .inForce()
                .sorted(Comparator.comparing(engine -> engine.fact().number()))
                .forEach(engine -> add(all, engine, trends.ofEngine(engine.id())));
        return all;
    }

    private static void add(List<EngineTrends> into, Entry<Engine> engine, List<KindTrends> kinds) {
        if (!kinds.isEmpty()) {
            into.add(new EngineTrends(engine, kinds));
        }
    }
}
