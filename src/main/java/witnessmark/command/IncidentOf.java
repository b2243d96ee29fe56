package witnessmark.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.proof.SeeCase;
import witnessmark.outcome.Outcome;

/** One incident: what happened, what was found, causes, tests and actions, and what it cost. */
@Command(name = "incident", mixinStandardHelpOptions = true)
final class IncidentOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "INCIDENT", descriptionKey = "command.incident.mark")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String mark;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    IncidentOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "incident", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        Outcome<IncidentPage> found = NamedIncident.of(answer, view, mark);
        if (!found.didWork()) {
            return answer.didNot(found.problems());
        }
        IncidentPage page = found.orThrow();
        CaseSeen seen = SeeCase.of(view, page.incident());
        if (json) {
            ObjectNode root = answer.node().put("asOf", view.day().toString());
            new IncidentMoney(tools).put(root, view.facts(), page);
            new CaseText(tools).put(root, view, page, seen);
            answer.print(root);
        } else {
            new CaseText(tools).print(answer::line, view, page, seen);
            new IncidentMoney(tools).print(answer::line, view.facts(), page);
        }
        return Exit.WORKED;
    }
}
