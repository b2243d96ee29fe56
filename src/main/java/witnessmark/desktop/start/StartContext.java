package witnessmark.desktop.start;

import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.function.Predicate;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.task.Tasks;
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
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.KeptAside;
import witnessmark.logbook.port.LogbookCopies;
import witnessmark.logbook.port.Settings;
import witnessmark.logbook.port.StatementFiles;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.logbook.sharing.WriteTags;
import witnessmark.logbook.strip.WriteStripSheet;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/**
 * What beginning stands on, put together by the launcher for the logbook in the window.
 *
 * @param window what a place can ask of the window
 * @param logbook the logbook in hand
 * @param choosing asks for files and folders
 * @param opening puts another logbook in the window
 * @param undo takes the last change back and says so
 * @param uses the use cases behind the commands
 * @param copies copies of the logbook in hand
 * @param here where the computer stands
 */
public record StartContext(
        Texts texts,
        Measures measures,
        Problems problems,
        Tasks tasks,
        Settings settings,
        Desk window,
        witnessmark.logbook.Desk logbook,
        Choosing choosing,
        OpenLogbook opening,
        Runnable undo,
        Uses uses,
        Copies copies,
        Here here) {
    /**
     * Copies of the logbook in hand.
     *
     * @param all of every logbook
     * @param elsewhere its second place
     * @param aside what it could not take
     * @param sample whether it is the sample's working copy
     * @param clock the wall clock
     */
    public record Copies(
            LogbookCopies all, CopyElsewhere elsewhere, KeptAside aside, boolean sample, InstantSource clock) {}

    /** The use cases behind the commands. */
    public record Uses(
            StartLogbook start,
            ImportSeason importing,
            ExportSeason exporting,
            WriteCalendar calendar,
            WriteJobSheet jobSheet,
            StatementFiles statements,
            Ids ids,
            WriteSeasonTable seasonTable,
            WriteSeasonSheet seasonSheet,
            WriteBuildSheet buildSheet,
            WriteFaceSheet faceSheet,
            WriteStripSheet stripSheet,
            WriteCaseSheet caseSheet,
            WriteTags tags) {}

    /**
     * Where the computer stands: what a new logbook is given until the team says otherwise.
     *
     * @param zone whose days are counted
     * @param currency home currency, ISO 4217
     * @param who who sits here
     * @param folder where documents are kept
     * @param opens opens a file with the program the system has for it, off the event thread; false when it has none
     */
    public record Here(ZoneId zone, String currency, String who, Path folder, Predicate<Path> opens) {}
}
