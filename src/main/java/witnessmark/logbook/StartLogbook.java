package witnessmark.logbook;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Person;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookFiles;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;

/** Starts a team's own logbook: the file, the team, the person who writes. */
public final class StartLogbook {
    /** Above these an engine counts as running, loaded, at high speed, until the team says otherwise. */
    private static final EngineSpeed RUNNING = new EngineSpeed(500);

    private static final EngineSpeed LOADED = new EngineSpeed(3000);
    private static final EngineSpeed HIGH = new EngineSpeed(7500);

    private final LogbookFiles files;
    private final Ids ids;

    public StartLogbook(LogbookFiles files, Ids ids) {
        this.files = files;
        this.ids = ids;
    }

    /**
     * @param path where to keep the file; there must be none
     * @param team the team's name
     * @param zone the zone whose days the team counts in
     * @param currency home currency, ISO 4217
     * @param who who writes
     * @param why the words for the history
     */
    public Outcome<Logbook> start(Path path, String team, ZoneId zone, String currency, String who, String why) {
        if (team.isBlank()) {
            return Outcome.didNot(Problem.of(ProblemKind.NEEDED, "team"));
        }
        Team fact = new Team(team.strip(), zone, currency, RUNNING, LOADED, HIGH);
        Person person = new Person(who, "");
        return files.create(path).then(book -> {
            Outcome<Written> written = book.write(new Change(
                    who,
                    why,
                    List.of(
                            new Entry<>(ids.<Team>next(), fact, Standing.IN_FORCE, null, 1),
                            new Entry<>(ids.<Person>next(), person, Standing.IN_FORCE, null, 1))));
            if (!written.didWork()) {
                book.close();
            }
            return written.map(done -> book);
        });
    }
}
