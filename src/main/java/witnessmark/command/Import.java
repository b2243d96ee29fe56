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

    @Option(names = "--take-folder-values", descriptionKey = "command.takefolder")
    private boolean takeFolderValues;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    Import(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.toWrite(new Answer(tools, "import", json), this::work);
    }

    private int work(Desk desk, Answer answer) {
        ImportSeason importing = new ImportSeason(desk, tools.folders());
        Outcome<ImportSeason.Reading> read = importing.read(folder);
        if (!read.didWork()) {
            return answer.didNot(read.problems());
        }
        ImportSeason.Reading reading = read.orThrow();
        ImportSeason.Plan plan = takeFolderValues ? reading.taking() : reading.keeping();
        answer.problems(plan.problems());
        int rows = plan.entries().size();
        if (plan.stops() && !keepGoodRows) {
            return answer.refuse(tools.texts().get("command.import.nothing", rows), Exit.DID_NOT);
        }
        if (plan.any()) {
            String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
            Outcome<Written> written = importing.write(
                    plan,
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
                    .put("same", reading.same())
                    .put("differing", reading.differing())
                    .put("leftOut", plan.leftOut())
                    .put("traces", plan.samples())
                    .put("photos", plan.photos()));
        } else {
            answer.line(tools.texts().get("command.import.done", rows, folder.toString()));
            sayTheRest(reading, plan, answer);
        }
        return plan.problems().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }

    private void sayTheRest(ImportSeason.Reading reading, ImportSeason.Plan plan, Answer answer) {
        if (plan.samples() > 0) {
            answer.line(tools.texts().get("command.import.samples", plan.samples()));
        }
        if (plan.photos() > 0) {
            answer.line(tools.texts().get("command.import.photos", plan.photos()));
        }
        if (reading.same() > 0) {
            answer.line(tools.texts().get("command.import.same", reading.same()));
        }
        if (reading.differing() > 0) {
            String key = takeFolderValues ? "command.import.overwritten" : "command.import.kept";
            answer.line(tools.texts().get(key, reading.differing()));
        }
        if (plan.leftOut() > 0) {
            answer.line(tools.texts().get("command.import.leftout", plan.leftOut()));
        }
    }
}
