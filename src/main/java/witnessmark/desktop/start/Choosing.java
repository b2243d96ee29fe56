package witnessmark.desktop.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Asks for a file or folder. Event thread only; it waits for the answer. */
public interface Choosing {
    /** A logbook to open. */
    Optional<Path> logbook();

    /** Where to keep a new logbook. */
    Optional<Path> newLogbook(Path suggested);

    /** A folder to read a season from. */
    Optional<Path> seasonToRead();

    /** A folder to write a season to. */
    Optional<Path> seasonToWrite();

    /** A statement of a bank to read. */
    Optional<Path> statementToRead();

    /** A logger's file to bring in. */
    Optional<Path> traceToRead();

    /** A folder in which loggers' files appear. */
    Optional<Path> tracesFolder();

    /** Pictures to put in; empty when somebody thought better of it. */
    List<Path> photosToRead();

    /** A folder in which photos appear. */
    Optional<Path> photosFolder();

    /** Where to write a copy of a photo. */
    Optional<Path> photoToWrite(Path suggested);

    /** Where to write a calendar. */
    Optional<Path> calendarToWrite(Path suggested);

    /** Where to write a season's table. */
    Optional<Path> seasonTableToWrite(Path suggested);

    /** Where to write a job sheet. */
    Optional<Path> jobSheetToWrite(Path suggested);

    /** Where to write a season's pages. */
    Optional<Path> seasonSheetToWrite(Path suggested);

    /** Where to write the pages of a build sheet. */
    Optional<Path> buildSheetToWrite(Path suggested);

    /** Where to write the page of a face; empty when somebody thought better of it. */
    Optional<Path> faceSheetToWrite(Path suggested);

    /** Where to write the pages of a strip report. */
    Optional<Path> stripSheetToWrite(Path suggested);

    /** Where the pages of a trace go. */
    Optional<Path> traceSheetToWrite(Path suggested);
    /** Where to write the case sheet of an incident. */
    Optional<Path> caseSheetToWrite(Path suggested);

    /** Where to write tags for parts. */
    Optional<Path> tagsToWrite(Path suggested);

    /** A backup, or another file that is or was a logbook. */
    Optional<Path> copy();

    /** A stick or folder to look for backups in. */
    Optional<Path> copiesFolder();

    /** A stick, card or shared folder to keep copies in. */
    Optional<Path> secondPlace();
}
