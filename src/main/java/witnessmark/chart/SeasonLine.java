package witnessmark.chart;

import java.util.List;

/**
 * A season along one line for each car: events as bands, incidents as marks. Every text is ready to be read by people.
 *
 * @param first its first day, as a day since 1 January 1970
 * @param last its last day, likewise
 * @param months where months begin, with their names
 * @param rows one for each car
 */
public record SeasonLine(long first, long last, List<Month> months, List<Row> rows) {
    public SeasonLine {
        months = List.copyOf(months);
        rows = List.copyOf(rows);
        if (last < first) {
            throw new IllegalArgumentException("a season ends after it begins");
        }
    }

    /** How large a mark is. */
    public enum Size {
        SMALL,
        MIDDLE,
        LARGE
    }

    /** A month begins. */
    public record Month(long day, String name) {}

    /**
     * One car.
     *
     * @param name before the line
     * @param bands events, in their order
     * @param marks incidents, in their order
     */
    public record Row(String name, List<Band> bands, List<Mark> marks) {
        public Row {
            bands = List.copyOf(bands);
            marks = List.copyOf(marks);
        }
    }

    /** An event, from its first day to its last. */
    public record Band(long first, long last, String name) {}

    /**
     * An incident.
     *
     * @param day when
     * @param size by what it cost
     * @param beside short words beside it where there is room; empty for none
     * @param words the whole of it: the readout
     * @param record what it leads to
     */
    public record Mark(long day, Size size, String beside, String words, String record) {}

    /** Where a day lies, from 0 at the first day to 1 after the last. */
    public double share(long day) {
        return (double) (day - first) / (last - first + 1);
    }
}
