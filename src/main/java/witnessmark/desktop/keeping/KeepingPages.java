package witnessmark.desktop.keeping;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.JButton;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.CopyElsewhere.Look;
import witnessmark.logbook.port.LogbookCopies.Restored;
import witnessmark.logbook.port.LogbookCopies.SalvageWords;
import witnessmark.logbook.port.LogbookCopies.Salvaged;
import witnessmark.outcome.Outcome;
import witnessmark.wording.HitWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** What the Logbook menu offers so that nothing is lost, and what a notice offers when something may be. */
public final class KeepingPages {
    private final KeepingContext context;
    private final Texts texts;
    private final Tasks tasks;
    private final ElsewhereWords words;
    private @Nullable Elsewhere elsewhere;
    private @Nullable SecondPlacePage inView;

    public KeepingPages(KeepingContext context) {
        this.context = context;
        this.texts = context.tools().texts();
        this.tasks = context.tools().tasks();
        this.words = new ElsewhereWords(texts, context.measures(), context.problems(), context.zone());
    }

    /** Looks after the second place from now on. To be closed when another logbook comes into the window. */
    public Elsewhere watchElsewhere(BooleanSupplier mayAsk) {
        Elsewhere made = new Elsewhere(context, words, mayAsk, this::choosePlace, this::looked);
        elsewhere = made;
        made.again();
        return made;
    }

    /** Says in the window that nobody keeps copies of the sample elsewhere. */
    public void sayOfSample() {
        context.window()
                .copies(texts.get("keeping.elsewhere.sample"), texts.get("keeping.elsewhere.sample.tip"), false);
    }

    /** Lists the backups of the logbook in hand. */
    public void restore() {
        restore(context.logbook().logbook().path(), context.logbook().logbook().identity(), !context.sample());
    }

    /** Lists the backups for a logbook that could not be opened, whichever they are of. */
    public void restoreFor(Path lost) {
        tasks.run(
                texts.get("keeping.restore.looking"),
                () -> context.copies().identity(lost),
                identity -> restore(lost, identity.orElse(null), true),
                context.tell()::failed);
    }

    private void restore(Path target, @Nullable String identity, boolean mayReplace) {
        RestorePage page = new RestorePage(
                context, new RestoreModel(context, words, target, identity), mayReplace, new RestorePage.Restores() {
                    @Override
                    public void asNew(Path copy) {
                        restoreAsNew(copy, target);
                    }

                    @Override
                    public void inPlace(Path copy) {
                        context.restore().accept(copy, target);
                    }
                });
        context.tell().show(page);
        page.begin();
    }

    private void restoreAsNew(Path copy, Path target) {
        suggested(copy, target).ifPresent(to -> {
            context.window().say(texts.get("keeping.restore.working"));
            tasks.write(
                    texts.get("keeping.restore.working"),
                    () -> context.copies().restore(copy, to),
                    this::restored,
                    context.tell()::failed);
        });
    }

    /**
     * Beside the logbook in hand, told apart from it by its name. From the sample, as on a computer that has nothing yet, it is
     * the team's own that comes back: by its name, and where people keep theirs.
     */
    private Optional<Path> suggested(Path copy, Path target) {
        return context.sample()
                ? context.choose()
                        .newLogbook()
                        .apply(Optional.of(context.choose()
                                .documents()
                                .resolve(context.copies().nameOf(copy) + ".witness")))
                : choose(target, "keeping.restore.name");
    }

    private void restored(Outcome<Restored> outcome) {
        if (!outcome.didWork()) {
            context.tell().refused(texts.get("keeping.restore"), outcome.problems());
            return;
        }
        context.tell().dismiss();
        Path made = outcome.orThrow().logbook();
        context.window()
                .say(
                        texts.get("keeping.restore.done", made),
                        Caption.of(texts.get("keeping.open")),
                        () -> context.open().accept(made));
    }

    /** Shows what the logbook could not take when it was saved, to be entered or put aside. */
    public void keptAside() {
        KeptAsidePage page = new KeptAsidePage(context);
        context.tell().show(page);
        page.begin();
    }

    /** Goes on with a logbook that lacks what was saved in it before; that is noted and not asked again. */
    public void goOnWithoutMissing() {
        context.window().dismissNotice();
        tasks.write(
                texts.get("keeping.goneOn"),
                () -> {
                    context.logbook().logbook().acceptMissing();
                    return texts.get("keeping.goneOn");
                },
                context.window()::say,
                context.tell()::failed);
    }

    /** Says which records of a damaged logbook are hit. */
    public void showHit(Path damaged) {
        tasks.apart(
                texts.get("keeping.hit.looking"),
                () -> context.copies().look(damaged),
                look -> context.tell()
                        .say(
                                texts.get("keeping.hit"),
                                "help.report",
                                new HitWords(texts, new RecordWords(texts)).of(look),
                                List.of(Styles.as(Styles.MAIN, button("keeping.close", context.tell()::dismiss)))),
                context.tell()::failed);
    }

    /** Asks for a damaged logbook, and where to put what can be read of it. */
    public void salvage() {
        context.choose().logbook().get().ifPresent(this::salvage);
    }

    /** Asks where to put what can be read of a logbook. */
    public void salvage(Path damaged) {
        choose(damaged, "keeping.salvage.name").ifPresent(to -> {
            String name = String.valueOf(damaged.getFileName());
            SalvageWords history = new SalvageWords(
                    texts.get("keeping.salvage.who", context.logbook().who()),
                    texts.get("keeping.salvage.why", name),
                    texts.get("keeping.salvage.doubtful", name));
            context.window().say(texts.get("keeping.salvage.working"));
            tasks.apart(
                    texts.get("keeping.salvage.working"),
                    () -> context.copies().salvage(damaged, to, history),
                    this::salvaged,
                    context.tell()::failed);
        });
    }

    private void salvaged(Outcome<Salvaged> outcome) {
        if (!outcome.didWork()) {
            context.tell().refused(texts.get("keeping.salvage"), outcome.problems());
            return;
        }
        Salvaged salvaged = outcome.orThrow();
        List<String> sentences = new ArrayList<>();
        sentences.add(texts.get(
                "keeping.salvage.done", salvaged.whole(), salvaged.logbook().toString()));
        if (salvaged.doubtful() > 0) {
            sentences.add(texts.get("keeping.salvage.struck", salvaged.doubtful()));
        }
        context.window().say(sentences.get(0));
        sentences.add(texts.get(salvaged.left().isEmpty() ? "keeping.salvage.all" : "keeping.salvage.meaning"));
        context.tell()
                .report(
                        texts.get("keeping.salvage"),
                        sentences,
                        salvaged.left(),
                        List.of(
                                button("keeping.close", context.tell()::dismiss),
                                Styles.as(Styles.MAIN, button("keeping.salvage.open", () -> {
                                    context.tell().dismiss();
                                    context.open().accept(salvaged.logbook());
                                }))));
    }

    /** Asks where to save the logbook under another name. Where its file is gone, that one is in the window from then on. */
    public void saveCopy() {
        Path path = context.logbook().logbook().path();
        choose(path, "keeping.copy.name").ifPresent(to -> {
            boolean gone = context.logbook().logbook().isMovedAway();
            context.window().say(texts.get("keeping.copy.working"));
            tasks.write(
                    texts.get("keeping.copy.working"),
                    () -> context.logbook().logbook().copyTo(to),
                    outcome -> copied(outcome, gone),
                    context.tell()::failed);
        });
    }

    private void copied(Outcome<Path> outcome, boolean gone) {
        if (!outcome.didWork()) {
            context.tell().refused(texts.get("keeping.copy"), outcome.problems());
        } else if (gone) {
            context.open().accept(outcome.orThrow());
        } else {
            context.window().say(texts.get("keeping.copy.done", outcome.orThrow()));
        }
    }

    /** Shows how things stand with the second place, and how to change it. */
    public void secondPlace() {
        if (context.sample()) {
            context.tell()
                    .say(
                            texts.get("keeping.elsewhere"),
                            "help.elsewhere",
                            List.of(texts.get("keeping.elsewhere.sample.tip"), texts.get("keeping.elsewhere.about")),
                            List.of(Styles.as(Styles.MAIN, button("keeping.close", context.tell()::dismiss))));
            return;
        }
        tasks.apart(
                texts.get("keeping.elsewhere.copying"),
                context.elsewhere()::bring,
                this::secondPlace,
                context.tell()::failed);
    }

    private void secondPlace(Look look) {
        SecondPlacePage page = new SecondPlacePage(
                texts,
                words,
                context.clock(),
                new SecondPlacePage.Ways(context.tell()::dismiss, this::stop, this::choosePlace, () -> inView = null));
        page.show(look);
        context.tell().show(page);
        inView = page;
    }

    private void looked(Look look) {
        SecondPlacePage page = inView;
        if (page != null) {
            page.show(look);
        }
    }

    private void stop() {
        context.elsewhere().stop();
        context.tell().dismiss();
        again();
    }

    private void choosePlace() {
        context.choose().place().get().ifPresent(place -> {
            context.window().say(texts.get("keeping.elsewhere.copying"));
            tasks.apart(
                    texts.get("keeping.elsewhere.copying"),
                    () -> context.elsewhere().choose(place),
                    this::chosen,
                    context.tell()::failed);
        });
    }

    private void chosen(Outcome<Look> outcome) {
        if (!outcome.didWork()) {
            context.tell().refused(texts.get("keeping.elsewhere"), outcome.problems());
            return;
        }
        Look look = outcome.orThrow();
        boolean more = !look.known().isEmpty() || !look.problems().isEmpty();
        context.tell().dismiss();
        context.window()
                .say(
                        more
                                ? words.line(look, context.clock().instant())
                                : words.sentence(look, context.clock().instant()));
        again();
        if (more) {
            secondPlace(look);
        }
    }

    private void again() {
        Elsewhere watched = elsewhere;
        if (watched != null) {
            watched.again();
        }
    }

    /** A name like that of the logbook, and where to put it: beside it, unless nothing can be written there. */
    private Optional<Path> choose(Path logbook, String name) {
        Path named = Path.of(texts.get(name, context.copies().nameOf(logbook)));
        return context.choose()
                .newLogbook()
                .apply(Optional.of(
                        context.logbook().logbook().readOnly().isPresent()
                                ? context.choose().documents().resolve(named)
                                : logbook.resolveSibling(named)));
    }

    private JButton button(String key, Runnable work) {
        return Buttons.plain(Caption.of(texts.get(key)), work);
    }
}
