package witnessmark.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Entry;
import witnessmark.domain.Trial;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.trials.SeeTrials;
import witnessmark.outcome.Outcome;
import witnessmark.study.result.TrialAnswer;

/** How a part design on trial stands beside what is usual; every trial when none is named. */
@Command(name = "trial", mixinStandardHelpOptions = true)
final class TrialOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", arity = "0..1", paramLabel = "TRIAL", descriptionKey = "command.trial.trial")
    private @Nullable String trial;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    TrialOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "trial", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        List<TrialAnswer> trials = SeeTrials.all(view);
        if (trial != null) {
            Outcome<Entry<Trial>> found = answer.named(view, Trial.class, trial);
            if (!found.didWork()) {
                return answer.didNot(found.problems());
            }
            trials = SeeTrials.of(view, found.orThrow().id()).stream().toList();
        }
        TrialText text = new TrialText(tools);
        if (json) {
            answer.print(text.asJson(answer.node().put("asOf", view.day().toString()), trials));
        } else {
            text.print(answer::line, trials);
        }
        return Exit.WORKED;
    }
}
