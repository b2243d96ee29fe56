package witnessmark.chart;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Channels of a logger against time, in rows that share one axis of time. Every text is ready to be read by people.
 *
 * @param finding the title: what it shows, as a sentence
 * @param note under the title
 * @param last the end of the axis, seconds; it begins at 0
 * @param rows from the top
 * @param marks at places of the axis
 * @param time how a time reads at a tick
 * @param description for those who do not see it: two sentences
 */
public record TraceRows(
        String finding,
        String note,
        double last,
        List<Row> rows,
        List<Mark> marks,
        DoubleFunction<String> time,
        String description) {
    public TraceRows {
        rows = List.copyOf(rows);
        marks = List.copyOf(marks);
    }

    /**
     * One channel.
     *
     * @param id which one
     * @param name what it measures
     * @param unit of its figures; empty for none
     * @param low least that has to be in sight
     * @param high most that has to be in sight, above it
     * @param tick how a figure reads at a tick
     * @param figure how a figure reads at the cross-hair
     * @param curves one for each run, the one in hand first
     * @param floor what it is not to fall below at that time, or null
     * @param levels lines across it, as its limit
     */
    public record Row(
            String id,
            String name,
            String unit,
            double low,
            double high,
            DoubleFunction<String> tick,
            DoubleFunction<String> figure,
            List<Sampled> curves,
            @Nullable Sampled floor,
            List<Chart.Mark> levels) {
        public Row {
            curves = List.copyOf(curves);
            levels = List.copyOf(levels);
        }

        private Row named(String other) {
            return new Row(id, other, unit, low, high, tick, figure, curves, floor, levels);
        }

        private Row spelled(UnaryOperator<String> words) {
            return new Row(
                    id,
                    words.apply(name),
                    words.apply(unit),
                    low,
                    high,
                    tick,
                    figure,
                    curves,
                    floor,
                    levels.stream()
                            .map(level -> new Chart.Mark(level.at(), words.apply(level.label())))
                            .toList());
        }
    }

    /**
     * Something found at a place.
     *
     * @param at where, seconds
     * @param lasted how long, seconds; 0 for a single sample
     * @param row in which row, by its id; empty for all
     * @param label beside it where there is room
     * @param engine whether the engine did it; else the logger
     */
    public record Mark(double at, double lasted, String row, String label, boolean engine) {}

    /** The same with every text put in other words, as letters that can be printed; figures stay. */
    public TraceRows spelled(UnaryOperator<String> words) {
        return new TraceRows(
                words.apply(finding),
                words.apply(note),
                last,
                rows.stream().map(row -> row.spelled(words)).toList(),
                marks.stream()
                        .map(mark -> new Mark(
                                mark.at(), mark.lasted(), mark.row(), words.apply(mark.label()), mark.engine()))
                        .toList(),
                time,
                words.apply(description));
    }

    /**
     * The same without heading, where that stands beside it, and with its rows named in full, where no cross-hair says more.
     *
     * @param named how a row is called
     */
    public TraceRows bare(Function<Row, String> named) {
        return new TraceRows(
                "",
                "",
                last,
                rows.stream().map(row -> row.named(named.apply(row))).toList(),
                marks,
                time,
                description);
    }

    /**
     * Where a mark is worst: at the most its row says in it, or at the least where that is not to fall below something; in its
     * middle where its row says nothing.
     */
    public double worst(Mark mark) {
        double middle = mark.at() + mark.lasted() / 2;
        Row row = rows.stream()
                .filter(each -> each.id().equals(mark.row()))
                .findFirst()
                .orElse(null);
        if (row == null || row.curves().isEmpty() || mark.lasted() == 0) {
            return middle;
        }
        boolean low = row.floor() != null;
        double[] worst = {middle, Double.NEGATIVE_INFINITY};
        row.curves().get(0).points(mark.at(), mark.at() + mark.lasted(), (time, least, most, hole) -> {
            double figure = low ? -least : most;
            if (time >= mark.at() && time <= mark.at() + mark.lasted() && figure > worst[1]) {
                worst[0] = time;
                worst[1] = figure;
            }
        });
        return worst[0];
    }

    /** The least time of something in sight that is not 0: for the closest look. */
    double closest() {
        return Math.min(last, 0.2);
    }
}
