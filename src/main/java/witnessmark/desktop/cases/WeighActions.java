package witnessmark.desktop.cases;

import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.domain.Speaks;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.proof.Evidence;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Writes how findings speak to causes, each time one change that can be taken back, off the event thread. */
final class WeighActions {
    private static final Logger LOG = LoggerFactory.getLogger(WeighActions.class);

    private final CaseDoing doing;
    private final Texts texts;
    private final Problems problems;

    WeighActions(CaseDoing doing) {
        this.doing = doing;
        this.texts = doing.tools().texts();
        this.problems = new Problems(texts, doing.measures());
    }

    /**
     * @param about the incident, the finding and the cause, in words
     */
    void speaks(Evidence.Pair pair, Speaks speaks, Object... about) {
        String why = texts.get("cases.why." + speaks.name().toLowerCase(Locale.ROOT), about);
        write(why, () -> doing.weigh().speaks(pair, speaks, why));
    }

    void because(Evidence.Pair pair, String because, Object... about) {
        String why = texts.get("cases.why.because", about);
        write(why, () -> doing.weigh().because(pair, because, why));
    }

    void takeAway(Evidence.Pair pair, Object... about) {
        String why = texts.get("cases.why.away", about);
        write(why, () -> doing.weigh().takeAway(pair, texts.get("cases.why.away.reason"), why));
    }

    private void write(String why, Supplier<Outcome<Written>> work) {
        doing.tools().tasks().write(why, work::get, outcome -> ended(why, outcome), this::broke);
    }

    private void ended(String why, Outcome<Written> outcome) {
        if (!outcome.didWork()) {
            doing.window()
                    .say(outcome.problems().stream().map(problems::sentence).collect(Collectors.joining(" ")));
            return;
        }
        doing.window().say(texts.get("cases.saved", why), Caption.of(texts.get("cases.undo")), doing.undo());
        doing.window().changed();
    }

    private void broke(Throwable thrown) {
        LOG.error("a finding could not be weighed", thrown);
        doing.window().say(texts.get("cases.not_saved"));
    }
}
