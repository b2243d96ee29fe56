package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.standing.EngineWithoutLimit;
import witnessmark.logbook.standing.PartWithoutLimit;
import witnessmark.logbook.standing.Standing;
import witnessmark.wording.StandWords;

/** What goes and has nothing recorded it could be held against: not known, as the window marks it, and never left out. */
final class DueNotKnown {
    private final Tools tools;
    private final List<EngineWithoutLimit> engines;
    private final List<PartWithoutLimit> parts;

    DueNotKnown(Tools tools, Standing standing) {
        this.tools = tools;
        this.engines = standing.enginesWithoutLimit();
        this.parts = standing.goingWithoutLimit();
    }

    /** Engines one a line, parts by their number alone; nothing where there are none. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (!engines.isEmpty()) {
            lines.add(tools.texts().get("command.due.nothing", engines.size()));
        }
        String state = new StandWords(tools.texts(), tools.measures()).state(MarkState.NOT_KNOWN);
        for (EngineWithoutLimit engine : engines) {
            String car = engine.car() == null ? "" : tools.texts().get("command.due.car", engine.car());
            lines.add("  %-9s %-26s %s".formatted(state, engine.number(), car).stripTrailing());
        }
        if (!parts.isEmpty()) {
            lines.add(tools.texts().get("command.due.noLimit", parts.size()));
        }
        return lines;
    }

    /** Marks as the others. */
    void json(ArrayNode marks) {
        engines.forEach(engine -> add(marks, null, engine.number(), engine.car()));
        parts.forEach(part -> add(marks, part.mark(), part.engine(), part.car()));
    }

    private static void add(ArrayNode marks, @Nullable String part, @Nullable String engine, @Nullable String car) {
        marks.addObject()
                .put("state", "not known")
                .put("must", false)
                .put("part", part)
                .put("engine", engine)
                .put("car", car)
                .put("reason", "no limit recorded");
    }
}
