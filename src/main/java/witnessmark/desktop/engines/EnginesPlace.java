package witnessmark.desktop.engines;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Dot;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.history.HistoryModel;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.engines.EngineSheet;
import witnessmark.logbook.engines.Engines;
import witnessmark.logbook.engines.Figure;
import witnessmark.logbook.engines.SeeBehind;
import witnessmark.logbook.engines.SeeEngine;
import witnessmark.logbook.engines.SeeHistory;
import witnessmark.logbook.port.Settings;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Engines: reads lists, the engine in hand and the entries behind a figure off the event thread, and shows them. */
public final class EnginesPlace implements Place {
    private final Texts texts;
    private final Measures measures;
    private final witnessmark.desktop.shell.Desk window;
    private final Supplier<Desk> desk;
    private final Consumer<Entry<?>> correct;
    private final EnginesModel model;
    private final LifeMarks lifeMarks;
    private final CurvesModel curvesModel;
    private final BehindModel behindModel;
    private final HistoryModel historyModel;
    private final Latest readingList;
    private final Latest readingOwner;
    private final Latest readingSheet;
    private final Latest readingBehind;
    private final ListSheets lists;
    private final EngineSheetView sheet;
    private final PartView partView;
    private final PartInHand part;
    private final AsOfStrip asOf;
    private final EnginesPanel panel;
    private final List<Command> commands;
    private @Nullable Engines engines;
    private @Nullable String wanted;
    private @Nullable String engine;
    private @Nullable Figure opened;
    private @Nullable JComponent cameFrom;

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
        this.measures = measures;
        this.window = window;
        this.desk = desk;
        this.correct = correct;
        model = new EnginesModel(texts, measures);
        lifeMarks = new LifeMarks(texts, measures);
        curvesModel = new CurvesModel(texts, measures);
        behindModel = new BehindModel(texts, measures);
        historyModel = new HistoryModel(texts, measures);
        readingList = new Latest(tasks);
        readingOwner = new Latest(tasks);
        readingSheet = new Latest(tasks);
        readingBehind = new Latest(tasks);
        lists = new ListSheets(tools, this::behind, this::openPart);
        EntryChanges changes = new EntryChanges(texts, new Problems(texts, measures), tasks, desk, window, behindModel);
        sheet = new EngineSheetView(tools, measures, new Work(changes), new Asked());
        partView = new PartView(
                tools,
                new Work(changes),
                new PartView.Asked(
                        this::behind,
                        id -> window.go(PlaceId.ENGINES, id),
                        this::correct,
                        this::closeBehind,
                        this::backToEngine));
        asOf = new AsOfStrip(texts, new AsOfModel(texts, measures, order), this::lookAsOf, this::leaveAsOf);
        panel = new EnginesPanel(texts, lists, sheet, partView, asOf);
        part = new PartInHand(texts, measures, tasks, desk, partView, panel::showPart, this::failed);
        lists.onChoose(this::chosen);
        commands = List.of(
                new Command(texts, "engines.command.asOf", CommandMenu.VIEW, 4, null, this::askAsOf),
                new Command(texts, "engines.command.today", CommandMenu.VIEW, 4, null, this::backToToday),
                new Command(texts, "engines.command.asTable", CommandMenu.VIEW, 5, null, this::chartAsTable),
                new Command(texts, "engines.command.copyChart", CommandMenu.EDIT, 3, null, this::copyChart));
        followDay(false);
    }

    @Override
    public PlaceId id() {
        return PlaceId.ENGINES;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        return part.isShown() ? partView.first() : lists.engines().table();
    }

    @Override
    public List<Command> commands() {
        return commands;
    }

    @Override
    public void refresh() {
        readingList.run(
                texts.get("engines.reading"),
                () -> SeeEngine.all(desk.get().view()),
                this::showList,
                failure -> failed());
    }

    /** Opens an engine, or the engine a part is in with the part chosen, or a part that is in no engine. */
    @Override
    public void open(String record) {
        wanted = record;
        if (engines != null) {
            openWanted();
        }
    }

    // Showing

    private void showList(Engines read) {
        engines = read;
        EnginesLines lines = model.lines(read);
        panel.showPage(!lines.engines().isEmpty());
        lists.show(lines);
        window.heading(PlaceId.ENGINES, lines.day());
        followDay(read.readOnly());
        if (wanted != null) {
            openWanted();
        }
        if (lists.chosen() == null && !lines.engines().isEmpty()) {
            lists.chooseFirst(lines);
        } else {
            readSheet();
        }
        part.refresh();
        readBehind(false);
    }

    private void openWanted() {
        String record = wanted;
        if (record != null && lists.choose(record)) {
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

    // A part

    /** Opens what is written about a part: itself, or one of the times it was fitted. */
    private void correct(String record) {
        Facts facts = desk.get().view().facts();
        facts.of(Part.class)
                .find(Id.parse(record))
                .<Entry<?>>map(part -> part)
                .or(() -> facts.of(Fitment.class).find(Id.parse(record)))
                .ifPresent(correct);
    }

    private void openPart(String record) {
        wanted = null;
        putBehindAway();
        part.open(record);
    }

    private void leavePart() {
        if (part.isShown()) {
            putBehindAway();
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
                () -> SeeEngine.of(desk.get().view(), Id.<Engine>parse(chosen)),
                read -> read.ifPresent(found -> show(found, all)),
                failure -> failed());
    }

    private void show(EngineSheet read, Engines all) {
        String shown = read.row().engine().id().text();
        long end = Moment.endOf(read.day(), all.zone()).epochMillis();
        sheet.show(
                model.lines(read),
                lifeMarks.of(read.line(), end),
                end,
                all.zone(),
                which -> curvesModel.chart(all, shown, which));
        String record = wanted;
        if (record != null && sheet.build().choosePart(record)) {
            wanted = null;
            reveal(sheet.build());
        }
    }

    /** Shows what is under a tab, also where the entries behind a figure stand in its place. */
    private void reveal(JComponent tab) {
        leavePart();
        if (!sheet.tabs().isVisible()) {
            closeBehind();
        }
        sheet.tabs().setSelectedComponent(tab);
    }

    private void failed() {
        JButton again = Buttons.plain(Caption.of(texts.get("engines.again")), this::refresh);
        panel.failed(texts.get("engines.failed"), again);
    }

    // Behind a figure

    private void behind(Shown figure) {
        opened = figure.figure();
        rememberFocus();
        readBehind(true);
    }

    /** Where the focus is to go back to, unless it is in the pane itself. */
    private void rememberFocus() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        if (owner == null || !SwingUtilities.isDescendingFrom(owner, beside().behind())) {
            cameFrom = owner instanceof JComponent component ? component : null;
        }
    }

    private void readBehind(boolean entering) {
        Figure figure = opened;
        if (figure == null) {
            return;
        }
        readingBehind.run(
                texts.get("engines.readingBehind"),
                () -> behindModel.lines(SeeBehind.of(desk.get().view(), figure)),
                lines -> {
                    Engines all = engines;
                    beside().open();
                    beside().behind().show(lines, all != null && all.readOnly(), true);
                    if (entering) {
                        beside().behind().takeFocus();
                    }
                },
                failure -> failed());
    }

    private void closeBehind() {
        putBehindAway();
        JComponent back = cameFrom;
        (back != null && back.isShowing() ? back : firstFocus()).requestFocusInWindow();
    }

    private void putBehindAway() {
        opened = null;
        readingBehind.drop();
        beside().close();
    }

    /** A run opens on its sheet; of anything else the history is shown, from which its sheet is opened. */
    private void open(Entry<?> entry, String named) {
        if (entry.fact() instanceof Run) {
            correct.accept(entry);
        } else {
            history(entry, named);
        }
    }

    private void history(Entry<?> entry, String named) {
        Engines all = engines;
        if (all == null) {
            return;
        }
        rememberFocus();
        readingBehind.run(
                texts.get("engines.readingHistory"),
                () -> historyModel.lines(entry, SeeHistory.of(desk.get().logbook(), entry), all.zone()),
                lines -> {
                    beside().open();
                    beside().behind().showHistory(named, lines, opened != null, () -> correct.accept(entry));
                },
                failure -> failed());
    }

    // Another day

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
        desk.get().lookAsOf(day);
        panel.askAsOf(false);
        window.notice(
                texts.get("engines.asOf.notice", measures.date(day)),
                List.of(Buttons.plain(Caption.of(texts.get("engines.asOf.back")), this::backToToday)));
        window.changed();
        firstFocus().requestFocusInWindow();
    }

    private void backToToday() {
        desk.get().lookAsOf(null);
        window.dismissNotice();
        window.changed();
    }

    private void followDay(boolean earlier) {
        Command today = commands.get(1);
        if (earlier) {
            today.enable();
        } else {
            today.disable(texts.get("engines.command.today.isToday"));
        }
    }

    // The chart

    private void chartAsTable() {
        window.go(PlaceId.ENGINES);
        reveal(sheet.curves());
        sheet.curves().toggle();
    }

    private void copyChart() {
        sheet.curves().copy(window::say);
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

    /** What the entries behind a figure lead to. */
    private final class Work implements EntryWork {
        private final EntryChanges changes;

        Work(EntryChanges changes) {
            this.changes = changes;
        }

        @Override
        public void strikeOut(BehindLine line, String because) {
            changes.strikeOut(line, because);
        }

        @Override
        public void restore(BehindLine line) {
            changes.restore(line);
        }

        @Override
        public void same(BehindLine line) {
            changes.same(line);
        }

        @Override
        public void another(BehindLine line) {
            changes.another(line);
        }

        @Override
        public void open(BehindLine line) {
            correct.accept(line.source());
        }

        @Override
        public void history(BehindLine line) {
            EnginesPlace.this.history(line.source(), behindModel.named(line));
        }
    }

    /** What the engine in hand leads to. */
    private final class Asked implements EngineSheetView.Asked {
        @Override
        public void part(String record) {
            openPart(record);
        }

        @Override
        public void behind(Shown figure) {
            EnginesPlace.this.behind(figure);
        }

        @Override
        public void open(LifeMark mark) {
            EnginesPlace.this.open(mark.source(), mark.words());
        }

        @Override
        public void record(Dot point) {
            Engines all = engines;
            if (all != null) {
                Stream.of(all.sinceRebuild(), all.sinceSkim())
                        .flatMap(List::stream)
                        .flatMap(curve -> curve.steps().stream())
                        .filter(step -> step.source().id().text().equals(point.record()))
                        .findFirst()
                        .ifPresent(step -> EnginesPlace.this.open(step.source(), point.words()));
            }
        }

        @Override
        public void say(String sentence) {
            window.say(sentence);
        }

        @Override
        public void closeBehind() {
            EnginesPlace.this.closeBehind();
        }
    }
}
