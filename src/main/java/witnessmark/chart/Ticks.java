package witnessmark.chart;

import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Where the ticks of an axis stand: at round figures, or where days and months begin, and few of them. */
final class Ticks {
    /** Gridlines in one direction at the most. */
    static final int MOST = 6;

    private static final List<Period> STEPS = List.of(
            Period.ofDays(1),
            Period.ofDays(2),
            Period.ofDays(7),
            Period.ofDays(14),
            Period.ofMonths(1),
            Period.ofMonths(2),
            Period.ofMonths(3),
            Period.ofMonths(6),
            Period.ofYears(1),
            Period.ofYears(2),
            Period.ofYears(5),
            Period.ofYears(10),
            Period.ofYears(20),
            Period.ofYears(50));

    private Ticks() {}

    static List<Tick> of(Axis axis, double from, double to) {
        return axis instanceof Axis.Days days ? of(days, from, to) : of((Axis.Figures) axis, from, to);
    }

    private static List<Tick> of(Axis.Figures axis, double from, double to) {
        double step = step(to - from);
        List<Tick> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + step * 1e-9; i++) {
            ticks.add(new Tick(i * step, axis.words().apply(i * step)));
        }
        return ticks;
    }

    /** The least of 1, 2 or 5 times a power of ten that gives no more than {@link #MOST} gridlines over a span. */
    static double step(double span) {
        if (!(span > 0) || Double.isInfinite(span)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(span / MOST)));
        for (double digit : new double[] {1, 2, 5}) {
            if (span / (digit * power) <= MOST * (1 + 1e-9)) {
                return digit * power;
            }
        }
        return 10 * power;
    }

    private static List<Tick> of(Axis.Days axis, double from, double to) {
        LocalDate first = day(axis, from);
        LocalDate last = day(axis, to);
        for (Period step : STEPS) {
            if (count(first, last, step) <= MOST) {
                return of(axis, from, to, step);
            }
        }
        return of(axis, from, to, STEPS.get(STEPS.size() - 1));
    }

    private static List<Tick> of(Axis.Days axis, double from, double to, Period step) {
        List<Tick> ticks = new ArrayList<>();
        LocalDate last = day(axis, to);
        for (LocalDate day = begin(day(axis, from), step); !day.isAfter(last); day = day.plus(step)) {
            double at = day.atStartOfDay(axis.zone()).toInstant().toEpochMilli();
            if (at >= from && at <= to) {
                boolean month = step.getDays() == 0;
                ticks.add(new Tick(
                        at,
                        month
                                ? axis.words().month(YearMonth.from(day))
                                : axis.words().day(day)));
            }
        }
        return ticks;
    }

    private static long count(LocalDate first, LocalDate last, Period step) {
        long days = last.toEpochDay() - first.toEpochDay();
        double each = step.getDays() + step.toTotalMonths() * 30.4;
        return (long) Math.floor(days / each) + 1;
    }

    /** The last beginning of a step at or before a day: a Monday for weeks, a January for years. */
    private static LocalDate begin(LocalDate day, Period step) {
        if (step.getYears() > 0) {
            return LocalDate.of(Math.floorDiv(day.getYear(), step.getYears()) * step.getYears(), 1, 1);
        }
        if (step.getMonths() > 0) {
            int month = (day.getMonthValue() - 1) / step.getMonths() * step.getMonths() + 1;
            return LocalDate.of(day.getYear(), month, 1);
        }
        return step.getDays() % 7 == 0 ? day.minusDays(day.getDayOfWeek().getValue() - 1L) : day;
    }

    private static LocalDate day(Axis.Days axis, double at) {
        return java.time.Instant.ofEpochMilli((long) at).atZone(axis.zone()).toLocalDate();
    }
}
