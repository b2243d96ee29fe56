package witnessmark.trace.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import witnessmark.domain.ChannelKind;

/**
 * How a trace is written: what was understood of its beginning, to be put right by a person where it was understood wrong.
 * Files of one logger have the same; it is found again by its {@link #signature()}.
 *
 * @param coding of its characters
 * @param delimiter between cells; a space stands for any run of spaces and tabs, 0 for a single column
 * @param decimal the decimal mark, a point or a comma; the same as the delimiter where figures stand in quotes
 * @param thousands the mark between thousands, or 0
 * @param comment what lines that are no rows begin with; empty for nothing
 * @param before how many lines stand before the first row of figures
 * @param time where the time of a row is from
 * @param columns all of them, that of time too, in their order
 */
public record TraceForm(
        TextCoding coding,
        char delimiter,
        char decimal,
        char thousands,
        String comment,
        int before,
        TimeBase time,
        List<ColumnForm> columns) {
    /** More columns than any logger has. */
    public static final int MOST_COLUMNS = 4096;

    public TraceForm {
        columns = List.copyOf(columns);
        if (columns.isEmpty()
                || columns.size() > MOST_COLUMNS
                || time.column() >= columns.size()
                || time.dateColumn() >= columns.size()) {
            throw new IllegalArgumentException("1 to " + MOST_COLUMNS + " columns, that of time among them");
        }
        if ((decimal != '.' && decimal != ',') || before < 0) {
            throw new IllegalArgumentException("no such form");
        }
    }

    public TraceForm with(TimeBase other) {
        return new TraceForm(coding, delimiter, decimal, thousands, comment, before, other, columns);
    }

    public TraceForm with(int column, ColumnForm other) {
        List<ColumnForm> changed = new ArrayList<>(columns);
        changed.set(column, other);
        return new TraceForm(coding, delimiter, decimal, thousands, comment, before, time, changed);
    }

    /** With another decimal mark; the one before it is the mark of thousands then. */
    public TraceForm withDecimal(char mark) {
        char other = mark == ',' ? '.' : ',';
        return new TraceForm(coding, delimiter, mark, other == delimiter ? 0 : other, comment, before, time, columns);
    }

    /** The first column of a kind, or −1. */
    public int column(ChannelKind kind) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).kind() == kind && !isTime(i)) {
                return i;
            }
        }
        return -1;
    }

    /** The column with this heading, letter case aside, or −1. */
    public int named(String heading) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).heading().equalsIgnoreCase(heading.strip())) {
                return i;
            }
        }
        return -1;
    }

    /** Whether a column says when, not what. */
    public boolean isTime(int column) {
        return column == time.column() || column == time.dateColumn();
    }

    /** What files of the same logger and set-up have in common: delimiter and headings, whatever their values. */
    public String signature() {
        StringBuilder text = new StringBuilder(FormText.sign(delimiter));
        columns.forEach(column -> text.append('|')
                .append(FormText.escaped(column.heading().toLowerCase(Locale.ROOT)))
                .append(column.stated() ? "/" + column.unit().code() : ""));
        return text.toString();
    }

    /** A stable text that {@link #parse} reads back. */
    public String text() {
        return FormText.of(this);
    }

    /**
     * Reads back what {@link #text()} wrote.
     *
     * @throws IllegalArgumentException if it is no such text
     */
    public static TraceForm parse(String text) {
        return FormText.parse(text);
    }
}
