package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.proof.SeeWay;
import witnessmark.outcome.Outcome;
import witnessmark.study.result.WayTo;
import witnessmark.wording.WayLines;
import witnessmark.wording.WayWords;

/** An engine's way up to a failure, day by day: last good look, what was changed, first signs, the failure. */
@Command(name = "way", mixinStandardHelpOptions = true)
final class WayOf implements Callable<Integer> {
    private static final double PER_HOUR = 3_600_000.0;

    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "INCIDENT", descriptionKey = "command.case.incident")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String mark;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;
    private final WayWords words;

    WayOf(Tools tools) {
        this.tools = tools;
        this.words = new WayWords(tools.texts(), tools.measures());
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "way", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        Outcome<IncidentPage> found = NamedIncident.of(answer, view, mark);
        if (!found.didWork()) {
            return answer.didNot(found.problems());
        }
        Entry<Incident> incident = found.orThrow().incident();
        Optional<WayTo> way = SeeWay.of(view, incident);
        WayLines lines = words.lines(view.facts(), way);
        if (json) {
            answer.print(asJson(answer, view, incident, way, lines));
        } else {
            print(answer, incident.fact(), lines);
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, Incident incident, WayLines lines) {
        if (lines.heading().isEmpty()) {
            answer.line(tools.texts().get("command.way.none", incident.mark()));
            return;
        }
        answer.line(tools.texts().get("command.way.heading", lines.heading(), incident.mark(), incident.title()));
        answer.line(lines.said());
        lines.points().forEach(point -> answer.line("  " + point.whole()));
    }

    private ObjectNode asJson(Answer answer, View view, Entry<Incident> incident, Optional<WayTo> way, WayLines lines) {
        ObjectNode root = answer.node()
                .put("asOf", view.day().toString())
                .put("incident", incident.fact().mark())
                .put("engine", way.map(to -> to.engine().fact().number()).orElse(null));
        if (way.isEmpty()) {
            root.put(
                    "lacks",
                    tools.texts().get("command.way.none", incident.fact().mark()));
        }
        root.put(
                "hoursSince",
                way.map(to -> to.rebuilt() == null ? "first entry" : "rebuilt").orElse(null));
        root.put(
                "lastGood",
                way.flatMap(WayTo::lastGood)
                        .map(good -> good.at().day().toString())
                        .orElse(null));
        ArrayNode days = root.putArray("days");
        List<WayTo.Point> points = way.map(WayTo::points).orElse(List.of());
        for (int i = 0; i < points.size(); i++) {
            WayTo.Point point = points.get(i);
            ObjectNode day = days.addObject()
                    .put("day", point.at().day().toString())
                    .put("hours", point.hours().millis() / PER_HOUR)
                    .put("hoursBefore", point.before().millis() / PER_HOUR)
                    .put("atLeast", point.atLeast());
            ArrayNode kinds = day.putArray("kinds");
            point.steps().forEach(step -> kinds.add(step.kind().name().toLowerCase(Locale.ROOT)));
            day.put("said", lines.points().get(i).whole());
        }
        return root;
    }
}
