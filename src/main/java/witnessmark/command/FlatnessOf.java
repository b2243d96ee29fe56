package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.faces.GridText;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** How flat a grid of readings in a text file is, with no logbook. */
@Command(name = "flatness", mixinStandardHelpOptions = true)
final class FlatnessOf implements Callable<Integer> {
    private static final long LARGEST = 1_000_000;
    private static final int DECIMALS = 5;

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "command.flatness.file")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path file;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    FlatnessOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "flatness", json);
        List<String> lines;
        try {
            if (Files.size(file) > LARGEST) {
                return answer.refuse(tools.texts().get("command.stackup.large", file), Exit.DID_NOT);
            }
            lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            return answer.didNot(List.of(Problem.of(ProblemKind.NO_SUCH_FILE, file.toString())));
        }
        GridText.Read read = GridText.of(lines);
        GridText.Flatnesses flat = read.flat();
        if (flat == null) {
            return answer.refuse(
                    read.points() > GridText.MOST
                            ? tools.texts().get("command.flatness.many", read.points(), GridText.MOST)
                            : tools.texts()
                                    .get(
                                            "command.flatness.few",
                                            read.points(),
                                            read.unread().size()),
                    Exit.DID_NOT);
        }
        if (json) {
            answer.print(asJson(answer, read, flat));
        } else {
            read.unread()
                    .forEach(line -> tools.err()
                            .println(tools.texts().get("command.flatness.unread", line.line(), line.text())));
            answer.line(tools.texts().get("command.flatness.leastSquares", mm(flat.peakToValley()), read.points()));
            answer.line(tools.texts().get("command.flatness.minimumZone", mm(flat.minimumZone())));
            answer.line(tools.texts().get("command.flatness.finest"));
        }
        return read.unread().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }

    private String mm(double figure) {
        return tools.measures().number(BigDecimal.valueOf(figure), DECIMALS);
    }

    private static ObjectNode asJson(Answer answer, GridText.Read read, GridText.Flatnesses flat) {
        ObjectNode root = answer.node().put("points", read.points()).put("unit", "mm");
        root.putObject("leastSquares")
                .put("a", flat.a())
                .put("b", flat.b())
                .put("c", flat.c())
                .put("peakToValley", flat.peakToValley())
                .put("rms", flat.rms());
        root.put("minimumZone", flat.minimumZone());
        ArrayNode unread = root.putArray("unread");
        read.unread()
                .forEach(line -> unread.addObject().put("line", line.line()).put("text", line.text()));
        return root;
    }
}
