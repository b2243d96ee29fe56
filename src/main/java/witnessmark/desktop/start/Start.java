package witnessmark.desktop.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.bank.BankContext;
import witnessmark.desktop.bank.BankStatements;
import witnessmark.desktop.beforewego.BeforeWeGoPlace;
import witnessmark.desktop.beforewego.BeginActions;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.keeping.KeepingPages;
import witnessmark.desktop.shell.Command;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.SampleSeason;
import witnessmark.logbook.faces.FaceInSight;
import witnessmark.logbook.money.SeasonAsked;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/** The first place and everything about the logbook as a whole, put together for the logbook in the window. */
public final class Start {
    private final StartContext context;
    private final BeginActions actions;
    private final Reports reports;
    private final BeforeWeGoPlace place;
    private final SeasonFolder folder;
    private final Keeping keeping;
    private final KeepingPages copies;
    private final FileOut calendar;
    private final FileOut jobSheet;
    private final BankStatements bank;
    private final FileOut season;
    private final FileOut seasonSheet;
    private final BuildSheetOut buildSheet;
    private final FaceSheetOut faceSheet;
    private final StripSheetOut stripSheet;
    private final CaseSheetOut caseSheet;
    private final TagsOut tags;
    private @Nullable SampleStrip walksOn;
    private Supplier<SeasonAsked> seasonAsked = () -> SeasonAsked.USUAL;

    /** @param actions what the first place leads to */
    public Start(StartContext context, BeginActions actions) {
        this.context = context;
        this.actions = actions;
        this.place = new BeforeWeGoPlace(
                new SheetTools(context.texts(), context.tasks(), context.settings()),
                context.measures(),
                context.window(),
                context.logbook()::view,
                actions,
                this::importSeason);
        this.reports = new Reports(context, place);
        this.folder = new SeasonFolder(context, reports);
        this.copies = new KeepingPages(new Keepings(context, reports).context());
        this.keeping = new Keeping(context, reports, copies);
        this.calendar = new FileOut(
                context,
                reports,
                "beforewego.calendar",
                ".ics",
                context.choosing()::calendarToWrite,
                () -> file -> context.uses().calendar().write(context.logbook(), file));
        this.jobSheet = new FileOut(
                context,
                reports,
                "jobsheet",
                ".pdf",
                context.choosing()::jobSheetToWrite,
                () -> file -> context.uses().jobSheet().write(context.logbook(), file));
        this.bank = bank(context, reports);
        this.season = new FileOut(
                context,
                reports,
                "season.table",
                ".csv",
                context.choosing()::seasonTableToWrite,
                () -> shown((asked, file) -> context.uses().seasonTable().write(context.logbook(), asked, file)));
        this.seasonSheet = new FileOut(
                context,
                reports,
                "seasonsheet",
                ".pdf",
                context.choosing()::seasonSheetToWrite,
                () -> shown((asked, file) -> context.uses().seasonSheet().write(context.logbook(), asked, file)));
        this.buildSheet = new BuildSheetOut(context, reports);
        this.faceSheet = new FaceSheetOut(context, reports);
        this.stripSheet = new StripSheetOut(context, reports);
        this.caseSheet = new CaseSheetOut(context, reports);
        this.tags = new TagsOut(context, reports);
        place.onPrint(jobSheet::writeOut);
    }

    private static BankStatements bank(StartContext context, Reports reports) {
        return new BankStatements(new BankContext(
                new SheetTools(context.texts(), context.tasks(), context.settings()),
                context.measures(),
                context.window(),
                context.logbook(),
                context.uses().statements(),
                context.uses().ids(),
                context.choosing()::statementToRead,
                reports::show,
                reports::dismiss,
                context.undo(),
                problems -> reports.refused(context.texts().get("bank.statement"), problems)));
    }

    public BeforeWeGoPlace place() {
        return place;
    }

    /** The commands of the Logbook menu; to be asked for after {@link #sampleStrip} where the sample is open. */
    public List<Command> commands() {
        return new StartCommands(
                        context,
                        new StartCommands.Work(
                                this::startOwn,
                                this::openAnother,
                                this::askWho,
                                folder,
                                keeping,
                                copies,
                                calendar,
                                jobSheet,
                                bank,
                                season,
                                seasonSheet,
                                buildSheet::writeOut,
                                faceSheet::writeOut,
                                stripSheet::writeOut,
                                caseSheet::ask,
                                tags::writeOut,
                                walksOn == null ? null : walksOn::walkOn))
                .all();
    }

    /** Says which season the ledger shows, and how: that is what is written out. */
    public void seasonShown(Supplier<SeasonAsked> shown) {
        seasonAsked = shown;
    }

    /** Asks where to write the pages of the season that is shown, as the command does. */
    public void printSeason() {
        seasonSheet.writeOut();
    }

    /** Says which build the bench shows: its sheet is what is printed. */
    public void buildShown(Supplier<Optional<Id<Build>>> shown) {
        buildSheet.shown(shown);
    }

    /** Asks where to write the pages of the build sheet that is shown, as the command does. */
    public void printBuild() {
        buildSheet.writeOut();
    }

    /** Says which face the bench shows: that is what is printed. */
    public void faceShown(Supplier<Optional<FaceInSight>> shown) {
        faceSheet.shown(shown);
    }

    /** Says which engine is in view: its parts are what tags are for. */
    public void engineShown(Supplier<Optional<Id<Engine>>> shown) {
        tags.shown(shown);
    }

    /** Asks where to write tags for the parts of the engine in view, as the command does. */
    public void printTags() {
        tags.writeOut();
    }

    /** Says which incident is in view: that is what is shared. */
    public void caseShown(Supplier<Optional<Id<Incident>>> shown) {
        caseSheet.shown(shown);
    }

    /** Asks where to write the page of the face that is shown, as the command does. */
    public void printFace() {
        faceSheet.writeOut();
    }

    /** Says which build the strip report is of: that is what is printed. */
    public void stripShown(Supplier<Optional<Id<Build>>> shown) {
        stripSheet.shown(shown);
    }

    /** Asks where to write the pages of the strip report that is shown, as the command does. */
    public void printStrip() {
        stripSheet.writeOut();
    }

    /**
     * Asks where to write the pages of a trace, and writes them.
     *
     * @param name what the file is named after
     * @param write lays them out and writes them to a file; off the event thread
     */
    public void printTrace(String name, Function<Path, Outcome<Integer>> write) {
        new FileOut(
                        context,
                        reports,
                        "tracesheet",
                        ".pdf",
                        context.choosing()::traceSheetToWrite,
                        () -> write::apply,
                        () -> name.replaceAll(FaceSheetOut.NOT_IN_NAMES, "-"))
                .writeOut();
    }

    /** Of the season that is shown when somebody asks, whatever is shown by the time it is written. */
    private FileOut.Writing shown(BiFunction<SeasonAsked, Path, Outcome<Integer>> write) {
        SeasonAsked now = seasonAsked.get();
        return file -> write.apply(now, file);
    }

    /** Asks where to write the season that is shown, as the command does. */
    public void exportSeason() {
        season.writeOut();
    }

    /** The strip for when the logbook in the window is the sample season. Call its {@code show} once the window is up. */
    public SampleStrip sampleStrip(SampleSeason sample, Path seasonFolder) {
        SampleStrip strip = new SampleStrip(context, reports, sample, seasonFolder, this::startOwn);
        walksOn = strip;
        return strip;
    }

    /** Shows the page that begins an own logbook. */
    public void startOwn() {
        reports.show(new StartPage(context, reports::dismiss));
    }

    /** Asks for another logbook and puts it in the window. */
    public void openAnother() {
        context.choosing().logbook().ifPresent(context.opening()::open);
    }

    /** Shows the page that asks who is writing. */
    public void askWho() {
        reports.show(new WhoPage(context, actions.addPerson(), reports::dismiss));
    }

    /** Everything about copies of the logbook. */
    public KeepingPages copies() {
        return copies;
    }

    /** Shows what a check of the logbook found, and what can be done. */
    public void showFound(List<Problem> found) {
        keeping.checked(found);
    }

    /** Shows what was found on a page of its own. */
    void report(ReportPage.Content content) {
        reports.show(content, List.of(reports.closing()));
    }

    private void importSeason() {
        folder.bringIn();
    }
}
