package witnessmark.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.Desk;
import witnessmark.logbook.ImportSeason;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** Takes a season folder into a logbook. */
@Command(name = "import", mixinStandardHelpOptions = true)
final class Import implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "FOLDER", descriptionKey = "command.folder")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path folder;

    @Option(names = "--keep-good-rows", descriptionKey = "command.keepgood")
    private boolean keepGoodRows;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    Import(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "import", json), null, this::work);
    }

    private int work(Desk desk, Answer answer) {
        ImportSeason importing = new ImportSeason(desk, tools.folders());
        Outcome<ImportSeason.Reading> read = importing.read(folder);
        if (!read.didWork()) {
            return answer.didNot(read.problems());
        }
        ImportSeason.Reading reading = read.orThrow();
        answer.problems(reading.problems());
        if (reading.stops() && !keepGoodRows) {
            return answer.refuse(
                    tools.texts()
                            .get("command.import.nothing", reading.entries().size()),
                    Exit.DID_NOT);
        }
        int rows = reading.entries().size();
        if (rows > 0) {
            String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
            Outcome<Written> written = importing.write(
                    reading,
                    keepGoodRows,
                    tools.texts().get("command.who.import", desk.who(), name),
                    tools.texts().get("command.why.import", name));
            if (!written.didWork()) {
                return answer.didNot(written.problems());
            }
        }
        if (json) {
            answer.print(answer.node()
                    .put("rows", rows)
                    .put("leftOut", reading.problems().size()));
        } else {
            answer.line(tools.texts().get("command.import.done", rows, folder.toString()));
        }
        return reading.problems().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }
}
