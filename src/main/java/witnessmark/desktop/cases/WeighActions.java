package witnessmark.desktop.cases;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import witnessmark.desktop.shell.OneChange;
import witnessmark.domain.Speaks;
import witnessmark.logbook.proof.Evidence;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Texts;

/** Writes how findings speak to causes. */
final class WeighActions {
    private final CaseDoing doing;
    private final Texts texts;
    private final OneChange change;

    WeighActions(CaseDoing doing) {
        this.doing = doing;
        this.texts = doing.tools().texts();
        this.change = new OneChange(texts, doing.measures(), doing.tools().tasks(), doing.window(), doing.undo());
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
        change.write(why, () -> doing.weigh().because(pair, because, why).map(written -> Optional.of(why)), notWritten);
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
        change.write(name, work, said -> {});
    }
}
