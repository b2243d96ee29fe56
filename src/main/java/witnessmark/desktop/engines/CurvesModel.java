package witnessmark.desktop.engines;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Axis;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.chart.Line;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Work;
import witnessmark.logbook.engines.Curve;
import witnessmark.logbook.engines.EngineRow;
import witnessmark.logbook.engines.Engines;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Describes the chart of running time since the last rebuild and since the last skim. */
final class CurvesModel {
    private static final double PER_HOUR = 3_600_000.0;

    private final Texts texts;
    private final Measures measures;
    private final CurveWords words;

    /** Which lines are on the chart. */
    enum Which {
        /** The engine in hand and its head. */
        THIS("engines.curves.this"),
        /** Every engine since its rebuild. */
        ENGINES("engines.curves.engines"),
        /** Every head since its skim. */
        HEADS("engines.curves.heads");

        private final String key;

        Which(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    CurvesModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new CurveWords(texts, measures);
    }

    /**
     * The chart, or empty when nothing ran yet.
     *
     * @param engine the text form of the identity of the engine in hand
     */
    Optional<Chart> chart(Engines engines, String engine, Which which) {
        EngineRow row = engines.engines().stream()
                .filter(each -> each.engine().id().text().equals(engine))
                .findFirst()
                .orElse(null);
        String head = row == null || row.head() == null
                ? null
                : row.head().head().id().text();
        List<Drawn> drawn = drawn(engines, engine, head, which);
        if (row == null || drawn.isEmpty()) {
            return Optional.empty();
        }
        Moment end = Moment.endOf(engines.day(), engines.zone());
        return Optional.of(new Chart(
                words.finding(which, drawn),
                words.note(engines, drawn),
                new Axis.Days("", engines.zone(), new Days()),
                new Axis.Figures(texts.get("engines.curves.up"), true, this::figure),
                drawn.stream().map(line -> line(line, end)).toList(),
                uprights(drawn),
                List.of(),
                bands(engines, drawn),
                words.description(row, drawn),
                table(drawn)));
    }

    /**
     * A line to be drawn.
     *
     * @param skim whether it counts from skims, not rebuilds
     */
    record Drawn(Curve curve, boolean skim, boolean quiet) {}

    private static List<Drawn> drawn(Engines engines, String engine, @Nullable String head, Which which) {
        List<Drawn> all = new ArrayList<>();
        switch (which) {
            case THIS -> {
                pick(all, engines.sinceRebuild(), engine, false, true);
                pick(all, engines.sinceSkim(), head, true, true);
            }
            case ENGINES -> pick(all, engines.sinceRebuild(), engine, false, false);
            case HEADS -> pick(all, engines.sinceSkim(), head, true, false);
        }
        return all;
    }

    /** The chosen curve first and in colour; the others in colour too only where there are few. */
    private static void pick(
            List<Drawn> into, List<Curve> curves, @Nullable String chosen, boolean skim, boolean only) {
        boolean few = curves.size() <= Chart.MOST_IN_COLOUR;
        curves.stream()
                .filter(curve -> Objects.equals(curve.id(), chosen))
                .forEach(curve -> into.add(new Drawn(curve, skim, false)));
        if (!only) {
            curves.stream()
                    .filter(curve -> !Objects.equals(curve.id(), chosen))
                    .forEach(curve -> into.add(new Drawn(curve, skim, !few)));
        }
    }

    private Line line(Drawn drawn, Moment end) {
        List<Dot> dots = new ArrayList<>();
        for (Curve.Step step : drawn.curve().steps()) {
            dots.add(new Dot(
                    step.at().epochMillis(),
                    step.since().total() / PER_HOUR,
                    words.step(drawn.curve(), step),
                    step.source().id().text()));
        }
        if (!dots.isEmpty() && dots.get(dots.size() - 1).across() < end.epochMillis()) {
            double last = drawn.curve().last().total() / PER_HOUR;
            dots.add(new Dot(end.epochMillis(), last, words.today(drawn.curve(), end), null));
        }
        return new Line(
                drawn.curve().id(), words.name(drawn.curve(), drawn.skim()), Line.Path.STEP, drawn.quiet(), dots);
    }

    private List<Chart.Mark> uprights(List<Drawn> drawn) {
        List<Chart.Mark> marks = new ArrayList<>();
        for (Drawn line : drawn) {
            for (Curve.Step step : line.curve().steps()) {
                boolean back =
                        step.source().fact() instanceof Build || step.source().fact() instanceof Work;
                if (back && !line.quiet()) {
                    marks.add(new Chart.Mark(step.at().epochMillis(), words.setBack(line.curve(), step)));
                }
            }
        }
        return marks;
    }

    /** The days of events, from the first thing drawn on. */
    private static List<Chart.Band> bands(Engines engines, List<Drawn> drawn) {
        long first = drawn.stream()
                .flatMap(line -> line.curve().steps().stream())
                .mapToLong(step -> step.at().epochMillis())
                .min()
                .orElse(0);
        List<Chart.Band> bands = new ArrayList<>();
        for (Entry<Event> event : engines.events()) {
            LocalDate after = event.fact().lastDay().plusDays(1);
            long from = event.fact()
                    .firstDay()
                    .atStartOfDay(event.fact().zone())
                    .toInstant()
                    .toEpochMilli();
            long to = after.atStartOfDay(event.fact().zone()).toInstant().toEpochMilli();
            if (from >= first) {
                bands.add(new Chart.Band(from, to, ""));
            }
        }
        return bands;
    }

    private ChartTable table(List<Drawn> drawn) {
        List<List<String>> rows = new ArrayList<>();
        for (Drawn line : drawn) {
            for (Curve.Step step : line.curve().steps()) {
                rows.add(List.of(
                        words.name(line.curve(), line.skim()),
                        measures.fullMoment(step.at()),
                        words.source(step.source()),
                        words.since(step)));
            }
        }
        return new ChartTable(
                List.of(
                        texts.get("engines.curves.table.line"),
                        texts.get("engines.curves.table.when"),
                        texts.get("engines.curves.table.entry"),
                        texts.get("engines.curves.table.since")),
                rows);
    }

    private String figure(double hours) {
        RunningTime time = new RunningTime(Math.max(0, Math.round(hours * PER_HOUR)));
        boolean whole = Math.abs(hours - Math.rint(hours)) < 1e-6;
        return measures.number(time.hours(whole ? 0 : 1), whole ? 0 : 1);
    }

    /** How days read on the chart. */
    private final class Days implements Axis.DayWords {
        @Override
        public String day(LocalDate day) {
            return measures.shortDate(day);
        }

        @Override
        public String month(YearMonth month) {
            return words.month(month);
        }
    }
}
