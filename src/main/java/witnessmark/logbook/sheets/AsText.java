package witnessmark.logbook.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.ReadingKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.Unit;

/** What stands in a field for a value that is written: a text that the field reads, in the unit it shows. */
final class AsText {
    private static final int MOST_DECIMALS = 6;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final BigDecimal HOUR = BigDecimal.valueOf(3_600_000);
    private static final BigDecimal MINUTE = BigDecimal.valueOf(60_000);
    private static final BigDecimal SECOND = BigDecimal.valueOf(1_000);

    private AsText() {}

    /** A measure in a unit, with as many decimals as it needs. */
    static <Q> String figure(Unit<Q> unit, @Nullable Q quantity) {
        if (quantity == null) {
            return "";
        }
        for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
            BigDecimal figure = unit.in(quantity, decimals);
            if (unit.of(figure).equals(quantity)) {
                return figure.toPlainString();
            }
        }
        return unit.in(quantity, MOST_DECIMALS).toPlainString();
    }

    /** A time in a field of hours: in hours where they come out even, else in minutes or seconds. */
    static String hours(@Nullable RunningTime time) {
        if (time == null) {
            return "";
        }
        String hours = even(time, HOUR, 3);
        return hours.isEmpty() ? minutes(time) : hours;
    }

    /** A time in minutes where they come out even, else in seconds, with its unit. */
    static String minutes(@Nullable RunningTime time) {
        if (time == null) {
            return "";
        }
        String minutes = even(time, MINUTE, 1);
        return minutes.isEmpty() ? seconds(time) + " s" : minutes + " min";
    }

    static String seconds(@Nullable RunningTime time) {
        return time == null ? "" : even(time, SECOND, 3);
    }

    private static String even(RunningTime time, BigDecimal unit, int decimals) {
        BigDecimal exact = BigDecimal.valueOf(time.millis());
        BigDecimal figure = exact.divide(unit, decimals, RoundingMode.HALF_UP);
        if (figure.multiply(unit).compareTo(exact) != 0) {
            return "";
        }
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }

    /** An amount of a counter in the unit its field asks for. */
    static String amount(Counter counter, long amount, SheetUnits units) {
        return switch (counter.unit()) {
            case MILLISECOND -> hours(new RunningTime(amount));
            case METRE -> figure(units.distance(), new Distance(amount));
            case COUNT, DAY -> Long.toString(amount);
        };
    }

    /** The figure of a reading in the unit its field asks for. */
    static String reading(ReadingKind.Unit unit, @Nullable Long value, SheetUnits units) {
        if (value == null) {
            return "";
        }
        return switch (unit) {
            case PASCAL -> figure(units.pressure(), new Pressure(value));
            case NANOMETRE -> figure(units.length(), new Length(value));
            case HUNDREDTH_OF_PERCENT -> parts(value, 2);
            case MILLINEWTON, MILLIGRAM_PER_TONNE -> parts(value, 3);
            case TENTH_OF_BRINELL -> parts(value, 1);
            case GRADE -> "";
        };
    }

    /** A share of hundredths of a percent, in percent. */
    static String percent(@Nullable Integer hundredths) {
        return hundredths == null ? "" : parts(hundredths, 2);
    }

    private static String parts(long value, int decimals) {
        BigDecimal figure = BigDecimal.valueOf(value, decimals);
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }

    static String clock(@Nullable LocalTime time) {
        return time == null ? "" : CLOCK.format(time);
    }

    /** The time of a moment; empty when only its day was given. */
    static String clock(@Nullable Moment moment) {
        return moment == null || moment.dayOnly()
                ? ""
                : clock(moment.wallClock().toLocalTime());
    }

    static String day(@Nullable Moment moment) {
        return moment == null ? "" : moment.day().toString();
    }

    static String yes(boolean yes) {
        return (yes ? SheetWord.YES : SheetWord.NO).key();
    }

    /** A word of a closed list under its code; empty for none. */
    static String code(@Nullable Coded word) {
        return word == null ? "" : word.code();
    }

    /** Words of a closed list under their codes, with commas between. */
    static String codes(List<? extends Coded> words) {
        return String.join(", ", words.stream().map(Coded::code).toList());
    }
}
