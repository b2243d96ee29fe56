package witnessmark.desktop.engines;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Dot;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.photos.PhotoStrip;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.AsideStage;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Build;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.logbook.Desk;
import witnessmark.logbook.engines.EngineSheet;
import witnessmark.logbook.engines.Engines;
import witnessmark.logbook.engines.SeeEngine;
import witnessmark.logbook.port.Settings;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.study.result.DynoAnswer;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Engines: reads lists, the engine in hand and the entries behind a figure off the event thread, and shows them. */
public final class EnginesPlace implements Place {

    private final Texts texts;
    private final witnessmark.desktop.shell.Desk window;
    private final Supplier<Desk> desk;
    private final Consumer<Entry<?>> correct;
    private final EnginesModel model;
    private final LifeMarks lifeMarks;
    private final CurvesModel curvesModel;
    private final Latest readingList;
    private final Latest readingOwner;
    private final Latest readingSheet;
    private final FigureInHand figure;
    private final ListSheets lists;
    private final EngineSheetView sheet;
    private final PartView partView;
    private final PartInHand part;
    private final AsOfStrip asOf;
    private final AnotherDay another;
    private final EnginesPanel panel;
    private final AsideStage stage;
    private Consumer<Id<Engine>> page = id -> {};
    private Consumer<Id<Build>> build = id -> {};
    private Consumer<Id<Engine>> traces = id -> {};
    private Runnable tags = () -> {};
    private final EngineCommands commands;
    private @Nullable Engines engines;
    private @Nullable String wanted;
    private @Nullable String engine;

    /**
     * @param window the window's desk
     * @param desk the logbook in hand; asked anew each time, since another may be opened
     * @param settings where it is remembered how people like the lists
     * @param order what stands first in a date of figures
     * @param correct opens a written entry on its sheet
     */
    public EnginesPlace(
            Texts texts,
            Measures measures,
            Tasks tasks,
            witnessmark.desktop.shell.Desk window,
            Supplier<Desk> desk,
            Settings settings,
            DayOrder order,
            Consumer<Entry<?>> correct) {
        SheetTools tools = new SheetTools(texts, tasks, settings);
        this.texts = texts;
        this.window = window;
        this.desk = desk;
        this.correct = correct;
        model = new EnginesModel(texts, measures);
        lifeMarks = new LifeMarks(texts, measures);
        curvesModel = new CurvesModel(texts, measures);
        readingList = new Latest(tasks);
        readingOwner = new Latest(tasks);
        readingSheet = new Latest(tasks);
        figure = new FigureInHand(
                texts,
                measures,
                tasks,
                desk,
                window,
                correct,
                new FigureInHand.Page(this::beside, this::firstFocus, this::failed));
        lists = new ListSheets(tools, figure::open, this::openPart);
        sheet = new EngineSheetView(tools, measures, figure.work(), new Asked());
        partView = new PartView(
                tools,
                figure.work(),
                new PartView.Asked(
                        figure::open,
                        id -> window.go(PlaceId.ENGINES, id),
                        figure::correct,
                        id -> window.go(PlaceId.MEASURING_BENCH, id),
                        figure::close,
                        this::backToEngine));
        another = new AnotherDay(texts, measures, window, desk);
        asOf = new AsOfStrip(texts, new AsOfModel(texts, measures, order), this::lookAsOf, this::leaveAsOf);
        panel = new EnginesPanel(texts, lists, sheet, partView, asOf);
        part = new PartInHand(texts, measures, tasks, desk, partView, panel::showPart, this::failed);
        stage = new AsideStage(window, PlaceId.ENGINES, panel, window::go);
        lists.onChoose(this::chosen);
        commands = new EngineCommands(
                texts,
                new EngineCommands.Doing(
                        this::askAsOf, another::back, this::chartAsTable, this::copyChart, this::showTrends));
    }

    @Override
    public PlaceId id() {
        return PlaceId.ENGINES;
    }

    @Override
    public JComponent component() {
        return stage.component();
    }

    /** Says what shows the page of an engine's build, of a build, the traces of its runs, a trial, and what prints its tags. */
    public void leadsTo(
            Consumer<Id<Engine>> ofEngine,
            Consumer<Id<Build>> ofBuild,
            Consumer<Id<Engine>> tracesOf,
            Consumer<String> trial,
            Runnable printTags) {
        page = ofEngine;
        build = ofBuild;
        traces = tracesOf;
        tags = printTags;
        partView.onTrial(trial);
    }

    /** Adds the photos of the engine, and those of the part, to their pages. */
    public void with(PhotoStrip ofEngine, PhotoStrip ofPart) {
        sheet.with(ofEngine);
        partView.with(ofPart);
    }

    /** Puts another page in the place of the engine until {@link #dismiss} is called. */
    public void stepAside(Aside other) {
        stage.show(other);
    }

    /** Brings the engine back, or what the other page was called from. */
    public void dismiss() {
        if (stage.leave()) {
            refresh();
            firstFocus().requestFocusInWindow();
        }
    }

    @Override
    public void again() {
        if (stage.isAskedFor()) {
            dismiss();
        }
    }

    @Override
    public List<String> help() {
        return stage.shown().map(Aside::help).orElse(List.of(id().helpKey()));
    }

    /** The engine whose page is on screen; none while another place is, or the page of a part that is in no engine. */
    public Optional<Id<Engine>> engineInView() {
        return engine == null || part.isShown() || !panel.isShowing()
                ? Optional.empty()
                : Optional.of(Id.parse(engine));
    }

    /** Something was just read of an engine: it is in hand when somebody comes here; who is here keeps what he looks at. */
    public void read(Id<Engine> of) {
        wanted = panel.isShowing() ? wanted : of.text(); // once the list is read on arrival
    }

    @Override
    public JComponent firstFocus() {
        return stage.shown()
                .map(Aside::firstFocus)
                .orElseGet(() ->
                        part.isShown() ? partView.first() : lists.engines().table());
    }

    @Override
    public List<Command> commands() {
        return commands.all();
    }

    @Override
    public void refresh() {
        stage.shown().ifPresent(Aside::changed);
        readingList.run(
                texts.get("engines.reading"),
                () -> SeeEngine.all(desk.get().view()),
                this::showList,
                failure -> failed());
    }

    /**
     * Opens an engine, or the engine a part is in with the part chosen, or a part that is in no engine; of a build its
     * page.
     */
    @Override
    public void open(String record) {
        if (!EnginePage.isPage(record)
                && desk.get()
                        .logbook()
                        .facts()
                        .of(Build.class)
                        .find(Id.parse(record))
                        .isPresent()) {
            build.accept(Id.parse(record));
            return;
        }
        stage.dismiss();
        wanted = record;
        if (engines != null) {
            openWanted();
        }
    }

    private void showList(Engines read) {
        engines = read;
        EnginesLines lines = model.lines(read);
        panel.showPage(!lines.engines().isEmpty());
        lists.show(lines);
        if (stage.shown().isEmpty()) {
            window.heading(PlaceId.ENGINES, lines.day());
        }
        commands.followDay(read.readOnly());
        if (wanted != null) {
            openWanted();
        }
        if (lists.chosen() == null && !lines.engines().isEmpty()) {
            lists.chooseFirst(lines);
        } else {
            readSheet();
        }
        part.refresh();
        figure.refresh();
    }

    private void openWanted() {
        String record = wanted;
        if (record != null && EnginePage.isPart(record)) {
            String part = EnginePage.identity(record);
            lists.choosePart(part);
            openPart(part);
        } else if (record != null && EnginePage.isDynoSheet(record)) {
            EngineInHand.ofDynoSheet(desk.get().view(), EnginePage.identity(record))
                    .ifPresentOrElse(this::chooseAnew, () -> wanted = null);
        } else if (record != null && EnginePage.isTrends(record)) {
            chooseAnew(EnginePage.identity(record));
        } else if (record != null && lists.choose(record)) {
            wanted = null;
            leavePart();
        } else if (record != null) {
            lists.choosePart(record);
            readingOwner.run(
                    texts.get("engines.reading"),
                    () -> SeeEngine.engineOf(desk.get().view(), record),
                    owner -> owner.map(Id::text).ifPresentOrElse(this::chooseAnew, () -> openPart(record)),
                    failure -> failed());
        }
    }

    /** Chooses an engine, and shows it anew when it was chosen already: a part of it may be wanted. */
    private void chooseAnew(String owner) {
        leavePart();
        boolean already = owner.equals(lists.chosen());
        if (lists.choose(owner) && already) {
            readSheet();
        }
    }

    /** Another engine in hand takes its place back; the same one told again, since the list was read again, does not. */
    private void chosen(String now) {
        if (!now.equals(engine)) {
            engine = now;
            leavePart();
        }
        readSheet();
    }

    private void openPart(String record) {
        wanted = null;
        figure.putAway();
        part.open(record);
    }

    private void leavePart() {
        if (part.isShown()) {
            figure.putAway();
            part.close();
        }
    }

    private void backToEngine() {
        leavePart();
        firstFocus().requestFocusInWindow();
    }

    private Beside beside() {
        return part.isShown() ? partView.beside() : sheet.beside();
    }

    private void readSheet() {
        String chosen = lists.chosen();
        Engines all = engines;
        if (chosen == null || all == null) {
            return;
        }
        readingSheet.run(
                texts.get("engines.reading"),
                () -> EngineInHand.of(desk.get().view(), Id.parse(chosen)),
                read -> read.sheet().ifPresent(found -> show(found, read.dyno(), all)),
                failure -> failed());
    }

    private void show(EngineSheet read, List<DynoAnswer> dyno, Engines all) {
        String shown = read.row().engine().id().text();
        long end = Moment.endOf(read.day(), all.zone()).epochMillis();
        sheet.show(
                model.lines(read),
                lifeMarks.of(read.line(), end),
                end,
                all.zone(),
                which -> curvesModel.chart(all, shown, which),
                read.trends(),
                dyno);
        String record = wanted;
        if (record != null && EnginePage.isDynoSheet(record)) {
            if (sheet.dyno().choose(EnginePage.identity(record))) {
                wanted = null;
                reveal(sheet.dyno());
            }
        } else if (record != null && record.equals(EnginePage.ofTrends(shown))) {
            wanted = null;
            revealTrends();
        } else if (record != null && sheet.build().choosePart(record)) {
            wanted = null;
            reveal(sheet.build());
        }
    }

    /** Shows what is under a tab, also where the entries behind a figure stand in its place. */
    private void reveal(JComponent tab) {
        leavePart();
        if (!sheet.tabs().isVisible()) {
            figure.close();
        }
        sheet.tabs().setSelectedComponent(tab);
    }

    private void failed() {
        panel.failed(texts.get("engines.failed"), Buttons.plain(Caption.of(texts.get("engines.again")), this::refresh));
    }

    private void askAsOf() {
        window.go(PlaceId.ENGINES);
        panel.askAsOf(true);
        asOf.ask(desk.get().today().day());
    }

    private void leaveAsOf() {
        panel.askAsOf(false);
        firstFocus().requestFocusInWindow();
    }

    private void lookAsOf(LocalDate day) {
        another.look(day);
        leaveAsOf();
    }

    private void chartAsTable() {
        window.go(PlaceId.ENGINES);
        reveal(sheet.charted());
        sheet.toggleChart();
    }

    private void copyChart() {
        sheet.copyChart(window::say);
    }

    private void showTrends() {
        window.go(PlaceId.ENGINES);
        revealTrends();
    }

    private void revealTrends() {
        reveal(sheet.trends());
        sheet.trends().takeFocus();
    }

    ListSheets lists() {
        return lists;
    }

    EngineSheetView sheet() {
        return sheet;
    }

    PartView part() {
        return partView;
    }

    AsOfStrip asOf() {
        return asOf;
    }

    /** What the engine in hand leads to. */
    private final class Asked implements EngineSheetView.Asked {
        @Override
        public void part(String record) {
            openPart(record);
        }

        @Override
        public void behind(Shown figure) {
            EnginesPlace.this.figure.open(figure);
        }

        @Override
        public void page() {
            engineInView().ifPresent(page);
        }

        @Override
        public void buildSheet() {
            engineInView().ifPresent(id -> window.go(PlaceId.MEASURING_BENCH, id.text()));
        }

        @Override
        public void tags() {
            tags.run();
        }

        @Override
        public void traces() {
            engineInView().ifPresent(traces);
        }

        @Override
        public void open(LifeMark mark) {
            if (mark.kind().ofIncident()) {
                window.go(PlaceId.INCIDENTS, mark.source().id().text());
            } else {
                figure.openEntry(mark.source(), mark.words());
            }
        }

        @Override
        public void record(Dot point) {
            Engines all = engines;
            if (all != null) {
                EngineInHand.behind(all, point).ifPresent(source -> figure.openEntry(source, point.words()));
            }
        }

        @Override
        public void reading(Entry<Reading> reading, String words) {
            figure.openEntry(reading, words);
        }

        @Override
        public void dynoSheet(String id) {
            desk.get().view().facts().of(DynoSheet.class).find(Id.parse(id)).ifPresent(correct);
        }

        @Override
        public void say(String sentence) {
            window.say(sentence);
        }

        @Override
        public void closeBehind() {
            figure.close();
        }
    }
}
