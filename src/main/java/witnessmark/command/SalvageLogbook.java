package witnessmark.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.port.LogbookCopies.SalvageWords;
import witnessmark.logbook.port.LogbookCopies.Salvaged;
import witnessmark.outcome.Outcome;

/** Reads what can be read of a damaged logbook into a new one, and lists the rest. */
@Command(name = "salvage", mixinStandardHelpOptions = true)
final class SalvageLogbook implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "LOGBOOK", descriptionKey = "command.salvage.from")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path from;

    @Parameters(index = "1", paramLabel = "NEW", descriptionKey = "command.salvage.to")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path to;

    @Option(names = "--who", paramLabel = "NAME", descriptionKey = "command.who")
    private @Nullable String who;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    SalvageLogbook(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "salvage", json);
        String name = String.valueOf(from.getFileName());
        SalvageWords words = new SalvageWords(
                tools.texts().get("keeping.salvage.who", who == null ? tools.person() : who),
                tools.texts().get("keeping.salvage.why", name),
                tools.texts().get("keeping.salvage.doubtful", name));
        Outcome<Salvaged> outcome = tools.files().copies().salvage(from, to, words);
        if (!outcome.didWork()) {
            return answer.didNot(outcome.problems());
        }
        Salvaged salvaged = outcome.orThrow();
        answer.problems(salvaged.left());
        if (json) {
            answer.print(answer.node()
                    .put("logbook", salvaged.logbook().toString())
                    .put("whole", salvaged.whole())
                    .put("doubtful", salvaged.doubtful()));
        } else {
            answer.line(tools.texts()
                    .get(
                            "keeping.salvage.done",
                            salvaged.whole(),
                            salvaged.logbook().toString()));
            if (salvaged.doubtful() > 0) {
                answer.line(tools.texts().get("keeping.salvage.struck", salvaged.doubtful()));
            }
        }
        return salvaged.left().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }
}
