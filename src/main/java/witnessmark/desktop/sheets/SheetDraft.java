package witnessmark.desktop.sheets;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.DraftWords;
import witnessmark.desktop.task.Later;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.sheets.CorrectSheet;
import witnessmark.wording.Texts;

/** Keeps what is typed on one sheet as a draft, at most a second old while typing goes on. Event thread only. */
final class SheetDraft {
    private static final Logger LOG = LoggerFactory.getLogger(SheetDraft.class);
    /** The one draft of a sheet for something not yet written. */
    static final String NEW = "new";

    /** What the forms of sheets begin with. */
    static final String FORM = "sheet ";

    private static final Duration AGE = Duration.ofMillis(900);

    private final SheetsContext context;
    private final Texts texts;
    private final DraftWords words;
    private final SheetModel model;
    private final String form;
    private final String record;
    private final Runnable told;
    private final Runnable restored;
    private final Later soon;
    private Map<String, String> last = Map.of();
    private String line = "";
    private boolean looked;
    private boolean held;
    private int turn;

    /**
     * @param told when the line has changed
     * @param restored when a draft stands on the sheet again
     */
    SheetDraft(SheetsContext context, SheetModel model, Runnable told, Runnable restored) {
        this.context = context;
        this.texts = context.texts();
        this.words = new DraftWords(texts);
        this.model = model;
        this.form = FORM + model.sheet().key();
        this.record = model.sheet() instanceof CorrectSheet written
                ? written.entry().id().text()
                : NEW;
        this.told = told;
        this.restored = restored;
        this.soon = context.tasks().later(AGE, this::keep);
        model.onChange(() -> {
            if (model.isDirty() || !last.isEmpty()) {
                soon.pokeOnce();
            }
        });
    }

    /** What is to be said about the draft; empty while there is none. */
    String line() {
        return line;
    }

    /** Looks, the first time, for what was typed and not saved before the program was closed. */
    void open() {
        if (looked) {
            return;
        }
        looked = true;
        context.tasks()
                .run(
                        texts.get("form.draft.finding"),
                        () -> drafts().find(form, record),
                        this::found,
                        thrown -> LOG.error("the draft of a sheet could not be read", thrown));
    }

    /** The sheet is being saved: nothing is kept until that has come to something. */
    void hold() {
        held = true;
    }

    /** It was not saved: what is typed is kept again. */
    void release() {
        held = false;
        if (model.isDirty()) {
            soon.pokeOnce();
        }
    }

    /** The sheet is saved or cleared: the draft is thrown away. */
    void discard() {
        discard(() -> {});
    }

    /**
     * The same.
     *
     * @param then told once it is gone, so that nobody reads of it any more; told also when it cannot be thrown away
     */
    void discard(Runnable then) {
        soon.cancel();
        turn++; // what is still being kept has nothing to say any more
        last = Map.of();
        say("");
        context.tasks()
                .write(
                        texts.get("form.draft.keeping"),
                        () -> {
                            drafts().discard(form, record);
                            return form;
                        },
                        gone -> ended(then),
                        thrown -> {
                            LOG.error("the draft of a sheet could not be thrown away", thrown);
                            say(texts.get("form.draft.not_discarded"));
                            ended(then);
                        });
    }

    private void ended(Runnable then) {
        then.run();
        held = false;
    }

    private void found(Optional<Drafts.Draft> kept) {
        kept.filter(draft -> !model.isDirty()).ifPresent(draft -> {
            model.restore(draft.fields());
            last = model.draft(); // nobody typed since it was kept
            say(words.found(draft, zone(), now()));
            restored.run();
        });
    }

    private void keep() {
        Map<String, String> now = model.draft();
        if (!model.isDirty() && !last.isEmpty()) {
            discard();
        }
        if (held || !model.isDirty() || now.equals(last)) {
            return;
        }
        last = now;
        int mine = ++turn;
        Instant at = now();
        context.tasks()
                .write(
                        texts.get("form.draft.keeping"),
                        () -> drafts().keep(form, record, new Drafts.Draft(now, at)),
                        kept -> kept(mine, kept, at),
                        thrown -> {
                            LOG.error("the draft of a sheet could not be kept", thrown);
                            kept(mine, Drafts.Kept.NOT_KEPT, at);
                        });
    }

    private void kept(int asked, Drafts.Kept kept, Instant at) {
        if (asked != turn) {
            return;
        }
        if (kept == Drafts.Kept.NOT_KEPT) {
            last = Map.of();
        }
        say(words.kept(kept, at, zone(), now()));
    }

    private void say(String said) {
        line = said;
        told.run();
    }

    private ZoneId zone() {
        return context.book().view().zone();
    }

    private Instant now() {
        return context.book().today().now();
    }

    private Drafts drafts() {
        return context.book().logbook().drafts();
    }
}
