package witnessmark.command;

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
import witnessmark.logbook.trends.EngineTrends;
import witnessmark.logbook.trends.SeeTrends;
import witnessmark.outcome.Outcome;

/** Where the readings of an engine are going; of every engine when none is named. */
@Command(name = "trends", mixinStandardHelpOptions = true)
final class TrendsOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", arity = "0..1", paramLabel = "ENGINE", descriptionKey = "command.trends.engine")
    private @Nullable String engine;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    TrendsOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "trends", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        List<EngineTrends> trends;
        if (engine == null) {
            trends = SeeTrends.all(view);
        } else {
            Outcome<Entry<Engine>> found = answer.named(view, Engine.class, engine);
            if (!found.didWork()) {
                return answer.didNot(found.problems());
            }
            trends = List.of(new EngineTrends(
                    found.orThrow(), SeeTrends.of(view, found.orThrow().id())));
        }
        TrendsText text = new TrendsText(tools);
        if (json) {
            answer.print(text.asJson(answer.node().put("asOf", view.day().toString()), trends));
        } else {
            text.print(answer::line, trends, engine != null);
        }
        return Exit.WORKED;
    }
}
