package witnessmark.command;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Today;
import witnessmark.outcome.Outcome;

/** The logbook a command works on, and who works. */
final class Open {
    @Parameters(index = "0", paramLabel = "LOGBOOK", descriptionKey = "command.logbook")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path path;

    @Option(names = "--who", paramLabel = "NAME", descriptionKey = "command.who")
    private @Nullable String who;

    /**
     * Opens the logbook, works on it, and closes it whatever happens.
     *
     * @param asOf the day to look at it as of, or null for today
     */
    int with(Tools tools, @Nullable LocalDate asOf, ToIntFunction<Desk> work) {
        Outcome<Logbook> opened = tools.files().open(path);
        Answer answer = new Answer(tools);
        if (!opened.didWork()) {
            return answer.didNot(opened.problems());
        }
        try (Logbook logbook = opened.orThrow()) {
            answer.problems(opened.problems());
            Desk desk = new Desk(logbook, today(tools, logbook), who == null ? tools.person() : who);
            desk.lookAsOf(asOf);
            return work.applyAsInt(desk);
        }
    }

    Path path() {
        return path;
    }

    private static Today today(Tools tools, Logbook logbook) {
        return new Today() {
            @Override
            public LocalDate day() {
                return LocalDate.ofInstant(now(), Desk.zoneOf(logbook.facts()));
            }

            @Override
            public Instant now() {
                return tools.clock().instant();
            }
        };
    }
}
