package witnessmark.logbook.dyno;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.StringJoiner;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Id;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;
import witnessmark.study.result.PullColumn;

/** The figures of one line, each in what its {@link PullColumn} says. */
final class PullLine {
    private final Map<PullColumn, BigDecimal> figures = new EnumMap<>(PullColumn.class);
    private final TreeMap<Integer, BigDecimal> exhausts = new TreeMap<>();

    void put(PullHeading.Column column, BigDecimal figure) {
        if (column.of() == PullColumn.EXHAUST) {
            exhausts.put(column.cylinder(), figure);
        } else {
            figures.put(column.of(), figure);
        }
    }

    @Nullable
    BigDecimal figure(PullColumn of) {
        return figures.get(of);
    }

    DynoPoint point(Id<DynoSheet> sheet, int pull, int rpm, BigDecimal torque) {
        BigDecimal lambda = figure(PullColumn.LAMBDA);
        BigDecimal pressure = figure(PullColumn.OIL_PRESSURE);
        return new DynoPoint(
                sheet,
                pull,
                new EngineSpeed(rpm),
                whole(torque.movePointRight(3)),
                lambda == null ? null : Integer.valueOf(whole(lambda.movePointRight(3))),
                pressure == null ? null : Pressure.ofBar(pressure),
                heat(PullColumn.OIL),
                heat(PullColumn.WATER),
                exhaust());
    }

    private @Nullable Temperature heat(PullColumn of) {
        BigDecimal celsius = figure(of);
        return celsius == null ? null : Temperature.ofCelsius(celsius);
    }

    private String exhaust() {
        StringJoiner row = new StringJoiner(" ");
        for (int cylinder = 1; !exhausts.isEmpty() && cylinder <= exhausts.lastKey(); cylinder++) {
            BigDecimal heat = exhausts.get(cylinder);
            row.add(heat == null ? "-" : Integer.toString(whole(heat)));
        }
        return row.toString();
    }

    private static int whole(BigDecimal figure) {
        return figure.setScale(0, RoundingMode.HALF_UP).intValueExact();
    }
}
