package witnessmark.ledger;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Position;
import witnessmark.domain.Table;
import witnessmark.quantity.Moment;

/** Which positions are filled, and which are not. */
final class Filled {
    private Filled() {}

    /**
     * Position by position what was fitted at a moment, in the order a build is read out; of two fitments that
     * contradict each other the later one.
     */
    static Map<Id<Position>, Entry<Fitment>> fitted(Facts facts, List<Entry<Fitment>> fitments, Moment at) {
        Map<Id<Position>, Entry<Fitment>> there = new TreeMap<>(inTurn(facts));
        for (Entry<Fitment> entry : fitments) {
            if (Fitted.covers(entry.fact().from(), entry.fact().to(), at)) {
                there.put(entry.fact().position(), entry);
            }
        }
        return Collections.unmodifiableMap(new LinkedHashMap<>(there));
    }

    /** The needed positions of an engine's design that are not among those filled. */
    static List<Entry<Position>> empty(Facts facts, Id<Engine> engine, Set<Id<Position>> filled) {
        return facts.of(Engine.class)
                .find(engine)
                .map(entry -> entry.fact().design())
                .map(design -> facts.of(Position.class)
                        .inForce()
                        .filter(position -> design.equals(position.fact().design()))
                        .filter(position -> position.fact().needed() && !filled.contains(position.id()))
                        .sorted(Comparator.comparing(Entry::id, inTurn(facts)))
                        .toList())
                .orElse(List.of());
    }

    private static Comparator<Id<Position>> inTurn(Facts facts) {
        Table<Position> positions = facts.of(Position.class);
        return Comparator.<Id<Position>>comparingInt(id ->
                        positions.find(id).map(entry -> entry.fact().ordinal()).orElse(Integer.MAX_VALUE))
                .thenComparing(Comparator.naturalOrder());
    }
}
