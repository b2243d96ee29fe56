package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.outcome.ProblemKind;

/** An engine that ran with a needed position empty is asked about. */
final class NeededChecks {
    private final Surroundings around;
    private final Clashes clashes;
    private final Map<Id<EngineDesign>, List<Entry<Position>>> needed = new HashMap<>();
    private final Map<Id<Engine>, Map<Id<Position>, Spans<Fitment>>> fitted = new HashMap<>();

    NeededChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
        around.facts
                .of(Position.class)
                .inForce()
                .sorted(Comparator.comparingInt(position -> position.fact().ordinal()))
                .forEach(this::addNeeded);
    }

    void check(Entry<Run> run) {
        Id<Engine> engine = run.fact().engine();
        Id<EngineDesign> design = around.design(engine);
        Map<Id<Position>, Spans<Fitment>> there =
                fitted.computeIfAbsent(engine, id -> around.positions(around.inEngines.of(id)));
        List<String> empty = new ArrayList<>();
        for (Entry<Position> position : needed(design)) {
            Spans<Fitment> spans = there.get(position.id());
            if (spans == null || !spans.covers(run.fact().start().epochMillis())) {
                empty.add(position.fact().name());
            }
        }
        if (!empty.isEmpty()) {
            clashes.add(run, ProblemKind.ENGINE_INCOMPLETE, around.names.of(engine), List.copyOf(empty));
        }
    }

    private List<Entry<Position>> needed(@Nullable Id<EngineDesign> design) {
        return design == null ? List.of() : needed.getOrDefault(design, List.of());
    }

    private void addNeeded(Entry<Position> position) {
        Id<EngineDesign> design = position.fact().design();
        if (design != null && position.fact().needed()) {
            needed.computeIfAbsent(design, id -> new ArrayList<>()).add(position);
        }
    }
}
