package witnessmark.desktop.start;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** What the page of a new logbook asks, suggests and refuses. */
final class StartLogbookModel {
    /** Among the settings, {@link Units#text()}. */
    static final String UNITS = "units";

    private final Texts texts;
    private final Problems problems;
    private final Path folder;
    private boolean pathChosen;

    /** What is asked. */
    enum Field {
        TEAM,
        FILE
    }

    /** Why it cannot be begun yet. */
    record Stop(Field field, String words) {}

    /** @param folder where the file is kept unless another place is chosen */
    StartLogbookModel(Texts texts, Problems problems, Path folder) {
        this.texts = texts;
        this.problems = problems;
        this.folder = folder;
    }

    /** Where to keep the file of the team, until another place was chosen: then nothing is suggested. */
    Optional<String> suggestion(String team) {
        return pathChosen
                ? Optional.empty()
                : Optional.of(folder.resolve(LogbookNames.forTeam(team)).toString());
    }

    /** The place was typed or chosen, and is suggested no more. */
    void pathChosen() {
        pathChosen = true;
    }

    List<Stop> check(String team, String file) {
        List<Stop> stops = new ArrayList<>();
        if (team.isBlank()) {
            stops.add(new Stop(Field.TEAM, texts.get("beforewego.start.team.needed")));
        }
        if (path(file).isEmpty()) {
            stops.add(new Stop(Field.FILE, texts.get("beforewego.start.file.needed")));
        }
        return stops;
    }

    /** The file meant, when the text is one. */
    Optional<Path> path(String file) {
        if (file.isBlank()) {
            return Optional.empty();
        }
        try {
            Path path = LogbookNames.ended(Path.of(file.strip()));
            return Optional.of(path.isAbsolute() ? path : folder.resolve(path));
        } catch (InvalidPathException notAPath) {
            return Optional.empty();
        }
    }

    /** Where a refusal belongs, and its words. */
    Stop refused(Problem problem) {
        Field field = problem.kind() == ProblemKind.NEEDED ? Field.TEAM : Field.FILE;
        return new Stop(field, problems.note(problem));
    }

    /** The units most people of a country read. */
    static Units usual(Locale country) {
        return country.getCountry().equals("US") ? Units.IMPERIAL : Units.METRIC;
    }

    String words(Units units) {
        return texts.get(
                units.equals(Units.IMPERIAL) ? "beforewego.start.units.imperial" : "beforewego.start.units.metric");
    }

    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        for (int i = 1; texts.has("beforewego.start.caution." + i); i++) {
            cautions.add(texts.get("beforewego.start.caution." + i));
        }
        return cautions;
    }
}
