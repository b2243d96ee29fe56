package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import witnessmark.logbook.proof.SeeCases;
import witnessmark.outcome.Outcome;
import witnessmark.study.result.InCommon;
import witnessmark.wording.CaseWords;

/** What incidents have in common and what only one of them had; of one alone, which other engines carry what failed. */
@Command(name = "common", mixinStandardHelpOptions = true)
final class CommonTo implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "INCIDENT", descriptionKey = "command.common.incidents")
    private List<String> marks = new ArrayList<>();

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;
    private final CaseWords words;

    CommonTo(Tools tools) {
        this.tools = tools;
        this.words = new CaseWords(tools.texts(), tools.measures());
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "common", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        List<Entry<Incident>> incidents = new ArrayList<>();
        for (String mark : marks.stream().distinct().toList()) {
            Outcome<Entry<Incident>> found = answer.named(view, Incident.class, mark);
            if (!found.didWork()) {
                return answer.didNot(found.problems());
            }
            incidents.add(found.orThrow());
        }
        ObjectNode node = answer.node().put("asOf", view.day().toString());
        if (incidents.size() > 1) {
            InCommon common = SeeCases.common(view, incidents);
            print(answer, common);
            put(node, common);
        }
        ArrayNode across = node.putArray("otherEngines");
        for (Entry<Incident> incident : incidents) {
            across(view, incident, incidents.size() == 1 ? answer : null, across);
        }
        if (json) {
            answer.print(node);
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, InCommon common) {
        if (json) {
            return;
        }
        answer.line(tools.texts().get("command.common.shared"));
        common.shared().forEach(each -> answer.line("  " + words.alike(common, each)));
        for (Entry<Incident> incident : common.incidents()) {
            answer.line(tools.texts().get("command.common.only", incident.fact().mark()));
            common.onlyIn(incident)
                    .forEach(each -> answer.line(
                            "  " + tools.texts().get("proof.alike", words.aspect(each.aspect()), each.what())));
        }
    }

    private void put(ObjectNode node, InCommon common) {
        ArrayNode alike = node.putArray("alike");
        common.alike().forEach(each -> {
            ObjectNode one = alike.addObject()
                    .put("aspect", each.aspect().name().toLowerCase(Locale.ROOT))
                    .put("what", each.what())
                    .put("all", each.in().size() == common.incidents().size());
            ArrayNode in = one.putArray("in");
            each.in().forEach(incident -> in.add(incident.fact().mark()));
        });
    }

    private void across(View view, Entry<Incident> incident, @Nullable Answer answer, ArrayNode into) {
        if (answer != null && !json) {
            answer.line(
                    tools.texts().get("command.common.across", incident.fact().mark()));
        }
        SeeCases.across(view, incident).forEach(each -> {
            if (answer != null && !json) {
                answer.line("  " + words.across(each));
            }
            ObjectNode one = into.addObject()
                    .put("incident", incident.fact().mark())
                    .put("engine", each.engine().fact().number())
                    .put("aspect", each.aspect().name().toLowerCase(Locale.ROOT))
                    .put("what", each.what())
                    .put("ranHours", each.ran() == null ? null : each.ran().millis() / 3_600_000.0);
            ArrayNode parts = one.putArray("parts");
            each.parts().forEach(part -> parts.add(part.fact().mark()));
        });
    }
}
