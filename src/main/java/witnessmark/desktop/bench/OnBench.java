package witnessmark.desktop.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.desktop.form.Refusal;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.WriteFigures;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Moment;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** A build on the bench: its sheet with what is typed, the draft of that, and writing it. Event thread only. */
final class OnBench {
    private static final Logger LOG = LoggerFactory.getLogger(OnBench.class);
    /** The name its drafts go under, each with the identity of its build. */
    static final String FORM = "build sheet";

    private final BenchContext context;
    private final Texts texts;
    private final Problems problems;
    private final String title;
    private final BenchModel model;
    private final Hows hows;
    private final KeptDraft draft;
    private final WriteFigures writing;
    private final Refusal failure = new Refusal();
    private final Seen seen;
    private final Latest workingOut;
    private final BenchWords words;
    private @Nullable BenchLines tried;
    private boolean working;

    /** What is seen of it. */
    interface Seen {
        /** Something that is said of it has changed. */
        void changed();

        /** Goes to a field. */
        void focus(MeasurePlace place);

        /** The field in hand. */
        Optional<MeasurePlace> inHand();
    }

    /** @param title what the build is called */
    OnBench(BenchContext context, String title, BenchModel model, Hows hows, BenchWords words, Seen seen) {
        this.context = context;
        this.texts = context.texts();
        this.problems = new Problems(texts, context.measures());
        this.title = title;
        this.model = model;
        this.hows = hows;
        this.seen = seen;
        this.words = words;
        this.workingOut = new Latest(context.tasks());
        this.writing = new WriteFigures(context.ids());
        this.draft = new KeptDraft(
                context.book(),
                context.tasks(),
                texts,
                FORM,
                model.page().build().id().text(),
                model::isDirty,
                () -> model.draft(seen.inHand().orElse(null)),
                seen::changed);
        model.onChange(() -> {
            failure.typed(model.toWrite());
            draft.typed();
            seen.changed();
        });
    }

    BenchModel model() {
        return model;
    }

    String draftLine() {
        return draft.line();
    }

    /** Why the last writing did not work; empty when it did. */
    String failure() {
        return failure.said();
    }

    /** A draft from before the program was started is put on the sheet. */
    void restore(Drafts.Draft kept) {
        draft.found(kept, () -> model.restore(kept.fields()).ifPresent(seen::focus));
        workOut();
    }

    /** The focus left a field. */
    void left(MeasurePlace place) {
        draft.now();
        model.leave(place);
        workOut();
    }

    /** Writes everything that is typed, in one change; where something cannot be read it stops there. */
    void save() {
        if (working) {
            return;
        }
        failure.none();
        model.ask();
        List<MeasurePlace> stopped = model.stopped();
        if (!stopped.isEmpty()) {
            seen.focus(stopped.get(0));
            seen.changed();
            return;
        }
        Map<MeasurePlace, BenchModel.Entered> figures = model.toWrite();
        if (figures.isEmpty()) {
            context.window().say(texts.get("bench.save.nothing"));
            return;
        }
        draft.hold();
        write(
                said("bench.save.why", figures),
                said("bench.saved", figures),
                () -> entries(page(), figures, now()),
                () -> {
                    model.written(figures);
                    draft.gone();
                });
    }

    /** How many are written, how many taken back, or both. */
    private String said(String key, Map<MeasurePlace, BenchModel.Entered> figures) {
        long back =
                figures.values().stream().filter(each -> each.text().isBlank()).count();
        long written = figures.size() - back;
        return back == 0
                ? texts.get(key, written, title)
                : written == 0 ? texts.get(key + ".back", back, title) : texts.get(key + ".both", written, title, back);
    }

    private List<Entry<Measurement>> entries(SheetPage now, Map<MeasurePlace, BenchModel.Entered> figures, Moment at) {
        List<Entry<Measurement>> entries = new ArrayList<>();
        String because = texts.get("bench.back.because");
        figures.forEach((place, typed) -> entries.addAll(
                typed.text().isBlank()
                        ? WriteFigures.takeBack(now, place, because)
                        : writing.entries(now, place, typed.text(), hows.setting(typed.how(), at))));
        return entries;
    }

    /** Works out how the sheet would stand with what can be read of what is typed; nothing is written. */
    void workOut() {
        SheetPage written = model.page();
        Map<MeasurePlace, BenchModel.Entered> figures = model.readable();
        if (!model.isDirty()) {
            workingOut.drop();
            seen.changed();
            return;
        }
        Moment at = now();
        workingOut.run(
                texts.get("bench.working_out"),
                () -> {
                    View view = context.book().view();
                    SheetPage with = SeeBuildSheet.with(view, written, entries(written, figures, at));
                    return new Tried(written, with, words.typed(view, with));
                },
                this::workedOut,
                thrown -> LOG.error("how the sheet would stand could not be worked out", thrown));
    }

    /** What the sheet would stand like, and on which sheet it was tried. */
    private record Tried(SheetPage on, SheetPage with, BenchLines lines) {}

    private void workedOut(Tried found) {
        if (found.on() == model.page()) { // else it is written meanwhile
            model.typed(found.with());
            tried = found.lines();
            seen.changed();
        }
    }

    /** How it stands with what is typed; as it is written while nothing is, or nothing was worked out yet. */
    BenchLines lines(BenchLines written) {
        BenchLines with = tried;
        return with == null || !model.isDirty() ? written : with;
    }

    /** An earlier figure counts again in place of the one that does. */
    void count(Entry<Measurement> earlier) {
        if (!working) {
            failure.none();
            String words = texts.get("bench.count.why", title);
            write(words, texts.get("bench.counted", title), () -> WriteFigures.countAgain(page(), earlier), () -> {});
        }
    }

    private SheetPage page() {
        Id<Build> build = model.page().build().id();
        return SeeBuildSheet.of(context.book().view(), build).orElseThrow();
    }

    /** The clock's now; the end of the day taken for today where that is another one. */
    private Moment now() {
        Desk book = context.book();
        Moment clock = Moment.of(book.today().now(), book.view().zone());
        LocalDate today = book.today().day();
        return clock.day().equals(today)
                ? clock
                : Moment.endOf(today, book.view().zone());
    }

    /** What writing leaves: what became of it, and the sheet as it stands then. */
    private record Left(Outcome<Written> outcome, @Nullable SheetPage page) {}

    private void write(String why, String done, Supplier<List<Entry<Measurement>>> entries, Runnable then) {
        working = true;
        context.tasks()
                .write(
                        why,
                        () -> {
                            Outcome<Written> outcome = context.book().write(why, entries.get());
                            if (outcome.didWork()) {
                                draft.discardHere();
                                return new Left(outcome, page());
                            }
                            return new Left(outcome, null);
                        },
                        left -> written(left, done, then),
                        this::couldNot);
    }

    private void written(Left left, String done, Runnable then) {
        working = false;
        SheetPage page = left.page();
        if (page == null) {
            failure.refused(left.outcome().problems(), problems::sentence, model.toWrite());
            draft.typed();
            seen.changed();
            return;
        }
        then.run();
        tried = null;
        model.become(page);
        draft.typed(); // what was typed meanwhile
        context.window().say(done, Caption.of(texts.get("bench.undo")), context.undo());
        context.window().changed();
        seen.changed();
    }

    private void couldNot(Throwable thrown) {
        LOG.error("figures could not be written", thrown);
        working = false;
        failure.broke(texts.get("bench.not_saved"));
        draft.typed();
        seen.changed();
    }
}
