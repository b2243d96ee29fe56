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
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.faces.GridText;
import witnessmark.mechanics.Flatness;
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
        Flatness.LeastSquares plane = read.plane();
        Double zone = read.minimumZone();
        if (plane == null || zone == null) {
            return answer.refuse(
                    read.points().size() > GridText.MOST
                            ? tools.texts()
                                    .get("command.flatness.many", read.points().size(), GridText.MOST)
                            : tools.texts()
                                    .get(
                                            "command.flatness.few",
                                            read.points().size(),
                                            read.unread().size()),
                    Exit.DID_NOT);
        }
        if (json) {
            answer.print(asJson(answer, read, plane, zone));
        } else {
            read.unread()
                    .forEach(line -> tools.err()
                            .println(tools.texts().get("command.flatness.unread", line.line(), line.text())));
            answer.line(tools.texts()
                    .get(
                            "command.flatness.leastSquares",
                            mm(plane.peakToValley()),
                            read.points().size()));
            answer.line(tools.texts().get("command.flatness.minimumZone", mm(zone)));
            answer.line(tools.texts().get("command.flatness.finest"));
        }
        return read.unread().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }

    private String mm(double figure) {
        return tools.measures().number(BigDecimal.valueOf(figure), DECIMALS);
    }

    private static ObjectNode asJson(
            Answer answer, GridText.Read read, Flatness.LeastSquares plane, @Nullable Double zone) {
        ObjectNode root = answer.node().put("points", read.points().size()).put("unit", "mm");
        root.putObject("leastSquares")
                .put("a", plane.a())
                .put("b", plane.b())
                .put("c", plane.c())
                .put("peakToValley", plane.peakToValley())
                .put("rms", plane.rms());
        root.put("minimumZone", zone);
        ArrayNode unread = root.putArray("unread");
        read.unread()
                .forEach(line -> unread.addObject().put("line", line.line()).put("text", line.text()));
        return root;
    }
}
