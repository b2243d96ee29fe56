package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.domain.history.Damage;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.HitWords;

/**
 * Checks that a logbook is as it was written, and has all that was seen in it on this computer. A file that is whole and
 * lacks something is neither good nor damaged, so it has an exit code of its own.
 */
@Command(name = "verify", mixinStandardHelpOptions = true)
final class Verify implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    @Option(names = "--accept-missing", descriptionKey = "command.verify.acceptMissing")
    private boolean acceptMissing;

    private final Tools tools;

    Verify(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "verify", json);
        Outcome<Logbook> opened = tools.files().open(open.path());
        if (opened.didWork() || !isDamaged(opened.problems())) {
            return open.with(opened, answer, this::work);
        }
        answer.problems(opened.problems());
        ObjectNode node = answer.node().put("asWritten", false);
        tellHit(answer, node);
        if (json) {
            answer.print(node, false);
        }
        return Exit.DID_NOT;
    }

    private int work(Desk desk, Answer answer) {
        if (acceptMissing) {
            desk.logbook().acceptMissing();
        }
        boolean missing = !acceptMissing && answer.said(ProblemKind.CHANGES_MISSING);
        List<Problem> found = desk.logbook().verifyWithPhotos();
        int amendments = desk.logbook().history().size();
        answer.problems(found);
        ObjectNode node = answer.node()
                .put("amendments", amendments)
                .put("problems", found.size())
                .put("asWritten", found.isEmpty())
                .put("complete", !missing);
        if (isDamaged(found)) {
            tellHit(answer, node);
        }
        if (json) {
            answer.print(node);
        } else if (found.isEmpty()) {
            answer.line(tools.texts().get(missing ? "command.verify.whole" : "command.verify.done", amendments));
        }
        if (!found.isEmpty()) {
            return Exit.DID_NOT;
        }
        return missing ? Exit.WORKED_EXCEPT : Exit.WORKED;
    }

    private static boolean isDamaged(List<Problem> found) {
        return found.stream()
                .anyMatch(problem ->
                        problem.kind() == ProblemKind.LOGBOOK_DAMAGED || problem.kind() == ProblemKind.LOGBOOK_ALTERED);
    }

    /** A file that is damaged is looked through for which records are hit. */
    private void tellHit(Answer answer, ObjectNode node) {
        Outcome<Damage> look = tools.files().copies().look(open.path());
        if (!json) {
            new HitWords(tools.texts(), tools.words()).of(look).forEach(answer::line);
        } else if (look.didWork()) {
            Damage damage = look.orThrow();
            node.put("whole", damage.whole()).put("changesUnreadable", damage.unreadable());
            ArrayNode hits = node.putArray("hit");
            damage.hits()
                    .forEach(hit -> hits.addObject()
                            .put("table", hit.table())
                            .put("name", hit.name())
                            .put("left", hit.left().name()));
        }
    }
}
