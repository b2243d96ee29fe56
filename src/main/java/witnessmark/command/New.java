package witnessmark.command;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.StartLogbook;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Makes an empty logbook. */
@Command(name = "new", mixinStandardHelpOptions = true)
final class New implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "LOGBOOK", descriptionKey = "command.logbook")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path path;

    @Option(names = "--team", paramLabel = "NAME", descriptionKey = "command.team")
    private @Nullable String team;

    @Option(names = "--zone", paramLabel = "ZONE", descriptionKey = "command.zone")
    private @Nullable String zone;

    @Option(names = "--currency", paramLabel = "CODE", descriptionKey = "command.currency", defaultValue = "EUR")
    @SuppressWarnings("NullAway.Init") // has a default
    private String currency;

    @Option(names = "--who", paramLabel = "NAME", descriptionKey = "command.who")
    private @Nullable String who;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    New(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "new", json);
        if (zone != null && !ZoneId.getAvailableZoneIds().contains(zone)) {
            return answer.didNot(List.of(Problem.of(
                    ProblemKind.CANNOT_READ, tools.texts().get("command.zone.word"), zone, "Europe/London")));
        }
        Outcome<Logbook> started = team == null ? tools.files().create(path) : start(team);
        if (!started.didWork()) {
            return answer.didNot(started.problems());
        }
        started.orThrow().close();
        if (json) {
            answer.print(answer.node().put("logbook", path.toString()).put("team", team == null ? "" : team));
        } else {
            answer.line(tools.texts().get("command.new.done", path.toString(), tools.called()));
        }
        return Exit.WORKED;
    }

    private Outcome<Logbook> start(String name) {
        return new StartLogbook(tools.files(), tools.ids())
                .start(
                        path,
                        name,
                        zone == null ? tools.zone() : ZoneId.of(zone),
                        currency,
                        who == null ? tools.person() : who,
                        tools.texts().get("command.why.new"));
    }
}
