package witnessmark.launch;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.beforewego.BeforeWeGoPlace;
import witnessmark.desktop.beforewego.BeginActions;
import witnessmark.desktop.bench.BenchContext;
import witnessmark.desktop.bench.BenchPlace;
import witnessmark.desktop.builds.BuildAside;
import witnessmark.desktop.builds.BuildCommands;
import witnessmark.desktop.engines.EnginePage;
import witnessmark.desktop.engines.EnginesPlace;
import witnessmark.desktop.faces.BenchPages;
import witnessmark.desktop.faces.FacesContext;
import witnessmark.desktop.faces.FacesPage;
import witnessmark.desktop.find.RecordsFindable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.incidents.IncidentsAsked;
import witnessmark.desktop.incidents.IncidentsPlace;
import witnessmark.desktop.keeping.KeepingPages;
import witnessmark.desktop.runsheet.RunContext;
import witnessmark.desktop.runsheet.RunSheetPlace;
import witnessmark.desktop.runsheet.UndoActions;
import witnessmark.desktop.season.SeasonLeads;
import witnessmark.desktop.season.SeasonPlace;
import witnessmark.desktop.sheets.Sheets;
import witnessmark.desktop.sheets.SheetsContext;
import witnessmark.desktop.shelf.ShelfAsked;
import witnessmark.desktop.shelf.ShelfPlace;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Findable;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.start.SampleStrip;
import witnessmark.desktop.start.Start;
import witnessmark.desktop.start.StartContext;
import witnessmark.desktop.start.SystemChoosing;
import witnessmark.desktop.strip.StripContext;
import witnessmark.desktop.strip.StripReportPage;
import witnessmark.desktop.task.OtherProgram;
import witnessmark.desktop.traces.TraceCommands;
import witnessmark.desktop.traceview.TraceAside;
import witnessmark.desktop.traceview.TraceViewCommands;
import witnessmark.desktop.traceview.TraceViewContext;
import witnessmark.desktop.trials.TrialAside;
import witnessmark.desktop.trials.TrialCommands;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.launch.buildsheet.BuildSheetPaper;
import witnessmark.launch.casesheet.CaseSheetPaper;
import witnessmark.launch.facesheet.FaceSheetPaper;
import witnessmark.launch.jobsheet.JobSheetPaper;
import witnessmark.launch.seasonsheet.SeasonSheetPaper;
import witnessmark.launch.stripsheet.StripSheetPaper;
import witnessmark.launch.tags.TagPaper;
import witnessmark.logbook.CopyElsewhere;
import witnessmark.logbook.ExportSeason;
import witnessmark.logbook.ImportSeason;
import witnessmark.logbook.StartLogbook;
import witnessmark.logbook.calendar.WriteCalendar;
import witnessmark.logbook.faces.WriteFaceSheet;
import witnessmark.logbook.jobsheet.WriteJobSheet;
import witnessmark.logbook.measuring.WriteBuildSheet;
import witnessmark.logbook.money.WriteSeasonSheet;
import witnessmark.logbook.money.WriteSeasonTable;
import witnessmark.logbook.proof.WeighFinding;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.logbook.sharing.WriteTags;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.strip.WriteStripSheet;
import witnessmark.outcome.Problem;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Units;

/** The places around one logbook, with what can be done in each. */
final class Places {
    static final DayOrder DAYS = DayOrder.DAY_FIRST;
    private static final String CURRENCY = "EUR";

    private final List<Place> all = new ArrayList<>();
    private final List<Command> commands = new ArrayList<>();
    private final List<Findable> findable = new ArrayList<>();
    private final Start start;
    private final TracePages traces;
    private final PhotoPages photos;
    private final @Nullable SampleStrip strip;

    Places(ShellContext shell, Measures measures, OpenBook book, Outside outside, Window window) {
        RunContext runs =
                new RunContext(book.desk(), outside.ids(), shell.desk(), shell.tasks(), shell.texts(), measures, DAYS);
        UndoActions undo = new UndoActions(runs);
        RunSheetPlace runSheet = new RunSheetPlace(runs, undo);
        Sheets sheets = new Sheets(new SheetsContext(
                book.desk(),
                outside.ids(),
                shell.desk(),
                shell.tasks(),
                shell.texts(),
                measures,
                DAYS,
                shell.settings(),
                outside.startingValues(),
                undo::undo));
        start = new Start(startContext(shell, measures, book, outside, window, undo), begin(shell, sheets));
        lead(start.place(), runSheet, sheets, shell);
        start.place().onClock(() -> book.desk().today().now());
        all.addAll(List.of(start.place(), runSheet));
        EnginesPlace engines = new EnginesPlace(
                shell.texts(),
                measures,
                shell.tasks(),
                shell.desk(),
                book::desk,
                shell.settings(),
                DAYS,
                sheets::correct);
        sheets.onRead(engines::read);
        IncidentsPlace incidents =
                incidents(shell, measures, book, sheets, new WeighFinding(book.desk(), outside.ids()), undo);
        all.add(incidents);
        photos = new PhotoPages(shell, measures, book, outside, choosing(shell, window), undo, sheets, start);
        photos.on(incidents, engines);
        printed(start, incidents, engines);
        ShelfPlace shelf = shelf(shell, measures, book, sheets);
        TrialAside trial = Asides.trials(shell, measures, book, sheets, shelf);
        commands.addAll(TrialCommands.of(shell.texts(), trial::open));
        all.addAll(workshop(shell, measures, book, outside, undo, sheets, engines, shelf, start, photos));
        all.add(season(shell, measures, book, sheets, start));
        TraceViewContext.Host onRun = new TraceViewContext.Host(runSheet::stepAside, runSheet::dismiss);
        TraceViewContext.Host onEngine = new TraceViewContext.Host(engines::stepAside, engines::dismiss);
        TraceAside trace = Asides.traces(shell, measures, book, outside, sheets, start);
        runSheet.onShowTrace(shown -> trace.open(shown, onRun));
        BuildAside build = Asides.builds(
                shell, measures, book, outside, undo, sheets, engines, trace, onEngine, trial, start::printTags);
        commands.addAll(BuildCommands.of(
                shell.texts(), build, () -> engines.engineInView().or(incidents::engineInView)));
        commands.add(Asides.lessons(shell, measures, book, sheets, engines).command());
        commands.addAll(traceCommands(shell, trace, runSheet, engines, onRun, onEngine));
        traces = new TracePages(shell, measures, book, outside, choosing(shell, window), runSheet, undo, DAYS);
        commands.addAll(TraceCommands.of(shell.texts(), traces.page(), runSheet::runInView));
        strip = sampleStrip(book, start);
        List.of(start.commands(), undo.commands(), sheets.commands()).forEach(commands::addAll);
        commands.addAll(units(shell, measures, window));
        findable.addAll(
                records(shell, measures, book, sheets, record -> trace.open(Id.parse(record), onRun), trial::open));
    }

    /** What a logbook that begins leads to. */
    private static BeginActions begin(ShellContext shell, Sheets sheets) {
        return new BeginActions(
                sheets::addCar,
                sheets::addEngine,
                sheets::fitPart,
                sheets::setLimit,
                sheets::listLimits,
                sheets::addPerson,
                () -> shell.desk().go(PlaceId.RUN_SHEET));
    }

    /** Shows the trace of the run in view, else the newest of the engine in view, else the newest there is. */
    private static List<Command> traceCommands(
            ShellContext shell,
            TraceAside trace,
            RunSheetPlace runSheet,
            EnginesPlace engines,
            TraceViewContext.Host onRun,
            TraceViewContext.Host onEngine) {
        return TraceViewCommands.of(
                shell.texts(),
                () -> {
                    Optional<Id<Run>> run = runSheet.runInView();
                    Optional<Id<Engine>> engine = engines.engineInView();
                    if (run.isPresent()) {
                        trace.openRun(run.get(), onRun);
                    } else if (engine.isPresent()) {
                        trace.openEngine(engine.get(), onEngine);
                    } else {
                        trace.openNewest(onRun);
                    }
                },
                trace::print);
    }

    private static @Nullable SampleStrip sampleStrip(OpenBook book, Start start) {
        Path sample = book.sampleFolder();
        return book.season() == null || sample == null ? null : start.sampleStrip(book.season(), sample);
    }

    /** What is in view is what is printed. */
    private static void printed(Start start, IncidentsPlace incidents, EnginesPlace engines) {
        start.caseShown(incidents::shown);
        start.engineShown(engines::engineInView);
    }

    /** What the find field finds in the logbook. */
    private static List<Findable> records(
            ShellContext shell,
            Measures measures,
            OpenBook book,
            Sheets sheets,
            Consumer<String> trace,
            Consumer<String> trial) {
        return RecordsFindable.all(
                shell.texts(),
                measures,
                shell.desk(),
                () -> book.desk().view().facts(),
                () -> book.desk().day(),
                DAYS,
                new RecordsFindable.Opened(sheets::correct, trace, trial));
    }

    /** What pages lead to on other pages. */
    private static void lead(BeforeWeGoPlace first, RunSheetPlace runSheet, Sheets sheets, ShellContext shell) {
        sheets.showIn(first::stepAside, first::dismiss);
        first.onOpen(sheets::correct);
        first.onTrends(engine -> shell.desk().go(PlaceId.ENGINES, EnginePage.ofTrends(engine)));
        first.onWrite(sheets::open);
        first.onBegun(sheets::begun);
        first.onLooked(sheets::looked);
        first.onPlanJob(sheets::planJob);
        runSheet.onReport(run -> sheets.open(Prefilled.incidentOn(run)));
        runSheet.onPlanJob(sheets::planJob);
    }

    List<Place> all() {
        return all;
    }

    List<Command> commands() {
        return commands;
    }

    List<Findable> findable() {
        return findable;
    }

    /** The window is up. */
    void shown() {
        if (strip != null) {
            strip.show();
        }
    }

    /** Goes on once nothing is being brought in any more, before the program closes. */
    void last(java.awt.@Nullable Window closing, Runnable then) {
        photos.last(closing, then);
    }

    /** Another logbook takes their place: nothing of them goes on by itself. */
    void close() {
        traces.close();
        photos.close();
    }

    /** Takes files that were dropped on the window. */
    void dropped(List<Path> files) {
        if (!photos.dropped(files)) {
            traces.page().open(files);
        }
    }

    /** Everything about copies of the logbook. */
    KeepingPages copies() {
        return start.copies();
    }

    /** Shows what a check of the logbook found. */
    void showFound(List<Problem> found) {
        start.showFound(found);
    }

    /** Asks for another logbook, as the command does. */
    void openAnother() {
        start.openAnother();
    }

    private static ShelfPlace shelf(ShellContext shell, Measures measures, OpenBook book, Sheets sheets) {
        return new ShelfPlace(
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                shell.desk(),
                () -> book.desk().view(),
                new ShelfAsked(
                        part -> shell.desk().go(PlaceId.ENGINES, EnginePage.ofPart(part)),
                        sheets::correct,
                        sheets::open,
                        sheets::fitPart,
                        sheets::newStock));
    }

    private static IncidentsPlace incidents(
            ShellContext shell, Measures measures, OpenBook book, Sheets sheets, WeighFinding weigh, UndoActions undo) {
        return new IncidentsPlace(
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                shell.desk(),
                () -> book.desk().view(),
                new IncidentsAsked(
                        sheets::reportIncident,
                        sheets::open,
                        sheets::correct,
                        incident -> shell.desk().go(PlaceId.INCIDENTS, incident)),
                weigh,
                undo::undo);
    }

    /** Engines, shelf and bench. */
    private static List<Place> workshop(
            ShellContext shell,
            Measures measures,
            OpenBook book,
            Outside outside,
            UndoActions undo,
            Sheets sheets,
            EnginesPlace engines,
            ShelfPlace shelf,
            Start start,
            PhotoPages photos) {
        BenchPlace bench = bench(shell, measures, book, outside, undo, sheets, engines, start);
        start.buildShown(bench::buildShown);
        bench.onPage(build -> shell.desk().go(PlaceId.ENGINES, build));
        return List.of(engines, shelf, withFaces(shell, measures, book, outside, undo, sheets, bench, start, photos));
    }

    private static BenchPlace bench(
            ShellContext shell,
            Measures measures,
            OpenBook book,
            Outside outside,
            UndoActions undo,
            Sheets sheets,
            EnginesPlace engines,
            Start start) {
        return new BenchPlace(new BenchContext(
                book.desk(),
                outside.ids(),
                shell.desk(),
                shell.tasks(),
                shell.texts(),
                measures,
                undo::undo,
                sheets::open,
                engines::engineInView,
                start::printBuild));
    }

    /** The bench with its other pages, the faces and the strip report. */
    private static Place withFaces(
            ShellContext shell,
            Measures measures,
            OpenBook book,
            Outside outside,
            UndoActions undo,
            Sheets sheets,
            BenchPlace bench,
            Start start,
            PhotoPages photos) {
        FacesPage faces = new FacesPage(new FacesContext(
                book.desk(),
                outside.ids(),
                shell.desk(),
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                DAYS,
                undo::undo,
                sheets::open,
                start::printFace));
        start.faceShown(faces::inSight);
        StripReportPage strip = new StripReportPage(new StripContext(
                book.desk(),
                outside.ids(),
                shell.desk(),
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                undo::undo,
                sheets::correct));
        start.stripShown(strip::buildShown);
        strip.onPrint(start::printStrip);
        photos.on(strip);
        return new BenchPages(
                bench, faces, strip, shell.texts(), () -> shell.desk().go(PlaceId.MEASURING_BENCH));
    }

    private static SeasonPlace season(
            ShellContext shell, Measures measures, OpenBook book, Sheets sheets, Start start) {
        SeasonPlace place = new SeasonPlace(
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                shell.desk(),
                () -> book.desk().view(),
                new SeasonLeads(sheets::correct, sheets::open, start::exportSeason, start::printSeason));
        start.seasonShown(place::asked);
        return place;
    }

    private static List<Command> units(ShellContext shell, Measures measures, Window window) {
        return List.of(
                units(shell, "shell.command.units.metric", Units.METRIC, measures, window),
                units(shell, "shell.command.units.imperial", Units.IMPERIAL, measures, window));
    }

    private static Command units(ShellContext shell, String key, Units units, Measures now, Window window) {
        return new Command(shell.texts(), key, CommandMenu.VIEW, 4, null, () -> window.use(units))
                .asChoice(units.equals(now.units()));
    }

    private static SystemChoosing choosing(ShellContext shell, Window window) {
        Path home = Path.of(System.getProperty("user.home"));
        return new SystemChoosing(shell.texts(), shell.settings(), home, window::frame);
    }

    private static StartContext startContext(
            ShellContext shell, Measures measures, OpenBook book, Outside outside, Window window, UndoActions undo) {
        Path home = Path.of(System.getProperty("user.home"));
        return new StartContext(
                shell.texts(),
                measures,
                new Problems(shell.texts(), measures),
                shell.tasks(),
                shell.settings(),
                shell.desk(),
                book.desk(),
                choosing(shell, window),
                window,
                undo::undo,
                new StartContext.Uses(
                        new StartLogbook(outside.files(), outside.ids()),
                        new ImportSeason(book.desk(), outside.folders()),
                        new ExportSeason(outside.folders()),
                        new WriteCalendar(outside.calendars(), new DatedWords(shell.texts(), measures)),
                        new WriteJobSheet(outside.papers(), new JobSheetPaper(shell.texts(), measures)),
                        outside.statements(),
                        outside.ids(),
                        new WriteSeasonTable(outside.tables()),
                        new WriteSeasonSheet(outside.papers(), new SeasonSheetPaper(shell.texts(), measures)),
                        new WriteBuildSheet(outside.papers(), new BuildSheetPaper(shell.texts(), measures)),
                        new WriteFaceSheet(outside.papers(), new FaceSheetPaper(shell.texts(), measures)),
                        new WriteStripSheet(outside.papers(), new StripSheetPaper(shell.texts(), measures)),
                        new WriteCaseSheet(outside.papers(), new CaseSheetPaper(shell.texts(), measures)),
                        new WriteTags(outside.papers(), new TagPaper(shell.texts(), measures))),
                new StartContext.Copies(
                        outside.files().copies(),
                        new CopyElsewhere(book.desk().logbook(), shell.settings(), outside.clock()),
                        outside.files().keptAside(),
                        book.isSample(),
                        outside.clock()),
                new StartContext.Here(ZoneId.systemDefault(), CURRENCY, outside.person(), home, OtherProgram::open));
    }
}
