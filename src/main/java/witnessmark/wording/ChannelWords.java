package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.quantity.typed.DistanceUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.TemperatureUnit;

/** Figures of channels in the units the team reads them in. */
public final class ChannelWords {
    private final Measures measures;
    private final TraceWords words;

    public ChannelWords(Texts texts, Measures measures) {
        this.measures = measures;
        this.words = new TraceWords(texts, measures);
    }

    /** What it measures: {@code oil pressure}. */
    public String name(ChannelKind kind) {
        return words.channel(kind);
    }

    /** The unit's sign; empty where there is none. */
    public String unit(ChannelKind kind) {
        ChannelUnit unit = shownIn(kind);
        return unit == ChannelUnit.COUNT || unit == ChannelUnit.LAMBDA ? "" : unit.code();
    }

    /** A figure of the kind's own unit in the unit it is shown in. */
    public double shown(ChannelKind kind, double figure) {
        return kind.oftenMany() ? figure : kind.unit().to(shownIn(kind), figure);
    }

    /** A figure of the kind's own unit as it reads, without its unit. */
    public String figure(ChannelKind kind, double figure) {
        return shownFigure(kind, shown(kind, figure));
    }

    /** A figure already in the unit it is shown in, as it reads. */
    public String shownFigure(ChannelKind kind, double shown) {
        return plain(shown, decimals(kind));
    }

    /** The same with its unit. */
    public String with(ChannelKind kind, double figure) {
        String unit = unit(kind);
        return unit.isEmpty() ? figure(kind, figure) : figure(kind, figure) + " " + unit;
    }

    /** A figure already in the unit it is shown in, as at a tick: with no more decimals than it needs. */
    public String tick(double figure) {
        BigDecimal exact =
                BigDecimal.valueOf(figure).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return measures.number(exact, Math.max(0, exact.scale()));
    }

    private String plain(double figure, int decimals) {
        return measures.number(BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP), decimals);
    }

    private int decimals(ChannelKind kind) {
        return switch (shownIn(kind)) {
            case RPM, PERCENT, COUNT, PSI, METRE -> 0;
            case BAR, G, LAMBDA, UNSAID -> 2;
            default -> 1;
        };
    }

    private ChannelUnit shownIn(ChannelKind kind) {
        Units units = measures.units();
        return switch (kind.unit()) {
            case BAR ->
                units.pressure() == PressureUnit.PSI
                        ? ChannelUnit.PSI
                        : units.pressure() == PressureUnit.KILOPASCAL ? ChannelUnit.KILOPASCAL : ChannelUnit.BAR;
            case CELSIUS ->
                units.temperature() == TemperatureUnit.FAHRENHEIT ? ChannelUnit.FAHRENHEIT : ChannelUnit.CELSIUS;
            case KILOMETRE_PER_HOUR ->
                units.distance() == DistanceUnit.MILE ? ChannelUnit.MILE_PER_HOUR : ChannelUnit.KILOMETRE_PER_HOUR;
            default -> kind.unit();
        };
    }
}
