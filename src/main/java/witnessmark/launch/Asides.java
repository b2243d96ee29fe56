package witnessmark.launch;

import witnessmark.desktop.builds.BuildAside;
import witnessmark.desktop.builds.BuildsContext;
import witnessmark.desktop.engines.EnginePage;
import witnessmark.desktop.engines.EnginesPlace;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.lessons.LessonsAside;
import witnessmark.desktop.lessons.LessonsAsked;
import witnessmark.desktop.runsheet.UndoActions;
import witnessmark.desktop.sheets.Sheets;
import witnessmark.desktop.shelf.ShelfPlace;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.start.Start;
import witnessmark.desktop.traceview.TraceAside;
import witnessmark.desktop.traceview.TraceViewContext;
import witnessmark.desktop.trials.TrialAside;
import witnessmark.desktop.trials.TrialsContext;
import witnessmark.domain.Id;
import witnessmark.logbook.building.WriteBuildWork;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.sheets.WriteLesson;
import witnessmark.logbook.sheets.WriteRevExponent;
import witnessmark.report.Pdf;
import witnessmark.report.TraceSheetPdf;
import witnessmark.wording.Measures;

/** The pages that for a while stand in the place of another: of lessons, a trial, a build, a trace. */
final class Asides {
    private Asides() {}

    /** The page of all lessons, in the place of an engine. */
    static LessonsAside lessons(
            ShellContext shell, Measures measures, OpenBook book, Sheets sheets, EnginesPlace engines) {
        return new LessonsAside(
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                () -> book.desk().view(),
                new LessonsAsked(
                        engines::stepAside,
                        engines::dismiss,
                        () -> sheets.open(Prefilled.empty(new WriteLesson().key())),
                        lesson -> sheets.open(Prefilled.withdrawing(Id.parse(lesson))),
                        incident -> shell.desk().go(PlaceId.INCIDENTS, incident),
                        build -> shell.desk().go(PlaceId.ENGINES, build)));
    }

    /** The page of a trial, in the place of the parts shelf. */
    static TrialAside trials(ShellContext shell, Measures measures, OpenBook book, Sheets sheets, ShelfPlace shelf) {
        TrialAside page = new TrialAside(new TrialsContext(
                () -> book.desk().view(),
                shell.desk(),
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                new TrialsContext.Asked(
                        shelf::stepAside,
                        shelf::dismiss,
                        sheets::open,
                        sheets::correct,
                        incident -> shell.desk().go(PlaceId.INCIDENTS, incident),
                        part -> shell.desk().go(PlaceId.ENGINES, EnginePage.ofPart(part)))));
        shelf.onTrial(page::openPart);
        return page;
    }

    /** The page of a build, in the place of an engine. */
    static BuildAside builds(
            ShellContext shell,
            Measures measures,
            OpenBook book,
            Outside outside,
            UndoActions undo,
            Sheets sheets,
            EnginesPlace engines,
            TraceAside trace,
            TraceViewContext.Host onEngine,
            TrialAside trial,
            Runnable printTags) {
        WriteBuildWork work = new WriteBuildWork(book.desk(), outside.ids(), Sheets.units(measures, Places.DAYS));
        BuildAside page = new BuildAside(new BuildsContext(
                book.desk(),
                work,
                shell.desk(),
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                undo::undo,
                new BuildsContext.Asked(
                        engines::stepAside,
                        engines::dismiss,
                        build -> shell.desk().go(PlaceId.MEASURING_BENCH, build),
                        build -> sheets.open(Prefilled.signing(Id.parse(build))),
                        (build, lesson) -> sheets.open(Prefilled.answering(Id.parse(build), Id.parse(lesson))),
                        incident -> shell.desk().go(PlaceId.INCIDENTS, incident))));
        engines.leadsTo(
                page::openEngine, page::open, engine -> trace.openEngine(engine, onEngine), trial::open, printTags);
        sheets.engineInView(() -> page.engineInView().or(trace::engineInView).or(engines::engineInView));
        return page;
    }

    /** The page of a trace, in the place of the run sheet or of an engine. */
    static TraceAside traces(
            ShellContext shell, Measures measures, OpenBook book, Outside outside, Sheets sheets, Start start) {
        return new TraceAside(new TraceViewContext(
                book.desk(),
                shell.desk(),
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                () -> sheets.open(Prefilled.empty(new WriteRevExponent().key())),
                sheet -> start.printTrace(sheet.name(), file -> {
                    Pdf pdf = new TraceSheetPdf(shell.texts()).of(sheet);
                    return outside.papers().write(new Paper(pdf.bytes(), pdf.pages()), file);
                })));
    }
}
