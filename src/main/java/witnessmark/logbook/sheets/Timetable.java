package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.RunKind;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedDate;
import witnessmark.quantity.typed.TypedTime;

/**
 * One line of a timetable: name, day, time out, expected running, as in {@code P1 Sat 09:00 25 min}. The day may be left
 * out of an event of one day; time and running may be left out. {@code P}, {@code Q}, {@code R}, {@code T} and
 * {@code W} before a figure stand for practice, qualifying, race, test and warm-up; {@code Quali} is qualifying too.
 */
final class Timetable {
    static final String EXAMPLE = "P1 Sat 09:00 25 min";

    private static final String EXAMPLE_RUNNING = "25 min";

    private static final Pattern CLOCK = Pattern.compile("([01]?[0-9]|2[0-3])[:.]([0-5][0-9])");
    /** What may stand alone, without day and time: words and then perhaps a figure. */
    private static final Pattern NAME = Pattern.compile("(?i)(F?P|Q|R|T|W)[0-9]*|[\\p{L}-]+( [\\p{L}-]+)*( [0-9]+)?");

    /** What people call qualifying. */
    private static final Pattern QUALIFYING = Pattern.compile("(?i)\\bqual(i|y|is|ys|ies)?\\b");

    private static final Pattern SHORT = Pattern.compile("(?i)(F?P|Q|R|T|W)([0-9]*)");

    private final SheetField field;
    private final LocalDate first;
    private final LocalDate last;

    /** What a line says. */
    record Line(
            RunKind kind,
            String name,
            LocalDate day,
            @Nullable LocalTime out,
            @Nullable RunningTime expected) {}

    /** A line read, or what is wrong with it: one of the two. */
    record Read(@Nullable Line line, @Nullable Problem problem) {}

    Timetable(SheetField field, LocalDate first, LocalDate last) {
        this.field = field;
        this.first = first;
        this.last = last;
    }

    Read read(String text) {
        List<String> words = List.of(text.strip().split("\\s+"));
        int at = 0;
        Day day = null;
        while (at < words.size() && day == null && !isClock(words.get(at))) {
            day = at == 0 ? null : day(words, at);
            at += day == null ? 1 : 0;
        }
        String name = String.join(" ", words.subList(0, at));
        if (day != null) {
            at += day.words();
        } else if (!first.equals(last)) {
            return withoutDay(text);
        }
        LocalTime out = at < words.size() ? clock(words.get(at)) : null;
        at += out == null ? 0 : 1;
        boolean alone = day == null && out == null;
        if (name.isEmpty() || (alone && !NAME.matcher(name).matches())) {
            return unreadable(text);
        }
        LocalDate on = day == null ? first : day.day();
        if (on.isBefore(first) || on.isAfter(last)) {
            return new Read(null, Problem.of(ProblemKind.OUTSIDE_EVENT, text.strip(), on, first, last));
        }
        return expected(
                text,
                String.join(" ", words.subList(at, words.size())),
                new Line(kind(name), full(name), on, out, null));
    }

    private Read expected(String text, String rest, Line line) {
        if (rest.isEmpty()) {
            return new Read(line, null);
        }
        Typed<RunningTime> running = TypedTime.read(rest);
        if (running instanceof Typed.Two<RunningTime> two) {
            return new Read(null, Problem.of(ProblemKind.TWO_READINGS, field, rest, two.first(), two.second()));
        }
        Optional<RunningTime> read = running.only();
        if (read.isPresent() && read.get().millis() > 0) {
            return new Read(new Line(line.kind(), line.name(), line.day(), line.out(), read.get()), null);
        }
        Problem of = read.isPresent()
                ? Problem.of(ProblemKind.RUN_OF_NO_LENGTH, read.get())
                : Problem.unread(field, rest, EXAMPLE_RUNNING);
        return of.kind() == ProblemKind.CANNOT_READ ? unreadable(text) : new Read(null, of);
    }

    /** What would be a line at an event of one day lacks nothing but its day. */
    private Read withoutDay(String text) {
        return new Timetable(field, first, first).read(text).line() == null
                ? unreadable(text)
                : new Read(null, Problem.of(ProblemKind.LINE_WITHOUT_DAY, text.strip(), first, last, EXAMPLE));
    }

    private Read unreadable(String text) {
        return new Read(null, Problem.of(ProblemKind.CANNOT_READ, field, text.strip(), EXAMPLE));
    }

    /** A day, and how many words it took. */
    private record Day(LocalDate day, int words) {}

    /**
     * A day written at this word, over one, two or three of them: the first such day from the event's first on. Where
     * that is past its last the one before its first may be nearer, and is what was meant.
     */
    private @Nullable Day day(List<String> words, int at) {
        for (int take = Math.min(3, words.size() - at); take >= 1; take--) {
            String text = String.join(" ", words.subList(at, at + take));
            Optional<LocalDate> day =
                    TypedDate.readAhead(text, first, DayOrder.DAY_FIRST).only();
            if (day.isPresent()) {
                return new Day(nearest(day.get(), text), take);
            }
        }
        return null;
    }

    private LocalDate nearest(LocalDate ahead, String text) {
        if (!ahead.isAfter(last)) {
            return ahead;
        }
        return TypedDate.read(text, first, DayOrder.DAY_FIRST)
                .only()
                .filter(back -> ChronoUnit.DAYS.between(back, first) < ChronoUnit.DAYS.between(last, ahead))
                .orElse(ahead);
    }

    private static boolean isClock(String word) {
        return CLOCK.matcher(word).matches();
    }

    private static @Nullable LocalTime clock(String word) {
        Matcher form = CLOCK.matcher(word);
        return form.matches() ? LocalTime.of(Integer.parseInt(form.group(1)), Integer.parseInt(form.group(2))) : null;
    }

    /** {@code P1} in full: {@code Practice 1}. */
    static String full(String name) {
        Matcher form = SHORT.matcher(name);
        if (!form.matches()) {
            return name;
        }
        String code = kind(name).code();
        String word = code.substring(0, 1).toUpperCase(Locale.ROOT) + code.substring(1);
        return form.group(2).isEmpty() ? word : word + " " + form.group(2);
    }

    static RunKind kind(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        Matcher form = SHORT.matcher(name);
        if (form.matches()) {
            return switch (form.group(1).toLowerCase(Locale.ROOT)) {
                case "q" -> RunKind.QUALIFYING;
                case "r" -> RunKind.RACE;
                case "t" -> RunKind.TEST;
                case "w" -> RunKind.WARM_UP;
                default -> RunKind.PRACTICE;
            };
        }
        for (RunKind kind : RunKind.values()) {
            if (kind != RunKind.OTHER && plain.contains(kind.code())) {
                return kind;
            }
        }
        return QUALIFYING.matcher(name).find() ? RunKind.QUALIFYING : RunKind.OTHER;
    }
}
