package witnessmark.desktop.trends;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import witnessmark.chart.Chart;
import witnessmark.desktop.form.SeamState;
import witnessmark.study.result.Call;
import witnessmark.study.result.GradeLine;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Read;
import witnessmark.study.result.Trend;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.TrendWords;

/** Words the readings of an engine as rows, and describes the chart of one. The same answer always gives the same rows. */
public final class TrendsModel {
    private final Texts texts;
    private final TrendWords words;
    private final TrendChart charts;

    public TrendsModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.words = new TrendWords(texts, measures);
        this.charts = new TrendChart(texts, measures);
    }

    /** What asks for most first; in a kind the places that ask for something first, the others as a crew counts them. */
    List<TrendLine> lines(List<KindTrends> trends) {
        List<TrendLine> lines = new ArrayList<>();
        for (KindTrends of : trends) {
            Scale scale = Scale.of(of);
            boolean several =
                    trends.stream().filter(other -> other.kind() == of.kind()).count() > 1;
            String kind = several && of.part() != null
                    ? texts.get("trends.row", words.kind(of), words.on(of))
                    : words.kind(of);
            of.places().forEach(place -> lines.add(line(of, kind, place, scale)));
            of.grades().forEach(grades -> lines.add(line(of, kind, grades, scale)));
        }
        lines.sort(Comparator.comparing(TrendsModel::call));
        return lines;
    }

    private static Call call(TrendLine line) {
        if (line.figures() != null) {
            return line.figures().call();
        }
        return line.grades() != null && line.grades().worseTwice() ? Call.WORSE : Call.NONE;
    }

    /** What to know first. */
    String answer(String engine, List<TrendLine> lines) {
        if (lines.isEmpty()) {
            return texts.get("trends.nothing", engine);
        }
        TrendLine first = lines.get(0);
        return call(first) == Call.NONE ? quiet(engine, lines) : first.answer();
    }

    /** Nothing asks for a look; but a reading held against none of those before it does not say so of its place. */
    private String quiet(String engine, List<TrendLine> lines) {
        String quiet = texts.get("trends.quiet", engine);
        return lines.stream()
                .filter(line -> line.figures() != null
                        && line.figures().trend() == Trend.TOO_FEW
                        && !line.figures().apart().isEmpty())
                .findFirst()
                .map(line -> texts.get("trends.quiet.apart", quiet, line.kind(), line.answer()))
                .orElse(quiet);
    }

    Optional<Chart> chart(TrendLine line) {
        return charts.of(line);
    }

    private TrendLine line(KindTrends of, String kind, PlaceTrend place, Scale scale) {
        Read newest = place.last() == null ? newest(place) : place.last();
        LimitAhead next = place.next();
        return new TrendLine(
                id(of, place.place()),
                state(place),
                kind,
                words.place(of.kind(), place.place()),
                scale.row(place.counted(), place.limits()),
                place.counted().isEmpty() ? "" : words.figures(of, place.counted()),
                words.figure(of, newest.figure()),
                words.verdict(place.trend()),
                words.aheadShort(place),
                next == null ? null : next.likely(),
                words.answer(of, place),
                of,
                place,
                null,
                newest);
    }

    private TrendLine line(KindTrends of, String kind, GradeLine grades, Scale scale) {
        Read newest = grades.readings().get(grades.readings().size() - 1);
        return new TrendLine(
                id(of, grades.place()),
                grades.worseTwice() ? SeamState.DUE : SeamState.WITHIN,
                kind,
                words.place(of.kind(), grades.place()),
                scale.row(grades.readings(), List.of()),
                words.grades(grades),
                words.grade(newest),
                words.verdict(grades),
                "",
                null,
                words.finding(of, grades),
                of,
                null,
                grades,
                newest);
    }

    /** The last of a place of which nothing is compared yet. */
    private static Read newest(PlaceTrend place) {
        return Stream.of(place.before(), place.apart())
                .flatMap(List::stream)
                .max(Comparator.comparingDouble(Read::hours))
                .orElse(place.baseline());
    }

    private static SeamState state(PlaceTrend place) {
        if (place.limits().stream().anyMatch(LimitAhead::passed)) {
            return place.limits().stream().anyMatch(LimitAhead::over) ? SeamState.OVER : SeamState.RUN_ON;
        }
        return switch (place.call()) {
            case LOOK, PAST_LIMIT, WORSE -> SeamState.DUE;
            case NONE -> SeamState.WITHIN;
        };
    }

    private static String id(KindTrends of, String place) {
        return of.kind().code() + "/" + (of.part() == null ? "" : of.part().id().text()) + "/" + place;
    }

    /** From the least to the most of all places of a kind, their limits in it; from 0 where more is worse. */
    private record Scale(double low, double high) {
        static Scale of(KindTrends of) {
            double[] figures = Stream.concat(
                            of.places().stream()
                                    .flatMap(place -> Stream.concat(
                                            place.counted().stream().map(Read::figure),
                                            place.limits().stream().map(LimitAhead::figure))),
                            of.grades().stream()
                                    .flatMap(line -> line.readings().stream())
                                    .map(Read::figure))
                    .mapToDouble(Double::doubleValue)
                    .toArray();
            double least = DoubleStream.of(figures).min().orElse(0);
            double most = DoubleStream.of(figures).max().orElse(1);
            double low = TrendChart.fromZero(of.kind()) ? 0 : least;
            return new Scale(low, most > low ? most : low + 1);
        }

        DotRow row(List<Read> reads, List<LimitAhead> limits) {
            List<Read> last = reads.subList(Math.max(0, reads.size() - DotRow.MOST), reads.size());
            return new DotRow(
                    last.stream().map(read -> at(read.figure())).toList(),
                    limits.stream().map(limit -> at(limit.figure())).toList());
        }

        private double at(double figure) {
            return Math.max(0, Math.min(1, (figure - low) / (high - low)));
        }
    }
}
