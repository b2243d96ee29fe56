package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Look;
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.result.LookAt;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.NextRun;
import witnessmark.wording.LookWords;

/** What {@code due} says before the next run of each car, while an event runs. */
final class DueNext {
    private final Tools tools;
    private final List<NextRun> runs;
    private final LookWords words;

    DueNext(Tools tools, List<NextRun> runs) {
        this.tools = tools;
        this.runs = runs;
        this.words = new LookWords(tools.texts(), tools.measures());
    }

    /** A heading for each car, and under it what is to be looked at, ticked where somebody did; none without an event. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (NextRun run : runs) {
            PlannedRun planned = run.planned();
            lines.add(tools.texts()
                    .get(
                            "command.due.next",
                            run.name(),
                            planned.name(),
                            tools.measures().date(planned.day()),
                            planned.out() == null
                                    ? tools.texts().get("command.due.next.noTime")
                                    : tools.measures().time(planned.out()),
                            run.open()));
            run.looks().forEach(look -> lines.add("  " + line(look)));
        }
        return lines;
    }

    private String line(LookAt look) {
        return look.done() == null
                ? tools.texts().get("command.due.look", words.what(look))
                : tools.texts()
                        .get(
                                "command.due.looked",
                                words.what(look),
                                words.done(look.done().fact()));
    }

    /**
     * The same as values; moments as ISO 8601.
     *
     * @param mark writes a mark in a node
     */
    void json(ObjectNode root, BiConsumer<ObjectNode, MarkOn> mark) {
        ArrayNode all = root.putArray("beforeTheNextRun");
        for (NextRun run : runs) {
            ObjectNode node = all.addObject()
                    .put("car", run.name())
                    .put("engine", run.engine())
                    .put("run", run.planned().name())
                    .put("day", run.planned().day().toString())
                    .put(
                            "out",
                            run.planned().out() == null
                                    ? null
                                    : run.planned().out().toString());
            ArrayNode looks = node.putArray("looks");
            run.looks().forEach(look -> look(looks.addObject(), look));
            ArrayNode marks = node.putArray("marks");
            run.marks().forEach(on -> mark.accept(marks.addObject(), on));
        }
    }

    private static void look(ObjectNode node, LookAt look) {
        @Nullable Look done = look.done() == null ? null : look.done().fact();
        node.put("what", look.what())
                .put("because", look.reason().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .put("done", done != null)
                .put("at", done == null ? null : done.at().text())
                .put("by", done == null ? null : done.by())
                .put("seen", done == null ? null : done.words());
    }
}
