package witnessmark.logbook.dyno;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.StringJoiner;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoPoint;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;

/** Points of a sheet as lines that {@link PullText} reads back exactly: a heading, then each pull under its number. */
public final class WrittenPulls {
    private static final String BETWEEN = "; ";
    private static final String NOT_READ = "-";

    private final List<DynoPoint> points;
    private final boolean lambda;
    private final boolean pressure;
    private final boolean oil;
    private final boolean water;
    private final int exhausts;

    private WrittenPulls(List<DynoPoint> points) {
        this.points = points.stream()
                .sorted(Comparator.comparingInt(DynoPoint::pull).thenComparing(DynoPoint::speed))
                .toList();
        this.lambda = any(point -> point.lambdaThousandths() != null);
        this.pressure = any(point -> point.oilPressure() != null);
        this.oil = any(point -> point.oil() != null);
        this.water = any(point -> point.water() != null);
        this.exhausts = points.stream()
                .mapToInt(point -> cells(point.exhaust()).size())
                .max()
                .orElse(0);
    }

    /** The lines; empty for no points. */
    public static String text(List<DynoPoint> points) {
        return points.isEmpty() ? "" : new WrittenPulls(points).text();
    }

    private String text() {
        StringJoiner lines = new StringJoiner("\n");
        lines.add(heading());
        int pull = 0;
        for (DynoPoint point : points) {
            if (point.pull() != pull) {
                pull = point.pull();
                lines.add("pull " + pull);
            }
            lines.add(line(point));
        }
        return lines.toString();
    }

    private String heading() {
        StringJoiner row = new StringJoiner(BETWEEN).add("rpm").add("N·m");
        if (lambda) {
            row.add("lambda");
        }
        if (pressure) {
            row.add("oil bar");
        }
        if (oil) {
            row.add("oil °C");
        }
        if (water) {
            row.add("water °C");
        }
        for (int i = 1; i <= exhausts; i++) {
            row.add("exhaust " + i + " °C");
        }
        return row.toString();
    }

    private String line(DynoPoint point) {
        StringJoiner row = new StringJoiner(BETWEEN);
        row.add(point.speed().text()).add(thousandths(point.torqueMillinewtonMetres()));
        if (lambda) {
            Integer figure = point.lambdaThousandths();
            row.add(figure == null ? NOT_READ : thousandths(figure));
        }
        if (pressure) {
            Pressure figure = point.oilPressure();
            row.add(figure == null ? NOT_READ : figure.text());
        }
        if (oil) {
            row.add(heat(point.oil()));
        }
        if (water) {
            row.add(heat(point.water()));
        }
        List<String> cells = cells(point.exhaust());
        for (int i = 0; i < exhausts; i++) {
            row.add(i < cells.size() ? cells.get(i) : NOT_READ);
        }
        return row.toString();
    }

    private boolean any(Predicate<DynoPoint> has) {
        return points.stream().anyMatch(has);
    }

    private static String heat(@Nullable Temperature heat) {
        return heat == null ? NOT_READ : heat.text();
    }

    private static String thousandths(int figure) {
        BigDecimal exact = BigDecimal.valueOf(figure, 3).stripTrailingZeros();
        return exact.toPlainString();
    }

    private static List<String> cells(String exhaust) {
        List<String> cells = new ArrayList<>();
        for (String cell : exhaust.strip().split("\\s+")) {
            if (!cell.isEmpty()) {
                cells.add(Objects.requireNonNull(cell));
            }
        }
        return cells;
    }
}
