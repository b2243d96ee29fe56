package witnessmark.desktop.cases;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.domain.Speaks;
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
        String why = words(speaks, about);
        write(why, () -> doing.weigh().speaks(pair, speaks, why).map(written -> Optional.of(why)));
    }

    /** The same key once more says it more strongly. */
    void towards(Evidence.Pair pair, Speaks way, Object... about) {
        write(
                words(way, about),
                () -> doing.weigh()
                        .towards(pair, way, speaks -> words(speaks, about))
                        .map(now -> now.map(speaks -> words(speaks, about))));
    }

    /** @param notWritten told why it is not saved, on the event thread */
    void because(Evidence.Pair pair, String because, Consumer<String> notWritten, Object... about) {
        String why = texts.get("cases.why.because", about);
        write(why, () -> doing.weigh().because(pair, because, why).map(written -> Optional.of(why)), notWritten);
    }

    void takeAway(Evidence.Pair pair, Object... about) {
        String why = texts.get("cases.why.away", about);
        write(
                why,
                () -> doing.weigh()
                        .takeAway(pair, texts.get("cases.why.away.reason"), why)
                        .map(written -> Optional.of(why)));
    }

    private String words(Speaks speaks, Object... about) {
        return texts.get("cases.why." + speaks.name().toLowerCase(Locale.ROOT), about);
    }

    private void write(String name, Supplier<Outcome<Optional<String>>> work) {
        write(name, work, said -> {});
    }

    /** @param work answers what was written in words, or nothing where nothing was */
    private void write(String name, Supplier<Outcome<Optional<String>>> work, Consumer<String> notWritten) {
        Consumer<String> failed = said -> {
            doing.window().say(said);
            notWritten.accept(said);
        };
        doing.tools().tasks().write(name, work::get, outcome -> ended(outcome, failed), thrown -> {
            LOG.error("a finding could not be weighed", thrown);
            failed.accept(texts.get("cases.not_saved"));
        });
    }

    private void ended(Outcome<Optional<String>> outcome, Consumer<String> failed) {
        if (!outcome.didWork()) {
            failed.accept(outcome.problems().stream().map(problems::sentence).collect(Collectors.joining(" ")));
            return;
        }
        outcome.orThrow().ifPresent(why -> {
            doing.window().say(texts.get("cases.saved", why), Caption.of(texts.get("cases.undo")), doing.undo());
            doing.window().changed();
        });
    }
}
