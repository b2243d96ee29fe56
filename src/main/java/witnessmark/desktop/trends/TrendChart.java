package witnessmark.desktop.trends;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Axis;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.chart.Line;
import witnessmark.domain.Build;
import witnessmark.domain.Grade;
import witnessmark.domain.ReadingKind;
import witnessmark.study.result.GradeLine;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Read;
import witnessmark.study.result.Slope;
import witnessmark.study.result.Trend;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.TrendWords;

/** Describes the chart of one place over running time: its readings and their line, the others quiet, limits across. */
final class TrendChart {
    /** A line goes on towards its limit at most this many times as far as the readings lie apart. */
    private static final double ON = 1.0;

    /** More names at the ends of quiet lines would be a column of their own. */
    private static final int NAMED = 3;

    private final Texts texts;
    private final Measures measures;
    private final TrendWords words;

    TrendChart(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new TrendWords(texts, measures);
    }

    /** Whether a scale of such figures begins at 0: where none is as it should be. */
    static boolean fromZero(ReadingKind kind) {
        return kind.graded() || kind == ReadingKind.LEAK_DOWN || kind == ReadingKind.OIL_METAL;
    }

    Optional<Chart> of(TrendLine line) {
        PlaceTrend place = line.figures();
        GradeLine grades = line.grades();
        if (grades != null) {
            return Optional.of(graded(line, grades));
        }
        return place == null || place.counted().size() + place.before().size() == 0
                ? Optional.empty()
                : Optional.of(figures(line, place));
    }

    private Chart figures(TrendLine line, PlaceTrend place) {
        KindTrends of = line.of();
        List<Line> lines = new ArrayList<>();
        if (!place.counted().isEmpty()) {
            lines.add(line(of, place.place(), line.place(), false, place.counted()));
        }
        slope(of, place).ifPresent(lines::add);
        if (!place.before().isEmpty()) {
            lines.add(line(of, place.place() + " before", "", true, place.before()));
        }
        boolean named = of.places().size() <= NAMED + 1;
        for (PlaceTrend other : of.places()) {
            if (other != place && !other.counted().isEmpty()) {
                String name = named ? words.place(of.kind(), other.place()) : "";
                lines.add(line(of, other.place(), name, true, other.counted()));
            }
        }
        Build since = place.since() == null ? null : place.since().fact();
        List<Chart.Mark> uprights = since == null || place.counted().isEmpty()
                ? List.of()
                : List.of(new Chart.Mark(
                        place.counted().get(0).hours(), texts.get("trends.chart.build", since.number())));
        return chart(line, words.heading(of, place), String.join("; ", words.basis(of, place)), lines, uprights, place);
    }

    private Chart graded(TrendLine line, GradeLine grades) {
        return chart(
                line,
                line.answer(),
                "",
                List.of(line(line.of(), grades.place(), line.place(), false, grades.readings())),
                List.of(),
                null);
    }

    private Chart chart(
            TrendLine line,
            String finding,
            String note,
            List<Line> lines,
            List<Chart.Mark> uprights,
            @Nullable PlaceTrend place) {
        KindTrends of = line.of();
        return new Chart(
                finding,
                note,
                new Axis.Figures(
                        texts.get("trends.chart.across", words.on(of)), false, hours -> words.bareHours(hours)),
                new Axis.Figures(up(of), fromZero(of.kind()), figure -> tick(of, figure)),
                lines,
                uprights,
                place == null
                        ? List.of()
                        : place.limits().stream().map(limit -> level(of, limit)).toList(),
                List.of(),
                texts.get(
                        "trends.chart.description",
                        finding,
                        lines.get(0).dots().size(),
                        measures.date(line.newest().reading().fact().at().day())),
                table(of, place));
    }

    private String up(KindTrends of) {
        return of.kind().graded()
                ? texts.get("trends.chart.up.graded", words.kind(of))
                : texts.get("trends.chart.up", words.kind(of), words.unit(of));
    }

    private String tick(KindTrends of, double figure) {
        if (!of.kind().graded()) {
            return words.bare(of, figure);
        }
        return Stream.of(Grade.values())
                .filter(grade -> grade.of(of.kind()) && grade.badness() == figure)
                .findFirst()
                .map(words::grade)
                .orElse("");
    }

    private Chart.Mark level(KindTrends of, LimitAhead limit) {
        return new Chart.Mark(limit.figure(), words.limit(of, limit));
    }

    private Line line(KindTrends of, String id, String name, boolean quiet, List<Read> reads) {
        List<Dot> dots = reads.stream()
                .map(read -> new Dot(
                        read.hours(),
                        read.figure(),
                        words.read(of, read),
                        read.reading().id().text()))
                .toList();
        return new Line(id, name, Line.Path.STRAIGHT, quiet, dots);
    }

    /** From the first reading to where it meets the next limit, as far as that is not out of all proportion. */
    private Optional<Line> slope(KindTrends of, PlaceTrend place) {
        Slope slope = place.slope();
        if (slope == null || place.trend() != Trend.RISING && place.trend() != Trend.FALLING) {
            return Optional.empty();
        }
        double from = place.counted().get(0).hours();
        double last = place.counted().get(place.counted().size() - 1).hours();
        LimitAhead next = place.next();
        double met = next == null || next.likely() == null ? of.hours() : of.hours() + next.likely();
        double to = Math.max(last, Math.min(met, last + ON * (last - from)));
        String says = next == null ? words.heading(of, place) : words.ahead(of, next);
        return Optional.of(new Line(
                "slope",
                texts.get("trends.chart.line"),
                Line.Path.STRAIGHT,
                false,
                List.of(new Dot(from, slope.at(from), says, null), new Dot(to, slope.at(to), says, null))));
    }

    private ChartTable table(KindTrends of, @Nullable PlaceTrend chosen) {
        List<List<String>> rows = new ArrayList<>();
        if (chosen != null) {
            rows(rows, of, chosen);
            of.places().stream().filter(place -> place != chosen).forEach(place -> rows(rows, of, place));
        }
        for (GradeLine line : of.grades()) {
            line.readings().forEach(read -> rows.add(row(of, line.place(), read, "trends.chart.counted")));
        }
        return new ChartTable(
                List.of(
                        texts.get("trends.chart.table.place"),
                        texts.get("trends.chart.table.day"),
                        texts.get("trends.chart.table.hours"),
                        texts.get("trends.chart.table.figure"),
                        texts.get("trends.chart.table.counted")),
                rows);
    }

    private void rows(List<List<String>> into, KindTrends of, PlaceTrend place) {
        place.before().forEach(read -> into.add(row(of, place.place(), read, "trends.chart.before")));
        place.counted().forEach(read -> into.add(row(of, place.place(), read, "trends.chart.counted")));
        place.apart().forEach(read -> into.add(row(of, place.place(), read, "trends.chart.apart")));
    }

    private List<String> row(KindTrends of, String place, Read read, String counted) {
        return List.of(
                words.place(of.kind(), place),
                measures.date(read.reading().fact().at().day()),
                words.bareHours(read.hours()),
                of.kind().graded() ? words.grade(read) : words.figure(of, read.figure()),
                texts.get(counted));
    }
}
