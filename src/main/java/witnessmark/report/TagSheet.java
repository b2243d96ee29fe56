package witnessmark.report;

import java.time.Instant;
import java.util.List;

/**
 * Tags to be cut out, one to a bag.
 *
 * @param title what they are: "Tags of engine K05"
 * @param board on the right of the board: how many
 * @param logbook whose they are
 * @param day the day looked at
 * @param printed when they were printed, in words
 * @param made the same moment, for the file
 * @param caution what is to be left alone, on every page
 * @param tags in order
 */
public record TagSheet(
        String title,
        String board,
        String logbook,
        String day,
        String printed,
        Instant made,
        String caution,
        List<Tag> tags) {
    public TagSheet {
        tags = List.copyOf(tags);
    }

    /**
     * One tag.
     *
     * @param engine very large: what a bag is sorted by
     * @param mark of the part, as large
     * @param what it is and where it sits
     * @param lines each a name and what stands after it; a line to write on where that is empty
     * @param foot what holds for every bag
     */
    public record Tag(String engine, String mark, String what, List<Line> lines, String foot) {
        public Tag {
            lines = List.copyOf(lines);
        }
    }

    /** A line of a tag. */
    public record Line(String name, String words) {}
}
