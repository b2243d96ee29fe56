package witnessmark.desktop.bench;

import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.lessons.LessonLine;
import witnessmark.desktop.lessons.LessonsView;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.speed.SpeedSide;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.LessonCheck;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Texts;

/** The measuring bench: reads the builds and the sheet in hand off the event thread and shows them. */
public final class BenchPlace implements Place {
    private static final Logger LOG = LoggerFactory.getLogger(BenchPlace.class);

    private final BenchContext context;
    private final Texts texts;
    private final BenchWords words;
    private final ReadBench reader;
    private final FigureWords figures;
    private final Hows hows;
    private final Latest reading;
    private final Latest looking;
    private final InHand inHand;
    private final SpeedSide speed;
    private final BenchPanel panel;
    private final JButton again;
    private final List<Command> commands;
    private final Map<String, OnBench> builds = new HashMap<>();
    private final Set<String> drafts = new HashSet<>();
    private @Nullable OnBench bench;
    private @Nullable BenchLines shown;
    private @Nullable String wanted;
    private How how;
    private boolean arriving;

    public BenchPlace(BenchContext context) {
        this.context = context;
        this.texts = context.texts();
        this.words = new BenchWords(texts, context.measures());
        this.reader = new ReadBench(context.book(), words);
        this.figures = new FigureWords(texts, context.measures());
        this.hows = new Hows(context.measures().units().temperature());
        this.how = How.by(context.book().who());
        this.reading = new Latest(context.tasks());
        this.looking = new Latest(context.tasks());
        this.inHand = new InHand(
                texts,
                figures,
                context.measures().sign(context.measures().units().temperature()),
                this::set);
        this.speed = new SpeedSide(
                texts,
                context.measures(),
                context.tasks(),
                () -> context.book().view(),
                context.window()::say,
                this::failed);
        this.panel = new BenchPanel(
                texts,
                inHand,
                new Fields(),
                this::open,
                this::sign,
                this::print,
                this::save,
                new LessonsView(texts, this::answer, this::incident, this::top),
                speed);
        panel.answers().ways(this::ways);
        this.again = Buttons.plain(Caption.of(texts.get("bench.again")), this::refresh);
        this.commands = List.of(
                new Command(texts, "bench.command.measure", CommandMenu.RECORD, 2, null, this::measure),
                new Command(
                        texts, "bench.command.large", CommandMenu.VIEW, 2, Keys.plain(KeyEvent.VK_F8), this::large));
        FormKeys.bindInWindow(
                panel, Keys.menu(KeyEvent.VK_P), "wm-print", this::print); // where it shows, before the menus
        FormKeys.bindWithin(panel, Keys.plain(KeyEvent.VK_ESCAPE), "wm-small", inHand::isLarge, this::small);
        inHand.none(how, null);
        lookForDrafts();
    }

    @Override
    public PlaceId id() {
        return PlaceId.MEASURING_BENCH;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        OnBench now = bench;
        arriving = now == null;
        return now == null ? panel.firstFocus() : firstField(now);
    }

    /** The field that was in hand, else the first where nothing stands. */
    private JComponent firstField(OnBench now) {
        return panel.grids()
                .inHand()
                .or(() -> now.model().firstEmpty().flatMap(panel.grids()::field))
                .<JComponent>map(field -> field)
                .orElse(panel.firstFocus());
    }

    @Override
    public List<Command> commands() {
        return commands;
    }

    @Override
    public void refresh() {
        String asked = wanted;
        Set<String> known = Set.copyOf(builds.keySet());
        reading.run(texts.get("bench.reading"), () -> reader.read(asked, known), this::show, this::failed);
    }

    /** Shows a build, or the open build of an engine, or the one measured last, by the text form of its identity. */
    @Override
    public void open(String record) {
        wanted = record;
        refresh();
    }

    /** Says what shows the page of a build: told the text of its identity. */
    public void onPage(Consumer<String> page) {
        panel.leadsTo(texts.get("builds.page"), () -> {
            String build = wanted;
            if (build != null) {
                page.accept(build);
            }
        });
    }

    private void show(ReadBench.Read read) {
        context.window()
                .heading(
                        PlaceId.MEASURING_BENCH,
                        context.measures().date(read.view().day()));
        SheetPage page = read.page();
        BenchLines lines = read.lines();
        if (page == null || lines == null) {
            bench = null;
            panel.none();
            return;
        }
        boolean other = !lines.build().equals(wanted) || bench == null;
        wanted = lines.build();
        shown = lines;
        OnBench now = builds.computeIfAbsent(lines.build(), id -> onBench(lines, page));
        now.model().become(page);
        bench = now;
        inHand.tools(read.tools());
        boolean editable = !read.view().readOnly();
        panel.show(read.choices(), now.lines(lines));
        speed.show(page.build().id());
        panel.editable(editable);
        inHand.editable(editable);
        read.draft().ifPresent(now::restore);
        now.workOut();
        fill();
        if (arriving && other) {
            arriving = false;
            firstField(now).requestFocusInWindow();
        }
    }

    private OnBench onBench(BenchLines lines, SheetPage page) {
        return new OnBench(context, lines.title(), new BenchModel(page, how, hows), hows, words, new OnScreen());
    }

    /** Everything that is said of what is typed. */
    private void fill() {
        OnBench now = bench;
        if (now == null) {
            return;
        }
        BenchModel model = now.model();
        panel.grids().fill(field -> {
            MeasurePlace place = field.cell().place();
            if (field.isNews(model.basis(place))) {
                field.load(model.text(place));
                field.stand(figures.stand(model, place), figures.say(model, place));
            }
        });
        BenchLines written = shown;
        if (written != null) {
            panel.lines(now.lines(written));
        }
        panel.foot(
                now.draftLine(),
                now.failure(),
                model.needLook().stream()
                        .map(place -> new BenchPanel.Look(place, figures.look(model, place)))
                        .toList());
        panel.grids()
                .inHand()
                .ifPresentOrElse(
                        field -> showInHand(now, field),
                        () -> inHand.none(model.how(), model.page().design()));
        context.window()
                .draft(
                        PlaceId.MEASURING_BENCH,
                        builds.values().stream().anyMatch(one -> one.model().isDirty())
                                || drafts.stream().anyMatch(id -> !builds.containsKey(id)));
    }

    private void showInHand(OnBench now, FigureField field) {
        MeasurePlace place = field.cell().place();
        inHand.show(now.model(), field, figures.say(now.model(), place), now::count);
    }

    // What a person does

    private void set(How next) {
        how = next;
        inHand.temperature(hows.reads(next) ? null : hows.example(next));
        OnBench now = bench;
        if (now != null) {
            now.model()
                    .how(
                            next,
                            panel.grids()
                                    .inHand()
                                    .map(field -> field.cell().place())
                                    .orElse(null));
        }
    }

    private void save() {
        OnBench now = bench;
        if (now != null && !context.book().view().readOnly()) {
            now.save();
        }
    }

    /** What can be done about an answer. */
    private void ways(AnswerLine line, JPanel under) {
        Prefilled accept = line.accept();
        if (accept != null && !context.book().view().readOnly()) {
            under.add(
                    Buttons.plain(
                            Caption.of(texts.get("bench.accept")),
                            () -> whenWritten(
                                    "bench.accept.first", () -> context.write().accept(accept))),
                    "growx 0, gaptop 4");
        }
        AnswerLine.Wanted wanted = line.wanted();
        if (wanted != null) {
            under.add(
                    new WaysView(texts, line.kind(), wanted, (parts, then) -> look(line.kind(), parts, then)),
                    "growx, wmin 0, gaptop 6");
        }
    }

    private void look(MeasureKind kind, long parts, Consumer<List<WaysView.Way>> then) {
        OnBench now = bench;
        if (now == null) {
            return;
        }
        Id<Build> build = now.model().page().build().id();
        looking.run(
                texts.get("bench.ways.looking"),
                () -> SeeBuildSheet.ways(context.book().view(), build, kind, parts).stream()
                        .map(way -> new WaysView.Way(way.possible(), words.fit().way(way)))
                        .toList(),
                then,
                this::failed);
    }

    private void sign() {
        OnBench now = bench;
        if (now == null || context.book().view().readOnly()) {
            return;
        }
        Id<Build> build = now.model().page().build().id();
        whenWritten("bench.sign.first", () -> context.write().accept(Prefilled.signing(build)));
    }

    /** A question is answered whatever is typed; a figure is accepted as it is written. */
    private void answer(LessonLine line) {
        OnBench now = bench;
        if (now == null) {
            return;
        }
        SheetPage page = now.model().page();
        Runnable write =
                () -> context.write().accept(Prefilled.answering(page.build().id(), Id.parse(line.id())));
        boolean figure = page.lessons().stream()
                .map(LessonCheck::lesson)
                .anyMatch(lesson ->
                        lesson.id().text().equals(line.id()) && lesson.fact().kind() != null);
        if (figure) {
            whenWritten("bench.accept.first", write);
        } else {
            write.run();
        }
    }

    private void incident(LessonLine line) {
        String incident = line.incident();
        if (incident != null) {
            context.window().go(PlaceId.INCIDENTS, incident);
        }
    }

    private JComponent top() {
        return panel.firstFocus();
    }

    /** What goes by what is written waits until that is. */
    private void whenWritten(String first, Runnable then) {
        if (bench().model().isDirty()) {
            context.window().say(texts.get(first));
        } else {
            then.run();
        }
    }

    /** What is written is printed; what is typed first has to be, unless the day is only looked at. */
    private void print() {
        OnBench now = bench;
        if (now != null && now.model().isDirty() && !context.book().view().readOnly()) {
            context.window().say(texts.get("buildsheet.first"));
        } else {
            context.print().run();
        }
    }

    /** The build on the bench; empty while there is none. */
    public Optional<Id<Build>> buildShown() {
        return Optional.ofNullable(bench).map(now -> now.model().page().build().id());
    }

    private void measure() {
        Optional<Id<Engine>> engine = context.engineInView().get();
        context.window().go(PlaceId.MEASURING_BENCH);
        OnBench now = bench;
        if (engine.isPresent()) {
            open(engine.get().text());
        } else if (now != null) {
            now.model().firstEmpty().ifPresent(panel::focus);
        }
    }

    private void small() {
        panel.large(false);
    }

    private void large() {
        context.window().go(PlaceId.MEASURING_BENCH);
        panel.large(!inHand.isLarge());
    }

    /** Finds out which builds have figures typed before the program was started, without reading their sheets. */
    private void lookForDrafts() {
        context.tasks()
                .run(
                        texts.get("bench.opening"),
                        () -> context.book().logbook().drafts().begun().stream()
                                .filter(draft -> draft.form().equals(OnBench.FORM))
                                .map(Drafts.Begun::record)
                                .toList(),
                        found -> {
                            drafts.addAll(found);
                            context.window().draft(PlaceId.MEASURING_BENCH, !drafts.isEmpty());
                        },
                        failure -> LOG.error("drafts of build sheets could not be looked for", failure));
    }

    void failed(Throwable failure) {
        LOG.error("the build sheet could not be put together", failure);
        panel.failed(texts.get("bench.failed"), again);
    }

    @Nullable
    BenchLines lines() {
        return shown;
    }

    OnBench bench() {
        return Objects.requireNonNull(bench);
    }

    BenchModel model() {
        return bench().model();
    }

    BenchPanel panel() {
        return panel;
    }

    InHand inHand() {
        return inHand;
    }

    /** What the fields tell. */
    private final class Fields implements GridsView.Told {
        @Override
        public void arrived(MeasurePlace place) {
            arriving = false;
            OnBench now = bench;
            if (now != null) {
                panel.grids().field(place).ifPresent(field -> showInHand(now, field));
            }
        }

        @Override
        public void left(MeasurePlace place) {
            OnBench now = bench;
            if (now != null) {
                now.left(place);
            }
        }

        @Override
        public void typed(MeasurePlace place, String text) {
            OnBench now = bench;
            if (now != null) {
                now.model().type(place, text);
            }
        }
    }

    /** What is seen of a build while it is on the bench. */
    private final class OnScreen implements OnBench.Seen {
        @Override
        public void changed() {
            fill();
        }

        @Override
        public void focus(MeasurePlace place) {
            panel.focus(place);
        }

        @Override
        public Optional<MeasurePlace> inHand() {
            return panel.grids().inHand().map(field -> field.cell().place());
        }
    }
}
