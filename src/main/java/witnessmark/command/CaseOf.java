package witnessmark.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.outcome.Outcome;

/** Writes one incident for somebody outside the team, without names and money. */
@Command(name = "case", mixinStandardHelpOptions = true)
final class CaseOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "INCIDENT", descriptionKey = "command.case.incident")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String mark;

    @Option(names = "--print", required = true, paramLabel = "FILE", descriptionKey = "command.case.print")
    @SuppressWarnings("NullAway.Init") // a required option
    private Path print;

    @Option(names = "--with-words", descriptionKey = "command.case.words")
    private boolean words;

    @Option(names = "--without-photos", descriptionKey = "command.case.photos")
    private boolean noPhotos;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    CaseOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "case", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        Outcome<IncidentPage> found = NamedIncident.of(answer, view, mark);
        if (!found.didWork()) {
            return answer.didNot(found.problems());
        }
        return answer.wrote(
                tools.caseSheet()
                        .write(
                                desk,
                                new WriteCaseSheet.Asked(
                                        found.orThrow().incident().id(), words, !noPhotos),
                                print),
                "pages",
                "command.cost.printed",
                print);
    }
}
