package witnessmark.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.Desk;
import witnessmark.logbook.ExportSeason;
import witnessmark.outcome.Outcome;

/** Writes a logbook to a season folder. */
@Command(name = "export", mixinStandardHelpOptions = true)
final class Export implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "FOLDER", descriptionKey = "command.folder")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path folder;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    Export(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "export", json), null, this::work);
    }

    private int work(Desk desk, Answer answer) {
        Outcome<Integer> written = new ExportSeason(tools.folders()).export(desk, folder);
        if (!written.didWork()) {
            return answer.didNot(written.problems());
        }
        answer.problems(written.problems());
        if (json) {
            answer.print(answer.node().put("rows", written.orThrow()).put("folder", folder.toString()));
        } else {
            answer.line(tools.texts().get("command.export.done", written.orThrow(), folder.toString()));
        }
        return written.problems().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }
}
