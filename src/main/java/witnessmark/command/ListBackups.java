package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.port.LogbookCopies;
import witnessmark.logbook.port.LogbookCopies.Copy;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Moment;

/** Lists backups, the newest first, each checked. No logbook need be there any more. */
@Command(name = "backups", mixinStandardHelpOptions = true)
final class ListBackups implements Callable<Integer> {
    private static final String BY_NAME = "command.backups.byName";
    private static final String UNKNOWN = "command.backups.unknown";

    @Parameters(index = "0", arity = "0..1", paramLabel = "LOGBOOK", descriptionKey = "command.backups.logbook")
    private @Nullable Path logbook;

    @Option(names = "--in", paramLabel = "PLACE", descriptionKey = "command.backups.in")
    private @Nullable Path place;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    ListBackups(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "backups", json);
        LogbookCopies copies = tools.files().copies();
        List<Copy> listed = new ArrayList<>();
        if (place == null) {
            listed.addAll(copies.kept());
        } else {
            Outcome<List<Copy>> there = copies.in(place);
            if (!there.didWork()) {
                return answer.didNot(there.problems());
            }
            listed.addAll(there.orThrow());
        }
        String unsure = logbook == null ? "" : keepThoseOf(logbook, listed, copies);
        List<Listed> checked = listed.stream()
                .map(copy -> new Listed(copy, copies.check(copy.file())))
                .toList();
        if (json) {
            print(answer, checked);
        } else {
            say(answer, checked, unsure);
        }
        return unsure.equals(UNKNOWN) ? Exit.WORKED_EXCEPT : Exit.WORKED;
    }

    /**
     * Leaves those of one logbook: by its identity, or where the file is gone or cannot be read, by its name.
     *
     * @return the sentence that says how sure that is; empty when it is
     */
    private static String keepThoseOf(Path logbook, List<Copy> listed, LogbookCopies copies) {
        Optional<String> identity = copies.identity(logbook);
        if (identity.isPresent()) {
            listed.removeIf(copy -> !copy.logbook().equals(identity.get()));
            return "";
        }
        String name = copies.nameOf(logbook);
        Predicate<Copy> named = copy -> copies.nameOf(copy.file()).equals(name);
        if (listed.stream().noneMatch(named)) {
            return UNKNOWN;
        }
        listed.removeIf(named.negate());
        return BY_NAME;
    }

    /** A copy and what is wrong with it. */
    private record Listed(Copy copy, List<Problem> faults) {}

    private void say(Answer answer, List<Listed> listed, String unsure) {
        if (!unsure.isEmpty()) {
            answer.line(tools.texts().get(unsure, String.valueOf(logbook)));
        }
        answer.line(tools.texts().get("command.backups.heading", listed.size()));
        for (Listed each : listed) {
            Copy copy = each.copy();
            Moment run = copy.lastRun();
            answer.line(tools.texts()
                    .get(
                            "command.backups.line",
                            moment(copy.made()),
                            copy.name(),
                            copy.records(),
                            run == null
                                    ? tools.texts().get("command.backups.noRun")
                                    : tools.texts()
                                            .get(
                                                    "command.backups.lastRun",
                                                    tools.measures().fullMoment(run)),
                            tools.texts().get(each.faults().isEmpty() ? "command.backups.good" : "command.backups.bad"),
                            copy.file().toString()));
        }
        if (!listed.isEmpty()) {
            answer.line(tools.texts().get("command.backups.next", tools.called()));
        }
    }

    private String moment(Instant instant) {
        return tools.measures().fullMoment(Moment.of(instant, tools.zone()));
    }

    private void print(Answer answer, List<Listed> listed) {
        ObjectNode root = answer.node();
        ArrayNode all = root.putArray("backups");
        for (Listed each : listed) {
            Copy copy = each.copy();
            Instant saved = copy.saved();
            Moment run = copy.lastRun();
            ObjectNode node = all.addObject()
                    .put("file", copy.file().toString())
                    .put("logbook", copy.logbook())
                    .put("name", copy.name())
                    .put("made", copy.made().toString())
                    .put("entries", copy.records())
                    .put("good", each.faults().isEmpty())
                    .put("faults", each.faults().size());
            if (saved != null) {
                node.put("saved", saved.toString());
            }
            if (run != null) {
                node.put("lastRun", run.wallClock().toString());
            }
        }
        answer.print(root);
    }
}
