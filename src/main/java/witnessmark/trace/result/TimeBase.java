package witnessmark.trace.result;

import witnessmark.domain.Coded;

/**
 * Where the time of a sample is from.
 *
 * @param kind how it is written
 * @param column the column it stands in, from 0; −1 with {@link Kind#RATE}
 * @param dateColumn a column of dates beside one of clock times, or −1
 * @param dayFirst whether 03/04 is the third of April; of dates written with the year first it says nothing
 * @param rate samples a second with {@link Kind#RATE}, else 0
 */
public record TimeBase(Kind kind, int column, int dateColumn, boolean dayFirst, double rate) {

    /** How the time of a sample is written. */
    public enum Kind implements Coded {
        MICROSECONDS("us", 1),
        MILLISECONDS("ms", 1e3),
        SECONDS("s", 1e6),
        MINUTES("min", 60e6),
        HOURS("h", 3600e6),
        /** As spreadsheets count. */
        DAYS("d", 86_400e6),
        /** {@code 14:03:27.250}, or minutes and seconds. */
        CLOCK("clock", 0),
        /** A date and a clock time in one cell. */
        DATE_TIME("date and time", 0),
        /** Not written: so many samples a second. */
        RATE("rate", 0);

        private final String code;
        private final double micros;

        Kind(String code, double micros) {
            this.code = code;
            this.micros = micros;
        }

        @Override
        public String code() {
            return code;
        }

        /** Microseconds in one of this unit; 0 where the time is no plain number. */
        public double micros() {
            return micros;
        }

        public boolean number() {
            return micros > 0;
        }
    }

    /** The fastest a logger samples here, a second. */
    public static final double FASTEST = 100_000;

    public TimeBase {
        if ((kind == Kind.RATE) != (column < 0) || (kind == Kind.RATE && !(rate >= 0 && rate <= FASTEST))) {
            throw new IllegalArgumentException("time is in a column or comes of a rate");
        }
    }

    public static TimeBase in(Kind kind, int column) {
        return new TimeBase(kind, column, -1, true, 0);
    }

    /** So many samples a second; 0 when nobody said how many yet. */
    public static TimeBase at(double rate) {
        return new TimeBase(Kind.RATE, -1, -1, true, rate);
    }

    /** The same column read as another unit. */
    public TimeBase as(Kind other) {
        return new TimeBase(other, column, dateColumn, dayFirst, 0);
    }

    /** With days before months, or after. */
    public TimeBase dayFirst(boolean first) {
        return new TimeBase(kind, column, dateColumn, first, rate);
    }

    /** Whether a time can be given to every sample. */
    public boolean known() {
        return kind != Kind.RATE || rate > 0;
    }
}
