package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.dyno.DynoFile;
import witnessmark.logbook.dyno.SeeDyno;
import witnessmark.logbook.dyno.SeeDyno.EngineDyno;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What the dyno sheets of an engine come to; of every engine when none is named; or of a text file by itself. */
@Command(name = "dyno", mixinStandardHelpOptions = true)
final class DynoOf implements Callable<Integer> {
    private static final long LARGEST = 1_000_000;
    private static final byte[] LOGBOOK = "SQLite format 3".getBytes(StandardCharsets.US_ASCII);

    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", arity = "0..1", paramLabel = "ENGINE", descriptionKey = "command.dyno.engine")
    private @Nullable String engine;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    DynoOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "dyno", json);
        Path path = open.path();
        if (engine == null && !Files.exists(path) && !path.toString().endsWith(".witness")) {
            return answer.didNot(List.of(Problem.of(ProblemKind.NO_SUCH_FILE, path.toString())));
        }
        return engine == null && isText(path) ? file(answer, path) : open.with(answer, asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        List<EngineDyno> sheets;
        if (engine == null) {
            sheets = SeeDyno.all(view);
        } else {
            Outcome<Entry<Engine>> found = answer.named(view, Engine.class, engine);
            if (!found.didWork()) {
                return answer.didNot(found.problems());
            }
            sheets = List.of(new EngineDyno(
                    found.orThrow(), SeeDyno.of(view, found.orThrow().id())));
        }
        DynoText text = new DynoText(tools, sheet -> SeeDyno.day(view, sheet));
        if (json) {
            answer.print(text.asJson(answer.node().put("asOf", view.day().toString()), sheets));
        } else {
            text.print(answer::line, sheets, engine != null);
        }
        return Exit.WORKED;
    }

    /** A file that begins like no logbook. What cannot be opened is left to who opens logbooks. */
    private static boolean isText(Path file) {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] first = in.readNBytes(LOGBOOK.length);
            boolean plain = file.toString().endsWith(".txt") || file.toString().endsWith(".csv");
            return plain
                    || first.length > 0
                            && !Arrays.equals(first, LOGBOOK)
                            && !file.toString().endsWith(".witness");
        } catch (IOException unreadable) {
            return false;
        }
    }

    private int file(Answer answer, Path file) {
        List<String> lines;
        try {
            if (Files.size(file) > LARGEST) {
                return answer.refuse(tools.texts().get("command.dyno.large", file), Exit.DID_NOT);
            }
            lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            return answer.didNot(
                    List.of(Problem.of(ProblemKind.CANNOT_READ_FILE, file.toString(), String.valueOf(e.getMessage()))));
        }
        DynoFile.Read read = DynoFile.of(lines);
        answer.problems(read.problems());
        if (read.answer().isEmpty()) {
            return answer.refuse(tools.texts().get("command.dyno.empty", file), Exit.DID_NOT);
        }
        DynoText text = new DynoText(tools, sheet -> null);
        if (json) {
            ObjectNode root = answer.node();
            ArrayNode unread = root.putArray("unread");
            read.problems().stream()
                    .filter(problem -> problem.kind() == ProblemKind.DYNO_LINE_UNREAD)
                    .map(Problem::facts)
                    .forEach(line -> unread.addObject()
                            .put("line", (Integer) line.get(0))
                            .put("text", (String) line.get(1))
                            .put("example", (String) line.get(2)));
            text.put(root.putObject("sheet"), read.answer().get());
            answer.print(root, read.asAsked());
        } else {
            text.alone(answer::line, read);
        }
        return read.asAsked() && read.problems().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }
}
