package witnessmark.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.port.LogbookCopies;
import witnessmark.logbook.port.LogbookCopies.Restored;
import witnessmark.outcome.Outcome;

/** Brings a backup back, as a new file or in the place of a logbook, which is kept under another name. */
@Command(name = "restore", mixinStandardHelpOptions = true)
final class Restore implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "BACKUP", descriptionKey = "command.restore.copy")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path copy;

    @Parameters(index = "1", paramLabel = "LOGBOOK", descriptionKey = "command.restore.to")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path to;

    @Option(names = "--replace", descriptionKey = "command.restore.replace")
    private boolean replace;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    Restore(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "restore", json);
        LogbookCopies copies = tools.files().copies();
        Outcome<Restored> outcome = replace ? copies.replace(copy, to) : copies.restore(copy, to);
        if (!outcome.didWork()) {
            return answer.didNot(outcome.problems());
        }
        Restored restored = outcome.orThrow();
        Path before = restored.before();
        if (json) {
            ObjectNode node =
                    answer.node().put("logbook", restored.logbook().toString()).put("digest", restored.digest());
            if (before != null) {
                node.put("before", before.toString());
            }
            answer.print(node);
        } else {
            answer.line(
                    tools.texts().get("command.restore.done", restored.logbook().toString(), restored.digest()));
            if (before != null) {
                answer.line(tools.texts().get("command.restore.before", before.toString()));
            }
        }
        return Exit.WORKED;
    }
}
