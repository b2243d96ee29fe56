package witnessmark.desktop.keeping;

import java.awt.Window;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.JButton;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.shell.ClosingWait;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;
import witnessmark.logbook.CopyElsewhere;
import witnessmark.logbook.CopyElsewhere.Look;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Texts;

/**
 * Has a copy made in the second place within a minute of a saving, whenever that place is there, and says in the window
 * how things stand. It asks for a place once, after the first saving, and never again. Event thread only; the copying is
 * done apart from all reading and writing.
 */
public final class Elsewhere implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Elsewhere.class);

    /** A saving waits for no longer than this until its copy is begun. */
    static final Duration PERIOD = Duration.ofSeconds(20);

    private static final Duration SLOW = Duration.ofSeconds(10);
    private static final Duration AFTER_FAILURE = Duration.ofMinutes(5);

    private final KeepingContext context;
    private final Texts texts;
    private final Tasks tasks;
    private final CopyElsewhere copies;
    private final ElsewhereWords words;
    private final BooleanSupplier mayAsk;
    private final Runnable choose;
    private final Consumer<Look> looked;
    private final Ticking ticking;
    private @Nullable Instant since;
    private @Nullable Instant failed;
    private @Nullable ProblemKind told;
    private @Nullable ClosingWait last;

    /**
     * @param mayAsk whether the window has room for a question now
     * @param choose asks for a place
     * @param looked told each time how things stand
     */
    Elsewhere(
            KeepingContext context,
            ElsewhereWords words,
            BooleanSupplier mayAsk,
            Runnable choose,
            Consumer<Look> looked) {
        this.context = context;
        this.texts = context.tools().texts();
        this.tasks = context.tools().tasks();
        this.copies = context.elsewhere();
        this.words = words;
        this.mayAsk = mayAsk;
        this.choose = choose;
        this.looked = looked;
        this.ticking = tasks.every(PERIOD, this::tick);
    }

    /** Looks how things stand, makes a copy when one is wanted, and says so. */
    public void tick() {
        Instant now = context.clock().instant();
        Instant begun = since;
        if (begun != null) {
            copies.place()
                    .filter(place -> Duration.between(begun, now).compareTo(SLOW) > 0)
                    .ifPresent(place -> slow(place, begun, now));
            return;
        }
        ask();
        Instant last = failed;
        if (last == null || Duration.between(last, now).compareTo(AFTER_FAILURE) >= 0) {
            look(() -> {});
        }
    }

    /** Looks at once, whatever failed before: another place was chosen. */
    void again() {
        failed = null;
        told = null;
        if (since == null) {
            look(() -> {});
        }
    }

    /**
     * Makes a last copy when one is wanted and the place is there, then goes on. What takes longer than a glance is told
     * over the window, with a way to go on at once.
     *
     * @param window the one about to close
     */
    public void last(@Nullable Window window, Runnable then) {
        ticking.close();
        Path place = copies.place().orElse(null);
        if (place == null) {
            then.run();
        } else if (last == null) {
            ClosingWait telling = new ClosingWait(
                    texts,
                    tasks,
                    new ClosingWait.Words(
                            texts.get("keeping.last"),
                            texts.get("keeping.last.text", place),
                            texts.get("keeping.last.meaning")),
                    then);
            last = telling;
            telling.begin(window);
            look(telling::end);
        }
    }

    @Override
    public void close() {
        ticking.close();
    }

    private void look(Runnable then) {
        since = context.clock().instant();
        tasks.apart(
                texts.get("keeping.elsewhere.copying"),
                copies::bring,
                look -> {
                    since = null;
                    shown(look);
                    then.run();
                },
                failure -> {
                    since = null;
                    failed = context.clock().instant();
                    LOG.error("the second place could not be looked after", failure);
                    then.run();
                });
    }

    private void shown(Look look) {
        Instant now = context.clock().instant();
        context.window().copies(words.line(look, now), words.sentence(look, now), ElsewhereWords.isOnlyHere(look));
        looked.accept(look);
        if (look.problems().isEmpty()) {
            failed = null;
            told = null;
            return;
        }
        failed = now;
        ProblemKind kind = look.problems().get(0).kind();
        if (kind != told && kind != ProblemKind.PLACE_GONE) {
            told = kind;
            context.window().say(context.problems().sentence(look.problems().get(0)));
        }
    }

    private void slow(Path place, Instant begun, Instant now) {
        String sentence = words.slow(place, begun, now);
        context.window().copies(sentence, sentence, false);
    }

    private void ask() {
        if (context.logbook().lastWritten().isPresent() && copies.toAsk() && mayAsk.getAsBoolean()) {
            copies.asked();
            List<JButton> ways = new ArrayList<>();
            ways.add(Buttons.plain(Caption.of(texts.get("keeping.elsewhere.choose")), () -> {
                context.window().dismissNotice();
                choose.run();
            }));
            ways.add(Buttons.plain(Caption.of(texts.get("keeping.elsewhere.notNow")), context.window()::dismissNotice));
            context.window().notice(texts.get("keeping.elsewhere.ask"), ways);
        }
    }
}
