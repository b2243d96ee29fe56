package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/** What asks for work whatever the hours. */
public enum TriggerKind implements Coded {
    /** The engine was turned faster than the figure, rpm. */
    SPEED_ABOVE("speed above", Figure.RPM),
    /** Its water was hotter than the figure, millikelvin. */
    WATER_ABOVE("water above", Figure.MILLIKELVIN),
    /** Its oil was hotter than the figure, millikelvin. */
    OIL_ABOVE("oil above", Figure.MILLIKELVIN),
    /** Its oil pressure hot and under load was less than the figure, pascals. */
    OIL_PRESSURE_BELOW("oil pressure below", Figure.PASCAL),
    /** Something was graded as bad as the grade, or worse. */
    GRADED("graded", null),
    /** A grade got worse twice running. */
    WORSE_TWICE("worse twice", null);

    /** What a trigger's figure is in. */
    public enum Figure {
        RPM,
        MILLIKELVIN,
        PASCAL
    }

    private final String code;
    private final @Nullable Figure figure;

    TriggerKind(String code, @Nullable Figure figure) {
        this.code = code;
        this.figure = figure;
    }

    @Override
    public String code() {
        return code;
    }

    /** The unit of its figure, or null when it is raised by grades. */
    public @Nullable Figure figure() {
        return figure;
    }
}
