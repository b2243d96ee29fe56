package witnessmark.desktop.form;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Drafts;
import witnessmark.wording.Texts;

/** Keeps what is typed into one form as a draft, at most a second old while typing goes on. Event thread only. */
public final class KeptDraft {
    /** The one draft of a form for something not yet written. */
    public static final String NEW = "new";

    /** Among the fields of a draft: which field the caret was in. */
    public static final String CARET = "caret in";

    private static final Logger LOG = LoggerFactory.getLogger(KeptDraft.class);
    private static final Duration AGE = Duration.ofMillis(900);

    private final Desk book;
    private final Tasks tasks;
    private final Texts texts;
    private final DraftWords words;
    private final String form;
    private final String record;
    private final BooleanSupplier dirty;
    private final Supplier<Map<String, String>> fields;
    private final Runnable told;
    private final Later soon;
    private Map<String, String> last = Map.of();
    private Instant typedAt = Instant.EPOCH;
    private int turn;
    private String line = "";
    private boolean waits;
    /** What stands on the form as it was typed in another file; null once somebody typed on. */
    private Drafts.@Nullable Draft fromElsewhere;

    /**
     * @param form the name drafts of this form go under
     * @param record the record it is for, {@link #NEW} for one not yet written
     * @param dirty whether there is anything to keep
     * @param fields what there is to keep
     * @param told when the line has changed
     */
    public KeptDraft(
            Desk book,
            Tasks tasks,
            Texts texts,
            String form,
            String record,
            BooleanSupplier dirty,
            Supplier<Map<String, String>> fields,
            Runnable told) {
        this.book = book;
        this.tasks = tasks;
        this.texts = texts;
        this.words = new DraftWords(texts);
        this.form = form;
        this.record = record;
        this.dirty = dirty;
        this.fields = fields;
        this.told = told;
        this.soon = tasks.later(AGE, this::keep);
    }

    /** Something was typed. */
    public void typed() {
        soon.pokeOnce();
    }

    /** The focus moved: what waits is kept now. */
    public void now() {
        soon.now();
    }

    /** What is to be said about the draft; empty while there is none. */
    public String line() {
        return line;
    }

    /** Finds out whether there is a draft from before the program was started, without opening the form. */
    public void lookFor() {
        tasks.run(
                texts.get("form.draft.finding"),
                () -> find().isPresent(),
                there -> {
                    waits = there;
                    told.run();
                },
                failure -> LOG.error("the draft of a form could not be looked for", failure));
    }

    /** Whether there is one that is not on the form yet. */
    public boolean waits() {
        return waits;
    }

    /** Reads the draft. Off the event thread. */
    public Optional<Drafts.Draft> find() {
        return book.logbook().drafts().find(form, record);
    }

    /**
     * It was read. What is on the form then is what is kept, as long as nothing was typed meanwhile.
     *
     * @param restore puts it on the form
     */
    public void found(Drafts.Draft draft, Runnable restore) {
        boolean typing = soon.isWaiting();
        restore.run();
        last = typing ? draft.fields() : Map.copyOf(fields.get());
        typedAt = draft.keptAt();
        waits = false;
        fromElsewhere = draft.typedIn() == null ? null : new Drafts.Draft(last, draft.keptAt(), draft.typedIn());
        say(words.found(draft, book.view().zone(), book.today().now()));
    }

    /** What waits is not to be kept any more: the form is being saved. */
    public void hold() {
        soon.cancel();
    }

    /** Throws the draft away. Off the event thread, as part of the work that saves. */
    public void discardHere() {
        book.logbook().drafts().discard(form, record);
    }

    /** The draft is gone. */
    public void gone() {
        fromElsewhere = null;
        turn++; // what is still being kept has nothing to say any more
        last = Map.of();
        line = "";
        waits = false;
        told.run();
    }

    /** Throws the draft away. */
    public void discard() {
        soon.cancel();
        gone();
        tasks.write(
                texts.get("form.draft.keeping"),
                () -> {
                    discardHere();
                    return form;
                },
                gone -> {},
                failure -> {
                    line = texts.get("form.draft.not_discarded");
                    told.run();
                });
    }

    private void keep() {
        if (!dirty.getAsBoolean()) {
            if (!last.isEmpty()) {
                discard();
            }
            return;
        }
        Map<String, String> now = Map.copyOf(fields.get());
        if (now.equals(last)) {
            return;
        }
        if (!withoutCaret(now).equals(withoutCaret(last))) {
            typedAt = book.today().now();
        }
        last = now;
        Instant at = typedAt;
        int mine = ++turn;
        tasks.write(
                texts.get("form.draft.keeping"),
                () -> book.logbook().drafts().keep(form, record, new Drafts.Draft(now, at)),
                kept -> sayIf(mine, kept, at),
                failure -> sayIf(mine, Drafts.Kept.NOT_KEPT, at));
    }

    /** Nobody typed anything when only the caret is elsewhere. */
    private static Map<String, String> withoutCaret(Map<String, String> fields) {
        Map<String, String> typed = new HashMap<>(fields);
        typed.remove(CARET);
        return typed;
    }

    private void sayIf(int asked, Drafts.Kept kept, Instant at) {
        if (asked != turn) {
            return;
        }
        if (kept == Drafts.Kept.NOT_KEPT) {
            last = Map.of();
        }
        Drafts.Draft elsewhere = fromElsewhere;
        if (elsewhere != null
                && kept != Drafts.Kept.NOT_KEPT
                && withoutCaret(last).equals(withoutCaret(elsewhere.fields()))) {
            return; // only the caret moved
        }
        fromElsewhere = null;
        say(words.kept(kept, at, book.view().zone(), book.today().now()));
    }

    private void say(String said) {
        line = said;
        told.run();
    }
}
