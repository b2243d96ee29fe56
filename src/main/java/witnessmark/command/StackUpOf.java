package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.measuring.StackUp;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** The checks of a few figures in a text file, with no logbook. */
@Command(name = "stackup", mixinStandardHelpOptions = true)
final class StackUpOf implements Callable<Integer> {
    private static final long LARGEST = 1_000_000;

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "command.stackup.file")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path file;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    StackUpOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "stackup", json);
        List<String> lines;
        try {
            if (Files.size(file) > LARGEST) {
                return answer.refuse(tools.texts().get("command.stackup.large", file), Exit.DID_NOT);
            }
            lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            return answer.didNot(List.of(Problem.of(ProblemKind.NO_SUCH_FILE, file.toString())));
        }
        StackUp.Read read = StackUp.of(lines);
        if (json) {
            ObjectNode root = answer.node();
            ArrayNode unread = root.putArray("unread");
            read.unread()
                    .forEach(line -> unread.addObject()
                            .put("line", line.line())
                            .put("text", line.text())
                            .put("example", line.example()));
            new FitText(tools).put(root, read.answers(), read.contradictions());
            answer.print(root);
        } else {
            read.unread()
                    .forEach(line -> tools.err()
                            .println(tools.texts()
                                    .get("command.stackup.unread", line.line(), line.text(), line.example())));
            new FitText(tools).print(answer::line, read.answers(), read.contradictions(), List.of(), true);
        }
        return read.unread().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }
}
