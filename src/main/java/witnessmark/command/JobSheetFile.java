package witnessmark.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Outcome;

/** Writes everything to be done as a PDF to print, with boxes to tick. */
@Command(name = "jobsheet", mixinStandardHelpOptions = true)
final class JobSheetFile implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "command.jobsheet.file")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path file;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    JobSheetFile(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "jobsheet", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        Outcome<Integer> written = tools.jobSheet().write(desk, file);
        if (!written.didWork()) {
            return answer.didNot(written.problems());
        }
        if (json) {
            answer.print(answer.node().put("pages", written.orThrow()).put("file", file.toString()));
        } else {
            answer.line(tools.texts().get("command.jobsheet.done", written.orThrow(), file.toString()));
        }
        return Exit.WORKED;
    }
}
