package witnessmark.launch;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import witnessmark.command.Console;
import witnessmark.command.Program;
import witnessmark.command.Tools;
import witnessmark.launch.buildsheet.BuildSheetPaper;
import witnessmark.launch.casesheet.CaseSheetPaper;
import witnessmark.launch.facesheet.FaceSheetPaper;
import witnessmark.launch.jobsheet.JobSheetPaper;
import witnessmark.launch.seasonsheet.SeasonSheetPaper;
import witnessmark.launch.stripsheet.StripSheetPaper;
import witnessmark.launch.tags.TagPaper;
import witnessmark.logbook.calendar.WriteCalendar;
import witnessmark.logbook.faces.WriteFaceSheet;
import witnessmark.logbook.jobsheet.WriteJobSheet;
import witnessmark.logbook.measuring.WriteBuildSheet;
import witnessmark.logbook.money.WriteSeasonSheet;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.logbook.sharing.WriteTags;
import witnessmark.logbook.strip.WriteStripSheet;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.ChargeWords;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** Starts the program: a command when the first argument is one, the window otherwise. */
public final class Main {
    private static final String GTK = "jdk.gtk.version";

    private Main() {}

    public static void main(String[] args) {
        ownGtk();
        Outside outside = Outside.ofThisMachine();
        Logs.to(outside.data());
        if (Program.isFor(args)) {
            System.exit(Program.run(tools(outside), args));
        }
        try {
            if (GraphicsEnvironment.isHeadless()) {
                throw new HeadlessException();
            }
            new Window(outside, problems -> System.exit(Program.say(tools(outside), problems))).start(List.of(args));
        } catch (AWTError | HeadlessException e) {
            System.exit(Program.say(tools(outside), List.of(Problem.of(ProblemKind.NO_DISPLAY))));
        }
    }

    /**
     * The file dialogs of Linux are GTK 3's. Where GTK 2 is installed too, AWT may load that; both in one program bring it to
     * a stop at the first dialog.
     */
    private static void ownGtk() {
        if (System.getProperty(GTK) == null) {
            System.setProperty(GTK, "3");
        }
    }

    private static Tools tools(Outside outside) {
        Texts texts = Texts.in(Locale.UK);
        Measures measures = new Measures(texts, Units.METRIC);
        return new Tools(
                outside.files(),
                outside.folders(),
                new WriteCalendar(outside.calendars(), new DatedWords(texts, measures)),
                new WriteJobSheet(outside.papers(), new JobSheetPaper(texts, measures)),
                new WriteSeasonSheet(outside.papers(), new SeasonSheetPaper(texts, measures)),
                new WriteBuildSheet(outside.papers(), new BuildSheetPaper(texts, measures)),
                new WriteFaceSheet(outside.papers(), new FaceSheetPaper(texts, measures)),
                new WriteStripSheet(outside.papers(), new StripSheetPaper(texts, measures)),
                new WriteCaseSheet(outside.papers(), new CaseSheetPaper(texts, measures)),
                new WriteTags(outside.papers(), new TagPaper(texts, measures)),
                outside.startingValues(),
                outside.statements(),
                outside.ids(),
                outside.clock(),
                new Books(outside)::today,
                ZoneId.systemDefault(),
                outside.person(),
                texts,
                measures,
                new Problems(texts, measures),
                new RecordWords(texts),
                new LifeWords(texts, measures),
                new ChargeWords(texts, measures),
                Console.called(System.getProperty("sun.java.command", "")),
                Console.out(),
                Console.err());
    }
}
