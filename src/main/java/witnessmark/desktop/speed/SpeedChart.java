package witnessmark.desktop.speed;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import witnessmark.chart.Axis;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.chart.Line;
import witnessmark.fit.result.AtSpeed;
import witnessmark.fit.result.SpeedAnswer;
import witnessmark.logbook.measuring.SpeedPage;
import witnessmark.quantity.EngineSpeed;
import witnessmark.wording.Measures;
import witnessmark.wording.SpeedWords;
import witnessmark.wording.Texts;

/** Crown to head over speed, with the band it is known to, up to the highest speed the engine has seen. */
final class SpeedChart {
    private static final int STEP = 500;

    private final Texts texts;
    private final Measures measures;
    private final SpeedWords words;

    SpeedChart(Texts texts, Measures measures, SpeedWords words) {
        this.texts = texts;
        this.measures = measures;
        this.words = words;
    }

    /** The chart of the nearest side. */
    Chart of(SpeedPage page, AtSpeed side) {
        SpeedAnswer answer = page.answer();
        List<Double> speeds = speeds(answer.top());
        String headline = words.headline(answer, page.squish());
        List<Line> lines = List.of(
                line(
                        "likely",
                        texts.get("speed.chart.likely"),
                        false,
                        speeds,
                        rpm -> side.headAt(rpm).likely()),
                line(
                        "low",
                        texts.get("speed.chart.low"),
                        true,
                        speeds,
                        rpm -> side.headAt(rpm).low()),
                line(
                        "high",
                        texts.get("speed.chart.high"),
                        true,
                        speeds,
                        rpm -> side.headAt(rpm).high()));
        return new Chart(
                words.finding(answer, side),
                texts.get("speed.chart.note"),
                new Axis.Figures(texts.get("speed.chart.across"), true, rpm -> measures.number(Math.round(rpm))),
                new Axis.Figures(texts.get("speed.chart.up"), true, this::figure),
                lines,
                uprights(answer),
                answer.margin() == null
                        ? List.of()
                        : List.of(new Chart.Mark(
                                answer.margin(), texts.get("speed.chart.margin", words.millimetres(answer.margin())))),
                List.of(),
                headline,
                table(side, speeds));
    }

    private static List<Double> speeds(double top) {
        List<Double> speeds = new ArrayList<>(IntStream.rangeClosed(0, (int) (top / STEP))
                .mapToObj(i -> (double) i * STEP)
                .toList());
        if (speeds.get(speeds.size() - 1) < top) {
            speeds.add(top);
        }
        return speeds;
    }

    private Line line(String id, String name, boolean quiet, List<Double> speeds, ToDoubleFunction<Double> at) {
        return new Line(
                id,
                name,
                Line.Path.STRAIGHT,
                quiet,
                speeds.stream()
                        .map(rpm -> new Dot(
                                rpm,
                                at.applyAsDouble(rpm),
                                texts.get(
                                        "speed.chart.dot", name, speed(rpm), words.millimetres(at.applyAsDouble(rpm))),
                                null))
                        .toList());
    }

    private List<Chart.Mark> uprights(SpeedAnswer answer) {
        List<Chart.Mark> marks = new ArrayList<>();
        if (answer.redLine() != null) {
            marks.add(new Chart.Mark(answer.redLine(), texts.get("speed.chart.red_line")));
        }
        if (answer.seen() != null && !answer.seen().equals(answer.redLine())) {
            marks.add(new Chart.Mark(answer.seen(), texts.get("speed.chart.seen")));
        }
        return marks;
    }

    private ChartTable table(AtSpeed side, List<Double> speeds) {
        return new ChartTable(
                List.of(
                        texts.get("speed.chart.across"),
                        texts.get("speed.chart.low"),
                        texts.get("speed.chart.likely"),
                        texts.get("speed.chart.high")),
                speeds.stream()
                        .map(rpm -> {
                            AtSpeed.Band band = side.headAt(rpm);
                            return List.of(speed(rpm), figure(band.low()), figure(band.likely()), figure(band.high()));
                        })
                        .toList());
    }

    private String figure(double millimetres) {
        return measures.number(BigDecimal.valueOf(millimetres).setScale(2, RoundingMode.HALF_UP), 2);
    }

    private String speed(double rpm) {
        return measures.speed(new EngineSpeed((int) Math.round(rpm)));
    }
}
