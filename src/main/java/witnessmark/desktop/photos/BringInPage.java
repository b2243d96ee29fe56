package witnessmark.desktop.photos;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Ticking;
import witnessmark.domain.Engine;
import witnessmark.domain.Fact;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.logbook.View;
import witnessmark.logbook.photos.KeepPhotos;
import witnessmark.logbook.photos.KeepPhotos.About;
import witnessmark.outcome.Outcome;
import witnessmark.wording.FindingWords;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Asks once what a batch of photos is about, and takes it in, as far as nobody stops it. */
final class BringInPage implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(BringInPage.class);
    private static final Duration BETWEEN = Duration.ofMillis(200);
    private static final int NAMED = 12;

    private final PhotosContext context;
    private final Texts texts;
    private final Problems problems;
    private final List<Path> files;
    private final @Nullable Id<Incident> incident;
    private final Told told;
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));
    private final FieldBox caption;
    private final FieldBox number;
    private final ChoiceBox<Option> engine;
    private final ChoiceBox<Option> part;
    private final ChoiceBox<Option> finding;
    private final JTextArea said = Lettering.paragraph(" ", Styles.FIELD_LABEL);
    private final JButton keep;
    private final JButton leave;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final AtomicInteger done = new AtomicInteger();
    private @Nullable Ticking ticking;
    private boolean gone;

    /** Something that can be chosen; none where the identity is empty. */
    private record Option(String id, String words) {}

    /**
     * Who is told what of it.
     *
     * @param remember told what was answered
     * @param taken told when files were taken in, before anything is shown anew
     * @param back told when somebody is done with it
     * @param over told when its files are wanted no more, whatever took its place
     * @param ended told when nothing is being taken in any more, and whether all of it is in
     */
    record Told(Consumer<About> remember, Runnable taken, Runnable back, Runnable over, Consumer<Boolean> ended) {}

    BringInPage(PhotosContext context, List<Path> files, About about, Told told) {
        this.context = context;
        this.texts = context.texts();
        this.problems = new Problems(texts, context.measures());
        this.files = List.copyOf(files);
        this.incident = about.incident();
        this.told = told;
        this.caption = new FieldBox(Caption.of(texts.get("photos.caption")));
        this.number = new FieldBox(Caption.of(texts.get("photos.cylinder")));
        this.engine = choice("photos.engine");
        this.part = choice("photos.part");
        this.finding = choice("photos.finding");
        this.keep = Buttons.main(
                Caption.of(texts.get("photos.keep", files.size())), Keys.menu(KeyEvent.VK_ENTER), this::keep);
        this.leave = Buttons.plain(Caption.of(texts.get("photos.leave")), this::leave);
        say("");
        fill(context.book().view(), about);
        page.setOpaque(false);
        page.add(new ScrollPage(layOut()), "grow");
        FormKeys.bindWithin(page, Keys.menu(KeyEvent.VK_ENTER), "wm-keep", this::keep);
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", this::leave);
    }

    private ChoiceBox<Option> choice(String key) {
        return new ChoiceBox<>(texts, Caption.of(texts.get(key)), Option::words);
    }

    private void fill(View view, About about) {
        FindingWords findings = new FindingWords(texts, context.measures());
        load(engine, all(view, Engine.class, Engine::number), about.engine());
        load(part, all(view, Part.class, Part::mark), about.part());
        load(
                finding,
                view.facts().of(Finding.class).where(found -> Objects.equals(found.incident(), incident)).stream()
                        .map(found -> new Option(found.id().text(), findings.whole(view.facts(), found.fact())))
                        .toList(),
                about.finding());
        finding.setVisible(incident != null && finding.combo().getItemCount() > 1);
        number.load(about.number() == null ? "" : Integer.toString(about.number()));
        caption.note(texts.get("photos.caption.note"));
        number.note(texts.get("photos.cylinder.note"));
    }

    private <F extends Fact> List<Option> all(View view, Class<F> kind, Function<F, String> name) {
        return view.facts()
                .of(kind)
                .inForce()
                .map(entry -> new Option(entry.id().text(), name.apply(entry.fact())))
                .sorted(Comparator.comparing(Option::words))
                .toList();
    }

    private void load(ChoiceBox<Option> box, List<Option> options, @Nullable Id<?> chosen) {
        List<Option> all = new ArrayList<>(List.of(new Option("", texts.get("photos.nothing"))));
        all.addAll(options);
        box.load(
                all,
                all.stream()
                        .filter(option -> chosen != null && option.id().equals(chosen.text()))
                        .findFirst()
                        .orElse(all.get(0)));
    }

    private Sheet layOut() {
        Sheet sheet = new Sheet("fillx, hidemode 3", "[0::,grow,fill,sg]14[0::,grow,fill,sg]14[0:190:190,fill]", "");
        sheet.add(Lettering.cutLine(texts.get("photos.batch", files.size()), Styles.SECTION), "span, wmin 0, wrap");
        sheet.add(Lettering.paragraph(names(), Styles.NOTE), "span, growx, wmin 0, wrap 8");
        sheet.add(caption, "span, growx, wmin 0, wrap");
        sheet.add(engine, "wmin 0");
        sheet.add(part, "wmin 0");
        sheet.add(number, "wmin 0, wrap");
        sheet.add(finding, "span, growx, w 0:0:, wrap"); // its longest choice does not widen the page
        sheet.add(said, "span, growx, wmin 0, wrap 8");
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8, alignx right"));
        foot.setOpaque(false);
        foot.add(leave);
        foot.add(keep);
        sheet.add(foot, "span, growx");
        return sheet;
    }

    private String names() {
        List<String> names = files.stream()
                .limit(NAMED)
                .map(file -> String.valueOf(file.getFileName()))
                .toList();
        return files.size() <= NAMED
                ? context.measures().all(names)
                : texts.get("photos.batch.more", context.measures().row(names), files.size() - NAMED);
    }

    @Override
    public String heading() {
        return texts.get("photos.bringIn");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return caption.field();
    }

    @Override
    public List<String> help() {
        return List.of("help.photos");
    }

    /** What is being taken in is not taken away from under it. */
    @Override
    public void gone() {
        gone = true;
        if (ticking == null) {
            told.over().run();
        }
    }

    List<Path> files() {
        return files;
    }

    /** Whether photos are being taken in. */
    boolean isAtWork() {
        return ticking != null;
    }

    /** Nobody waits for it any more: nothing is begun after the photo in hand. */
    void stop() {
        stopped.set(true);
    }

    /** While there is nothing to say there is no line for it. */
    private void say(String words) {
        said.setText(words);
        said.setVisible(!words.isEmpty());
    }

    ChoiceBox<?> finding() {
        return finding;
    }

    FieldBox caption() {
        return caption;
    }

    void keep() {
        if (!keep.isEnabled()) {
            return;
        }
        Integer which = number();
        if (which == null && !number.text().isBlank()) {
            number.stop(texts.get("photos.cylinder.unread"));
            number.takeFocus();
            return;
        }
        About about = new About(
                incident,
                this.<Finding>chosen(finding),
                this.<Engine>chosen(engine),
                this.<Part>chosen(part),
                which,
                caption.text().strip());
        told.remember().accept(about);
        keep.setEnabled(false);
        stopped.set(false);
        leave.setText(Caption.of(texts.get("photos.stop")).text());
        ticking = context.tools().tasks().every(BETWEEN, this::progress);
        String why = texts.get("photos.why", files.size());
        context.tools()
                .tasks()
                .apart(
                        why,
                        () -> context.keep().take(files, about, count -> {
                            done.set(count);
                            return !stopped.get();
                        }),
                        batch -> write(batch, why),
                        this::failed);
    }

    /** The bytes are there, however long a card held them up: only now does it stand in line with what else is saved. */
    private void write(Outcome<KeepPhotos.Batch> batch, String why) {
        context.tools()
                .tasks()
                .write(why, () -> batch.then(taken -> context.keep().write(taken, why)), this::kept, this::failed);
    }

    private void failed(Throwable failure) {
        LOG.error("photos could not be brought in", failure);
        over();
        keep.setEnabled(true);
        tell(List.of(texts.get("photos.failed")));
        told.ended().accept(false);
    }

    private @Nullable Integer number() {
        String text = number.text().strip();
        return text.matches("[1-9]\\d?") ? Integer.valueOf(text) : null;
    }

    private <F extends Fact> @Nullable Id<F> chosen(ChoiceBox<Option> box) {
        Option option = box.chosen();
        return option == null || option.id().isEmpty() ? null : Id.parse(option.id());
    }

    private void progress() {
        say(texts.get("photos.progress", done.get(), files.size()));
    }

    private void over() {
        Ticking now = ticking;
        if (now != null) {
            now.close();
            ticking = null;
        }
        if (gone) {
            told.over().run();
        }
        leave.setText(Caption.of(texts.get("photos.leave")).text());
    }

    private void kept(Outcome<KeepPhotos.Kept> outcome) {
        over();
        if (!outcome.didWork()) {
            keep.setEnabled(true);
            tell(outcome.problems().stream().map(problems::sentence).toList());
            told.ended().accept(false);
            return;
        }
        KeepPhotos.Kept kept = outcome.orThrow();
        told.taken().run();
        context.window().changed();
        String words = texts.get(kept.left() == 0 ? "photos.kept" : "photos.kept.stopped", kept.kept(), kept.left());
        if (kept.written() != null) {
            context.window()
                    .say(
                            words,
                            Caption.of(texts.get("photos.undo")),
                            context.asked().undo());
        }
        if (kept.problems().isEmpty()) {
            if (!gone) {
                leave();
            }
            told.ended().accept(kept.left() == 0);
            return;
        }
        List<String> all = new ArrayList<>(List.of(words));
        kept.problems().stream().map(problems::sentence).forEach(all::add);
        tell(all);
        leave.requestFocusInWindow();
        told.ended().accept(false);
    }

    /** Here; and over whatever is in view where nobody sees this page any more. */
    private void tell(List<String> sentences) {
        say(String.join("\n", sentences));
        if (gone) {
            context.window().say(String.join(" ", sentences));
        }
    }

    /** While photos are taken in it stops that; else it goes back. */
    void leave() {
        if (ticking != null) {
            stop();
            return;
        }
        context.asked().leave().run();
        told.back().run();
    }
}
