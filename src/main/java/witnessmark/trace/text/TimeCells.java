package witnessmark.trace.text;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import witnessmark.trace.result.TimeBase;

/**
 * Times as loggers write them, as microseconds. A clock without a date that passes midnight goes on into the next day; one
 * of minutes and seconds that passes the hour into the next hour.
 */
final class TimeCells {
    /** A cell that is no time. */
    static final long NONE = Long.MIN_VALUE;

    private static final long SECOND = 1_000_000;
    private static final long HOUR = 3600 * SECOND;
    private static final long DAY = 24 * HOUR;
    /** Later than this, a hundred years, no time is reckoned. */
    private static final double LATEST = 3.2e15;

    private static final int LONGEST = 48;

    private final TimeBase base;
    private long carried;
    private long last = NONE;

    TimeCells(TimeBase base) {
        this.base = base;
    }

    /** A plain number in the base's unit. */
    long number(double value) {
        double micros = value * base.kind().micros();
        return Math.abs(micros) <= LATEST ? Math.round(micros) : NONE;
    }

    /** A written time, with a date in the same cell or in another. */
    long written(String cell, String date) {
        if (cell.length() > LONGEST || date.length() > LONGEST) {
            return NONE;
        }
        if (base.kind() == TimeBase.Kind.DATE_TIME) {
            LocalDateTime at = dateTime(cell, base.dayFirst());
            return at == null ? NONE : micros(at);
        }
        Clock clock = Clock.read(cell);
        if (clock == null) {
            return NONE;
        }
        if (!date.isEmpty()) {
            LocalDate day = date(date, base.dayFirst());
            return day == null ? NONE : day.toEpochDay() * DAY + clock.micros;
        }
        return base.dateColumn() >= 0 ? NONE : onward(clock);
    }

    private long onward(Clock clock) {
        long turn = clock.hours ? DAY : HOUR;
        long micros = clock.micros + carried;
        if (last != NONE && last - micros > turn - turn / 24 && clock.micros < turn / 24) {
            carried += turn;
            micros += turn;
        }
        last = micros;
        return micros;
    }

    static long micros(LocalDateTime at) {
        return at.toLocalDate().toEpochDay() * DAY + at.toLocalTime().toNanoOfDay() / 1000;
    }

    /** A clock time within a day, or minutes and seconds. */
    private record Clock(long micros, boolean hours) {
        static @Nullable Clock read(String text) {
            String cell = text.strip();
            int mark = cell.lastIndexOf(' ');
            boolean evening = cell.regionMatches(true, mark + 1, "pm", 0, 2);
            boolean morning = cell.regionMatches(true, mark + 1, "am", 0, 2);
            if (mark > 0 && (evening || morning)) {
                cell = cell.substring(0, mark).strip();
            }
            if (cell.indexOf(':') < 0) {
                return null;
            }
            String[] parts = cell.split(":", -1);
            if (parts.length < 2 || parts.length > 3) {
                return null;
            }
            long seconds = 0;
            for (int i = 0; i < parts.length - 1; i++) {
                int part = whole(parts[i]);
                if (part < 0 || (i > 0 && part > 59)) {
                    return null;
                }
                seconds = seconds * 60 + part;
            }
            if (parts.length == 3 && (evening || morning)) {
                long hour = seconds / 60;
                seconds += hour == 12 ? (evening ? 0 : -720) : evening ? 720 : 0;
            }
            long micros = fraction(parts[parts.length - 1]);
            return micros < 0 ? null : new Clock(seconds * 60 * SECOND + micros, parts.length == 3);
        }

        private static int whole(String text) {
            if (text.isEmpty() || text.length() > 5) {
                return -1;
            }
            int value = 0;
            for (int i = 0; i < text.length(); i++) {
                int digit = text.charAt(i) - '0';
                if (digit < 0 || digit > 9) {
                    return -1;
                }
                value = value * 10 + digit;
            }
            return value;
        }

        /** Seconds with any fraction, to the nearest microsecond. */
        private static long fraction(String text) {
            int mark = Math.max(text.indexOf('.'), text.indexOf(','));
            int seconds = whole(mark < 0 ? text : text.substring(0, mark));
            if (seconds < 0 || seconds > 59) {
                return -1;
            }
            long micros = 0;
            int digits = mark < 0 ? 0 : text.length() - mark - 1;
            for (int i = 0; i < 7; i++) {
                int digit = i < digits ? text.charAt(mark + 1 + i) - '0' : 0;
                if (digit < 0 || digit > 9) {
                    return -1;
                }
                micros = i < 6 ? micros * 10 + digit : micros + (digit >= 5 ? 1 : 0);
            }
            return seconds * SECOND + micros;
        }
    }

    /** A day: year first, or day and month in either order, or with the month's place known because it is no day. */
    static @Nullable LocalDate date(String text, boolean dayFirst) {
        String cell = text.strip();
        int one = separator(cell, 0);
        int other = one < 0 ? -1 : separator(cell, one + 1);
        if (other < 0) {
            return null;
        }
        int first = Clock.whole(cell.substring(0, one).strip());
        int second = Clock.whole(cell.substring(one + 1, other).strip());
        int third = Clock.whole(cell.substring(other + 1).strip());
        if (first < 0 || second < 0 || third < 0) {
            return null;
        }
        if (one == 4) {
            return day(first, second, third);
        }
        int year = third < 100 ? 2000 + third : third;
        boolean dayThenMonth = second <= 12 && (first > 12 || dayFirst);
        return dayThenMonth ? day(year, second, first) : day(year, first, second);
    }

    private static int separator(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '-' || c == '/' || c == '.') {
                return i;
            }
        }
        return -1;
    }

    private static @Nullable LocalDate day(int year, int month, int day) {
        boolean there = year >= 1900 && year < 2200 && month >= 1 && month <= 12 && day >= 1;
        return there && day <= LocalDate.of(year, month, 1).lengthOfMonth() ? LocalDate.of(year, month, day) : null;
    }

    /** A day and a time in one text; a zone after it is passed over, since only differences count. */
    static @Nullable LocalDateTime dateTime(String text, boolean dayFirst) {
        String cell = text.strip();
        int split = cell.indexOf('T');
        split = split < 0 ? cell.indexOf(' ') : split;
        if (split <= 0) {
            return null;
        }
        LocalDate day = date(cell.substring(0, split), dayFirst);
        String rest = cell.substring(split + 1).strip();
        int zone = rest.indexOf('Z') >= 0 ? rest.indexOf('Z') : Math.max(rest.indexOf('+'), rest.lastIndexOf('-'));
        Clock clock = Clock.read(zone > 0 ? rest.substring(0, zone) : rest);
        if (day == null || clock == null || !clock.hours || clock.micros >= DAY) {
            return null;
        }
        return day.atStartOfDay().plusNanos(clock.micros * 1000);
    }

    /** Whether a text is a clock time. */
    static boolean isClock(String text) {
        return text.length() <= LONGEST && Clock.read(text) != null;
    }
}
