package witnessmark.desktop.beforewego;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.LastFocus;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.AsideStage;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;
import witnessmark.domain.Car;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Before we go: reads how the team stands off the event thread and shows it. */
public final class BeforeWeGoPlace implements Place {
    private static final Logger LOG = LoggerFactory.getLogger(BeforeWeGoPlace.class);

    private final Texts texts;
    private final Desk desk;
    private final Supplier<View> view;
    private final BeforeWeGoModel model;
    private final Tasks tasks;
    private final Latest latest;
    private final BeforeWeGoPanel panel;
    private final LastFocus lastFocus;
    private final JButton again;
    private final List<Consumer<String>> onDay = new ArrayList<>();
    private Consumer<String> openEntry = record -> {};
    private Consumer<String> openTrends = record -> {};
    private Consumer<Prefilled> write = sheet -> {};
    private Consumer<String> planJob = run -> {};
    private Supplier<List<OutLine>> begun = List::of;
    private Runnable print = () -> {};
    private Supplier<Instant> clock = () -> Instant.EPOCH;
    private @Nullable Ticking ticking;
    private BiConsumer<Id<Car>, String> looked = (car, what) -> {};
    private String day = "";
    /** On arrival there may be nothing yet to give the focus to. */
    private boolean focusWhenShown = true;

    private final AsideStage stage;

    /**
     * @param desk the window's
     * @param view the logbook as of the day looked at; asked off the event thread
     * @param actions what the page leads to besides records
     * @param importSeason asks for a season folder to bring in
     */
    public BeforeWeGoPlace(
            SheetTools tools,
            Measures measures,
            Desk desk,
            Supplier<View> view,
            BeginActions actions,
            Runnable importSeason) {
        this.texts = tools.texts();
        this.desk = desk;
        this.view = view;
        this.model = new BeforeWeGoModel(texts, measures);
        this.tasks = tools.tasks();
        this.latest = new Latest(tasks);
        this.panel = new BeforeWeGoPanel(
                tools,
                actions,
                importSeason,
                new BeforeWeGoPanel.Opening(
                        line -> desk.go(line.build() ? PlaceId.MEASURING_BENCH : PlaceId.ENGINES, line.record()),
                        line -> desk.go(PlaceId.RUN_SHEET, line.record()),
                        line -> desk.go(PlaceId.ENGINES, line.record()),
                        line -> desk.go(PlaceId.INCIDENTS, line.record()),
                        line -> openTrends.accept(line.record()),
                        line -> openEntry.accept(line.record()),
                        prefilled -> write.accept(prefilled),
                        this::tick,
                        run -> planJob.accept(run),
                        () -> print.run()));
        this.again = Buttons.plain(Caption.of(texts.get("beforewego.again")), this::refresh);
        this.stage = new AsideStage(desk, PlaceId.BEFORE_WE_GO, panel, desk::goAside);
        this.lastFocus = new LastFocus(panel);
    }

    @Override
    public PlaceId id() {
        return PlaceId.BEFORE_WE_GO;
    }

    @Override
    public JComponent component() {
        return stage.component();
    }

    @Override
    public JComponent firstFocus() {
        return stage.shown().map(Aside::firstFocus).orElseGet(panel::firstFocus);
    }

    @Override
    public void refresh() {
        stage.shown().ifPresent(Aside::changed);
        latest.run(
                texts.get("beforewego.reading"),
                () -> new Read(model.lines(SeeStanding.of(view.get())), begun.get()),
                this::show,
                failure -> {
                    LOG.error("how the team stands could not be worked out", failure);
                    panel.failed(texts.get("beforewego.failed"), again);
                });
    }

    /** What calls is counted from the same lines. */
    @Override
    public void recount() {
        refresh();
    }

    @Override
    public List<String> help() {
        return stage.shown().map(Aside::help).orElse(List.of(id().helpKey()));
    }

    @Override
    public List<Command> commands() {
        return List.of();
    }

    /** Puts another page in the place of this one until {@link #dismiss} is called. */
    public void stepAside(Aside other) {
        stage.show(other);
    }

    @Override
    public void again() {
        if (stage.isAskedFor()) {
            dismiss();
        }
    }

    /** Brings back what was in view before the other page: this one, or where that was called from. */
    public void dismiss() {
        boolean other = stage.shown().isPresent();
        if (stage.leave()) {
            focusWhenShown = true;
            refresh();
        }
        if (other) {
            desk.heading(PlaceId.BEFORE_WE_GO, day);
        }
    }

    /** Says what shows an entry by the text of its identity: a job, what is with others, a batch, a part. */
    public void onOpen(Consumer<String> open) {
        this.openEntry = open;
    }

    /** Says what shows where the readings of an engine are going: told the engine's identity as text. */
    public void onTrends(Consumer<String> trends) {
        this.openTrends = trends;
    }

    /** Says what opens a sheet that is about something chosen here. */
    public void onWrite(Consumer<Prefilled> write) {
        this.write = write;
    }

    /** Says what plans a job of what was told of a run: told the identity of the run as text. */
    public void onPlanJob(Consumer<String> planJob) {
        this.planJob = planJob;
    }

    /** Says what prints the job sheet. */
    public void onPrint(Runnable print) {
        this.print = print;
    }

    /** Says what writes down that something was looked at now: told the car, and what. */
    public void onLooked(BiConsumer<Id<Car>, String> looked) {
        this.looked = looked;
    }

    /** Says what was begun on sheets and not saved; asked off the event thread. */
    public void onBegun(Supplier<List<OutLine>> begun) {
        this.begun = begun;
    }

    private void tick(NextRunLines.Tick tick) {
        if (tick.isDone()) {
            openEntry.accept(tick.record());
        } else {
            looked.accept(Id.parse(tick.car()), tick.what());
        }
    }

    /** Says what the clock shows; until then nothing is counted down. */
    public void onClock(Supplier<Instant> clock) {
        this.clock = clock;
    }

    /** Counts down as long as there is a run to come. */
    private void tick(boolean toCome) {
        Ticking now = ticking;
        if (toCome && now == null) {
            ticking = tasks.every(Duration.ofMinutes(1), this::minute);
        } else if (!toCome && now != null) {
            now.close();
            ticking = null;
        }
    }

    /** A page that is in no window any more is not waited for. */
    private void minute() {
        if (stage.component().isDisplayable()) {
            panel.tell(clock.get());
        } else {
            tick(false);
        }
    }

    BeforeWeGoPanel panel() {
        return panel;
    }

    /** Told the day looked at, in words, whenever another day is shown than before. */
    public void onDay(Consumer<String> listener) {
        onDay.add(listener);
    }

    /** Whoever has begun to type in the find field meanwhile goes on there: no letter is lost to this page. */
    private static boolean typesElsewhere(@Nullable Component owner) {
        return owner instanceof JTextComponent;
    }

    /** What is shown. */
    private record Read(StandingLines lines, List<OutLine> begun) {}

    private void show(Read read) {
        StandingLines lines = read.lines();
        boolean first = day.isEmpty();
        boolean another = !first && !day.equals(lines.day());
        day = lines.day();
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean within = owner != null && SwingUtilities.isDescendingFrom(owner, panel);
        panel.show(lines, read.begun(), clock.get());
        tick(!lines.nextRuns().isEmpty());
        if (another) {
            onDay.forEach(listener -> listener.accept(day));
        }
        desk.waiting(PlaceId.BEFORE_WE_GO, lines.calling());
        boolean own = stage.shown().isEmpty();
        if (own) {
            desk.heading(PlaceId.BEFORE_WE_GO, day);
        }
        JComponent ticked = panel.afterTick();
        if (ticked != null && within) {
            ticked.requestFocusInWindow();
        } else if ((focusWhenShown && !typesElsewhere(owner) || within)
                && own
                && stage.component().isShowing()) {
            // before the first rows there was nothing to choose: where the focus stood then, nobody put it
            JComponent to = first ? panel.firstFocus() : lastFocus.component().orElseGet(panel::firstFocus);
            to.requestFocusInWindow();
        }
        focusWhenShown = false;
    }
}
