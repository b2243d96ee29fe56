package witnessmark.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.function.DoubleFunction;

/** An axis: what it measures, in what unit, and how its ticks read. */
public sealed interface Axis {
    /** Quantity and unit, ready to be read. */
    String title();

    /** How days read at ticks. */
    interface DayWords {
        /** {@code 5 Jul}. */
        String day(LocalDate day);

        /** {@code Jul 2026}. */
        String month(YearMonth month);
    }

    /**
     * Days; a place on it is milliseconds since 1970.
     *
     * @param title often empty: days speak for themselves
     * @param zone whose midnights
     * @param words how they read
     */
    record Days(String title, ZoneId zone, DayWords words) implements Axis {}

    /**
     * Figures.
     *
     * @param title quantity and unit
     * @param fromZero whether it starts at 0
     * @param words how a figure reads
     */
    record Figures(String title, boolean fromZero, DoubleFunction<String> words) implements Axis {}
}
