package witnessmark.quantity.typed;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A day as people type it: {@code 5/12}, {@code 5.12.26}, {@code 5 Dec}, {@code Dec 5}, {@code Sat 5 Dec 2026},
 * {@code 2026-12-05}, {@code today}, {@code yesterday}, {@code tomorrow}, {@code sat}. Names are English and may be cut
 * to three letters. A year of two figures lies within twenty years from today, or before. What cannot be read comes with
 * today as the example, which any field of days takes.
 */
public final class TypedDate {
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final Pattern FIGURES =
            Pattern.compile("([0-9]{1,2})([./-])([0-9]{1,2})(?:\\2([0-9]{4}|[0-9]{2}))?(\\.?)");
    private static final Pattern YEAR_FIRST = Pattern.compile("([0-9]{4})([./-])([0-9]{1,2})\\2([0-9]{1,2})");
    private static final Pattern DAY_THEN_MONTH = Pattern.compile(
            "(?:([a-z]+),? )?([0-9]{1,2})(?:st|nd|rd|th)?+" + "[ -]?([a-z]+)\\.?(?:,? ?-?([0-9]{4}|[0-9]{2}))?");
    private static final Pattern MONTH_THEN_DAY =
            Pattern.compile("([a-z]+)\\.?[ -]?([0-9]{1,2})(?:st|nd|rd|th)?+(?:,? ([0-9]{4}|[0-9]{2}))?");
    private static final int SHORTEST_NAME = 3;
    private static final int YEARS_AHEAD = 20;
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;
    /** The longest wait for a 29 February: 1896 to 1904. */
    private static final int LEAP_WAIT = 8;

    private static final int SOON_DAYS = 31;

    private final DayOrder order;
    private final LocalDate today;
    private final int direction;

    private TypedDate(DayOrder order, LocalDate today, int direction) {
        this.order = order;
        this.today = today;
        this.direction = direction;
    }

    /**
     * Reads the day of something that has happened: without a year, the last such day up to today. One that comes within
     * the next month is that one: nobody means the day eleven months ago without saying so.
     *
     * @param text as typed
     * @param today the day taken for today
     * @param order what stands first in a date of figures
     */
    public static Typed<LocalDate> read(String text, LocalDate today, DayOrder order) {
        return new TypedDate(order, today, -1).typed(text);
    }

    /** Reads the day of something planned: without a year, the first such day from today on. */
    public static Typed<LocalDate> readAhead(String text, LocalDate today, DayOrder order) {
        return new TypedDate(order, today, 1).typed(text);
    }

    /** Whether it is the name of a day of the week and nothing else: which one is meant hangs on what it is the day of. */
    public static boolean isWeekday(String text) {
        String plain = Plain.of(text);
        return plain != null && named(DayOfWeek.values(), plain) != null;
    }

    private Typed<LocalDate> typed(String text) {
        String plain = Plain.of(text);
        LocalDate day = plain == null ? null : day(plain);
        return day == null || day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR
                ? new Typed.Unreadable<>(List.of(SHORT.format(today), today.toString()))
                : new Typed.Read<>(day, text);
    }

    private @Nullable LocalDate day(String plain) {
        switch (plain) {
            case "today":
                return today;
            case "yesterday":
                return today.minusDays(1);
            case "tomorrow":
                return today.plusDays(1);
            default:
                DayOfWeek weekday = named(DayOfWeek.values(), plain);
                return weekday != null ? nearest(weekday) : written(plain);
        }
    }

    private LocalDate nearest(DayOfWeek weekday) {
        return today.with(
                direction < 0 ? TemporalAdjusters.previousOrSame(weekday) : TemporalAdjusters.nextOrSame(weekday));
    }

    private @Nullable LocalDate written(String plain) {
        Matcher match = YEAR_FIRST.matcher(plain);
        if (match.matches()) {
            return of(match.group(4), Integer.parseInt(match.group(3)), match.group(1));
        }
        match = FIGURES.matcher(plain);
        if (match.matches()) {
            return figures(match);
        }
        match = DAY_THEN_MONTH.matcher(plain);
        if (match.matches()) {
            LocalDate day = of(match.group(2), month(match.group(3)), match.group(4));
            return agrees(day, match.group(1)) ? day : null;
        }
        match = MONTH_THEN_DAY.matcher(plain);
        return match.matches() ? of(match.group(2), month(match.group(1)), match.group(3)) : null;
    }

    private @Nullable LocalDate figures(Matcher match) {
        boolean stopAtEnd = !match.group(5).isEmpty();
        if (stopAtEnd && (!match.group(2).equals(".") || match.group(4) != null)) {
            return null;
        }
        boolean dayFirst = order == DayOrder.DAY_FIRST;
        String day = match.group(dayFirst ? 1 : 3);
        String month = match.group(dayFirst ? 3 : 1);
        return of(day, Integer.parseInt(month), match.group(4));
    }

    private static boolean agrees(@Nullable LocalDate day, @Nullable String weekday) {
        return day == null || weekday == null || day.getDayOfWeek() == named(DayOfWeek.values(), weekday);
    }

    private @Nullable LocalDate of(String dayFigures, int month, @Nullable String yearFigures) {
        int day = Integer.parseInt(dayFigures);
        if (month < 1 || month > 12 || day < 1) {
            return null;
        }
        if (yearFigures != null) {
            return inYear(year(yearFigures), month, day);
        }
        LocalDate soon = inYear(today.getYear() + (month < today.getMonthValue() ? 1 : 0), month, day);
        if (soon != null && soon.isAfter(today) && soon.isBefore(today.plusDays(SOON_DAYS))) {
            return soon;
        }
        for (int away = 0; away <= LEAP_WAIT; away++) {
            LocalDate there = inYear(today.getYear() + direction * away, month, day);
            if (there != null && there.compareTo(today) * direction >= 0) {
                return there;
            }
        }
        return null;
    }

    private static @Nullable LocalDate inYear(int year, int month, int day) {
        return day > YearMonth.of(year, month).lengthOfMonth() ? null : LocalDate.of(year, month, day);
    }

    private int year(String figures) {
        int year = Integer.parseInt(figures);
        if (figures.length() == 4) {
            return year;
        }
        int century = today.getYear() / 100 * 100;
        return century + year <= today.getYear() + YEARS_AHEAD ? century + year : century - 100 + year;
    }

    /** The month a name means, 1 to 12, or 0. */
    private static int month(String name) {
        Month month = named(Month.values(), name);
        return month == null ? 0 : month.getValue();
    }

    private static <E extends Enum<E>> @Nullable E named(E[] all, String name) {
        for (E each : all) {
            if (name.length() >= SHORTEST_NAME
                    && each.name().toLowerCase(Locale.ROOT).startsWith(name)) {
                return each;
            }
        }
        return null;
    }
}
