package witnessmark.report;

import java.time.Instant;

/**
 * What stands at the edges of every page of a sheet, and what its file says of itself.
 *
 * @param title what it is: "Job sheet, Round 6, Thornacre"
 * @param logbook whose it is: "Marrowgate Racing"
 * @param day the day looked at: "As of Wed 8 Jul 2026"
 * @param printed when it was printed, in words
 * @param made the same moment, for the file
 * @param caution what nobody may take it for
 */
public record SheetEdges(String title, String logbook, String day, String printed, Instant made, String caution) {}
