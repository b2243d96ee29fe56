package witnessmark.desktop.strip;

import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Writes what is found at a strip off the event thread, each time one change that can be taken back. */
final class StripActions {
    private static final Logger LOG = LoggerFactory.getLogger(StripActions.class);

    private final StripContext context;
    private final Texts texts;
    private final Problems problems;

    StripActions(StripContext context) {
        this.context = context;
        this.texts = context.tools().texts();
        this.problems = new Problems(texts, context.measures());
    }

    /**
     * @param why what is written, in words
     * @param refused run on the event thread where it was not written, after the reason was said
     */
    void write(String why, Supplier<Outcome<Written>> work, Runnable refused) {
        context.tools().tasks().write(why, work::get, outcome -> ended(why, outcome, refused), thrown -> {
            LOG.error("what was found at a strip could not be written", thrown);
            context.window().say(texts.get("strip.page.not_saved"));
            refused.run();
        });
    }

    private void ended(String why, Outcome<Written> outcome, Runnable refused) {
        if (!outcome.didWork()) {
            context.window()
                    .say(outcome.problems().stream().map(problems::sentence).collect(Collectors.joining(" ")));
            refused.run();
            return;
        }
        context.window()
                .say(texts.get("strip.page.saved", why), Caption.of(texts.get("strip.page.undo")), context.undo());
        context.window().changed();
    }
}
