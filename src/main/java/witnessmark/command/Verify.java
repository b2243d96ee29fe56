package witnessmark.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

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
        return open.with(new Answer(tools, "verify", json), null, this::work);
    }

    private int work(Desk desk, Answer answer) {
        if (acceptMissing) {
            desk.logbook().acceptMissing();
        }
        boolean missing = !acceptMissing && answer.said(ProblemKind.CHANGES_MISSING);
        List<Problem> found = desk.logbook().verifyWithPhotos();
        int amendments = desk.logbook().history().size();
        answer.problems(found);
        if (json) {
            answer.print(answer.node()
                    .put("amendments", amendments)
                    .put("problems", found.size())
                    .put("asWritten", found.isEmpty())
                    .put("complete", !missing));
        } else if (found.isEmpty()) {
            answer.line(tools.texts().get(missing ? "command.verify.whole" : "command.verify.done", amendments));
        }
        if (!found.isEmpty()) {
            return Exit.DID_NOT;
        }
        return missing ? Exit.WORKED_EXCEPT : Exit.WORKED;
    }
}
