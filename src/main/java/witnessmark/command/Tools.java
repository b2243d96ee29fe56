package witnessmark.command;

import java.io.PrintWriter;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.function.Function;
import witnessmark.logbook.calendar.WriteCalendar;
import witnessmark.logbook.faces.WriteFaceSheet;
import witnessmark.logbook.jobsheet.WriteJobSheet;
import witnessmark.logbook.measuring.WriteBuildSheet;
import witnessmark.logbook.money.WriteSeasonSheet;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookFiles;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.logbook.port.StartingValues;
import witnessmark.logbook.port.StatementFiles;
import witnessmark.logbook.port.Today;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.logbook.sharing.WriteTags;
import witnessmark.logbook.strip.WriteStripSheet;
import witnessmark.outcome.Outcome;
import witnessmark.wording.ChargeWords;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/**
 * What the commands work with.
 *
 * @param files opens logbooks
 * @param folders reads and writes season folders
 * @param calendar writes calendar files
 * @param jobSheet writes job sheets for printing
 * @param seasonSheet writes the pages of a season for printing
 * @param buildSheet writes build sheets for printing
 * @param faceSheet writes faces for printing
 * @param stripSheet writes strip reports for printing
 * @param caseSheet writes incidents for others
 * @param tags writes tags for bagged parts
 * @param startingValues what limits usually start from
 * @param statements files of banks and bookkeepers
 * @param ids gives new identities
 * @param clock the wall clock
 * @param today what a logbook takes for today: in the sample the day of its story, else the day it is
 * @param zone the zone of this machine, for a new logbook that names none
 * @param person who writes when no name is given
 * @param called how the program was started, for what is said of further commands
 * @param out where answers go
 * @param err where problems go
 */
public record Tools(
        LogbookFiles files,
        SeasonFolders folders,
        WriteCalendar calendar,
        WriteJobSheet jobSheet,
        WriteSeasonSheet seasonSheet,
        WriteBuildSheet buildSheet,
        WriteFaceSheet faceSheet,
        WriteStripSheet stripSheet,
        WriteCaseSheet caseSheet,
        WriteTags tags,
        StartingValues startingValues,
        StatementFiles statements,
        Ids ids,
        InstantSource clock,
        Function<Logbook, Outcome<Today>> today,
        ZoneId zone,
        String person,
        Texts texts,
        Measures measures,
        Problems problems,
        RecordWords words,
        LifeWords lives,
        ChargeWords charges,
        String called,
        PrintWriter out,
        PrintWriter err) {}
