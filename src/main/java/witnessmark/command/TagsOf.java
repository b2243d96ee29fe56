package witnessmark.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Outcome;

/** Tags for the bags of an engine's parts. */
@Command(name = "tags", mixinStandardHelpOptions = true)
final class TagsOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "ENGINE", descriptionKey = "command.tags.engine")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String engine;

    @Option(names = "--print", required = true, paramLabel = "FILE", descriptionKey = "command.tags.print")
    @SuppressWarnings("NullAway.Init") // a required option
    private Path print;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    TagsOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "tags", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        Outcome<Entry<Engine>> found = answer.named(desk.view(), Engine.class, engine);
        return found.didWork()
                ? answer.wrote(
                        tools.tags().write(desk, found.orThrow().id(), print), "pages", "command.cost.printed", print)
                : answer.didNot(found.problems());
    }
}
