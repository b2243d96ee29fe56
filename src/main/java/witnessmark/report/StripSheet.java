package witnessmark.report;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.HowMarked;

/**
 * What stands on the printed report of a strip, in words: every position with what was found there, and room to write where nobody
 * looked yet.
 *
 * @param title what it is: "Strip report of K05, build 2"
 * @param board on the right of the board: which design
 * @param under sentences under the board: when it was opened, how much was looked at, what is marked, who looked
 * @param logbook whose it is: "Marrowgate Racing"
 * @param day the day looked at: "As of Wed 8 Jul 2026"
 * @param printed when it was printed, in words
 * @param made the same moment, for the file
 * @param caution what nobody may take it for, on every page
 * @param grades how far a mark can have gone, each with its word, the least first
 * @param titles over the columns: where, how far, what was found, and when last looked at where somebody did
 * @param areas in the order in which an engine comes apart
 * @param tables what was found at no place, and what the trade asks of such marks
 * @param other over the lines to write on for whatever else is seen; empty for none
 * @param byHand who looks and when, to be written by hand; null where nothing is left to look at
 */
public record StripSheet(
        String title,
        String board,
        List<String> under,
        String logbook,
        String day,
        String printed,
        Instant made,
        String caution,
        List<Grade> grades,
        List<String> titles,
        List<Area> areas,
        List<SeasonSheet.Section> tables,
        String other,
        BuildSheet.@Nullable ByHand byHand) {
    public StripSheet {
        under = List.copyOf(under);
        grades = List.copyOf(grades);
        titles = List.copyOf(titles);
        areas = List.copyOf(areas);
        tables = List.copyOf(tables);
    }

    /**
     * How far a mark has gone.
     *
     * @param word "2 clear"
     */
    public record Grade(HowMarked how, String word) {}

    /**
     * What belongs together on an engine.
     *
     * @param heading "Rods, crank and shells"
     */
    public record Area(String heading, List<Line> lines) {
        public Area {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A place with its positions.
     *
     * @param name "Big-end shell, upper"
     * @param notes which part sat there and what it had run, what stands out
     * @param spots from top to bottom
     */
    public record Line(String name, List<String> notes, List<Spot> spots) {
        public Line {
            notes = List.copyOf(notes);
            spots = List.copyOf(spots);
        }
    }

    /**
     * A position.
     *
     * @param number which one, or that it is all of them; empty where there is only one
     * @param found what is there, the earliest first; none to be filled in by hand
     * @param before what was there when last looked at; empty for nothing
     * @param worse whether it has gone further since
     */
    public record Spot(String number, List<Found> found, String before, boolean worse) {
        public Spot {
            found = List.copyOf(found);
        }
    }

    /**
     * Something found.
     *
     * @param how how far it has gone, or null where nobody judged
     * @param grade the same in words
     * @param what what it is, where there, and what was seen
     * @param beside of which incident it is evidence, who saw it and when
     */
    public record Found(@Nullable HowMarked how, String grade, String what, List<String> beside) {
        public Found {
            beside = List.copyOf(beside);
        }
    }
}
