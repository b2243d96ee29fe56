package witnessmark.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Outcome;

/** Writes a file of what stands in the logbook, and says how much stands in it: a calendar, a job sheet. */
@Command(mixinStandardHelpOptions = true)
final class WritesFile implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "command.file")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path file;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;
    private final String name;
    private final String counted;
    private final BiFunction<Desk, Path, Outcome<Integer>> write;

    /**
     * @param name of the command; its sentences begin with it
     * @param counted what is counted, as JSON calls it
     * @param write writes the file and says how many of them stand in it
     */
    WritesFile(Tools tools, String name, String counted, BiFunction<Desk, Path, Outcome<Integer>> write) {
        this.tools = tools;
        this.name = name;
        this.counted = counted;
        this.write = write;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, name, json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        return answer.wrote(write.apply(desk, file), counted, "command." + name + ".done", file);
    }
}
