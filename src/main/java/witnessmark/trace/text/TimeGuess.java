package witnessmark.trace.text;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.TimeBase;

/** Where the time of a row is from. */
final class TimeGuess {
    /** A clock that says an earlier year was not set; loggers begin at 1970, 1980 or 2000. Common practice, no source. */
    static final int EARLIEST_YEAR = 2005;

    private static final double SECONDS_FROM = 0.0005;
    private static final double RATES_ALIKE = 0.05;
    private static final Pattern RATE = Pattern.compile(
            "(sample|sampling|logging|log|data|acquisition|abtast|mess)? ?(rate|frequency|freq|frequenz|abtastrate|messrate"
                    + "|abtastfrequenz|frequence|hz)( hz)?|abtastrate|messrate|abtastfrequenz|samples per second"
                    + "|frequence d echantillonnage|frequenza( di campionamento)?|sample rate hz");
    private static final Pattern PERIOD = Pattern.compile(
            "(sample|sampling|logging|log|data)? ?(interval|period|step)( s| ms)?|abtastzeit|abtastintervall");
    private static final Pattern FIGURE = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*(\\p{L}*).*");

    private final Table table;
    private final Headings headings;
    private final char decimal;
    private final boolean taken;
    private final List<Question> questions = new ArrayList<>();
    private @Nullable LocalDateTime begins;

    /** @param taken whether 03/04 is taken as the third of April */
    TimeGuess(Table table, Headings headings, char decimal, boolean taken) {
        this.table = table;
        this.headings = headings;
        this.decimal = decimal;
        this.taken = taken;
    }

    List<Question> questions() {
        return questions;
    }

    @Nullable
    LocalDateTime begins() {
        return begins;
    }

    TimeBase base() {
        int date = dateColumn();
        int column = timeColumn(date);
        double stated = statedRate();
        if (column < 0) {
            if (stated <= 0) {
                questions.add(Question.of(Question.Kind.SAMPLE_RATE, -1));
            }
            beginsBySaid();
            return TimeBase.at(stated);
        }
        List<String> cells =
                table.column(column).stream().filter(cell -> !cell.isEmpty()).toList();
        if (cells.stream().allMatch(cell -> TimeCells.dateTime(cell, true) != null)) {
            return dated(TimeBase.Kind.DATE_TIME, column, -1, cells.get(0));
        }
        if (cells.stream().filter(TimeCells::isClock).count() * 2 > cells.size()) {
            if (date >= 0) {
                return dated(
                        TimeBase.Kind.CLOCK, column, date, table.column(date).get(0));
            }
            beginsBySaid();
            return TimeBase.in(TimeBase.Kind.CLOCK, column);
        }
        beginsBySaid();
        return numbered(column, cells, stated);
    }

    private TimeBase dated(TimeBase.Kind kind, int column, int date, String first) {
        boolean dayFirst = dayFirst(first, kind == TimeBase.Kind.DATE_TIME ? column : date);
        if (kind == TimeBase.Kind.DATE_TIME) {
            begins = TimeCells.dateTime(first, dayFirst);
        } else {
            LocalDate day = TimeCells.date(first, dayFirst);
            begins = day == null
                    ? null
                    : TimeCells.dateTime(day + " " + table.column(column).get(0), true);
        }
        clockSet();
        return new TimeBase(kind, column, date, dayFirst, 0);
    }

    private boolean dayFirst(String cell, int column) {
        LocalDate one = date(cell, true);
        LocalDate other = date(cell, false);
        if (one != null && !one.equals(other) && cell.indexOf('.') < 0) {
            questions.add(Question.of(Question.Kind.DAY_OR_MONTH, column, cell));
        }
        return taken;
    }

    private static @Nullable LocalDate date(String cell, boolean dayFirst) {
        LocalDateTime whole = TimeCells.dateTime(cell, dayFirst);
        return whole == null ? TimeCells.date(cell, dayFirst) : whole.toLocalDate();
    }

    private void beginsBySaid() {
        for (Map.Entry<String, String> line : headings.said().entrySet()) {
            String name = Channels.plain(line.getKey());
            if (!name.matches(".*\\b(date|datum|data|fecha|jour)\\b.*")) {
                continue;
            }
            LocalDateTime whole = TimeCells.dateTime(line.getValue(), taken);
            LocalDate day = TimeCells.date(line.getValue(), taken);
            if (whole == null && day != null) {
                whole = day.atStartOfDay();
                for (Map.Entry<String, String> other : headings.said().entrySet()) {
                    LocalDateTime at =
                            Channels.plain(other.getKey()).matches("(\\p{L}+ )?(time|uhrzeit|zeit|heure|ora|hora)")
                                    ? TimeCells.dateTime(day + " " + other.getValue(), true)
                                    : null;
                    whole = at == null ? whole : at;
                }
            }
            if (whole != null) {
                begins = whole;
                dayFirst(line.getValue(), -1);
                clockSet();
                return;
            }
        }
    }

    private void clockSet() {
        if (begins != null && begins.getYear() < EARLIEST_YEAR) {
            questions.add(Question.of(Question.Kind.CLOCK_NOT_SET, -1, begins.toLocalDate()));
        }
    }

    private TimeBase numbered(int column, List<String> cells, double stated) {
        double step = step(cells);
        String heading = headings.names().get(column);
        Optional<TimeBase.Kind> unit = UnitWords.time(headings.units().get(column))
                .or(() -> UnitWords.time(heading))
                .or(() -> lastWord(heading));
        TimeBase.Kind kind = unit.orElseGet(() -> bySteps(column, step, stated));
        double rate = step > 0 ? 1e6 / (step * kind.micros()) : 0;
        if (stated > 0 && rate > 0 && Math.abs(rate / stated - 1) > RATES_ALIKE) {
            questions.add(Question.of(
                    Question.Kind.RATE_SAYS_OTHERWISE, column, heading, Math.round(rate * 1000) / 1000.0, stated));
        }
        return TimeBase.in(kind, column);
    }

    private static Optional<TimeBase.Kind> lastWord(String heading) {
        String[] words = Channels.plain(heading).split(" ", -1);
        return words.length < 2 ? Optional.empty() : UnitWords.time(words[words.length - 1]);
    }

    private TimeBase.Kind bySteps(int column, double step, double stated) {
        if (step >= SECONDS_FROM && step < 1) {
            return TimeBase.Kind.SECONDS;
        }
        List<TimeBase.Kind> candidates = step >= 1
                ? List.of(TimeBase.Kind.MILLISECONDS, TimeBase.Kind.SECONDS, TimeBase.Kind.MICROSECONDS)
                : List.of(TimeBase.Kind.MINUTES, TimeBase.Kind.HOURS, TimeBase.Kind.DAYS, TimeBase.Kind.SECONDS);
        for (TimeBase.Kind kind : candidates) {
            if (stated > 0 && step > 0 && Math.abs(1e6 / (step * kind.micros()) / stated - 1) <= RATES_ALIKE) {
                return kind;
            }
        }
        questions.add(
                Question.of(Question.Kind.TIME_UNIT, column, headings.names().get(column), step, candidates));
        return step > 1 ? TimeBase.Kind.MILLISECONDS : TimeBase.Kind.SECONDS;
    }

    /** The usual step of a column of numbers; 0 when it does not rise. */
    private double step(List<String> cells) {
        double[] figures = cells.stream()
                .mapToDouble(this::figure)
                .filter(Double::isFinite)
                .toArray();
        double[] steps = new double[Math.max(figures.length - 1, 0)];
        int rising = 0;
        for (int i = 0; i < steps.length; i++) {
            double step = figures[i + 1] - figures[i];
            if (step > 0) {
                steps[rising++] = step;
            }
        }
        Arrays.sort(steps, 0, rising);
        return rising == 0 ? 0 : steps[rising / 2];
    }

    private double figure(String cell) {
        return Recognition.figure(cell, decimal);
    }

    private int dateColumn() {
        for (int i = 0; i < table.width(); i++) {
            boolean dates = table.column(i).stream().allMatch(cell -> TimeCells.date(cell, true) != null);
            if (dates) {
                return i;
            }
        }
        return -1;
    }

    /** By its heading, else by clock times, else a first column of unknown name whose figures rise evenly. */
    private int timeColumn(int date) {
        for (int i = 0; i < table.width(); i++) {
            if (i != date
                    && headings.named()
                    && Channels.isTime(headings.names().get(i))
                    && tells(i)) {
                return i;
            }
        }
        for (int i = 0; i < table.width(); i++) {
            List<String> cells = table.column(i);
            if (i != date && cells.stream().allMatch(Table::isTime)) {
                return i;
            }
        }
        boolean known = headings.named() && Channels.of(headings.names().get(0)).isPresent();
        boolean byUnit = UnitWords.time(headings.units().get(0)).isPresent();
        return table.width() > 1 && date != 0 && (byUnit || !known) && evenly(0) ? 0 : -1;
    }

    private boolean tells(int column) {
        List<String> cells = table.column(column);
        return cells.stream().filter(Table::isFigure).count() * 2 > cells.size();
    }

    private boolean evenly(int column) {
        double[] figures =
                table.column(column).stream().mapToDouble(this::figure).toArray();
        int rising = 0;
        for (int i = 1; i < figures.length; i++) {
            rising += figures[i] > figures[i - 1] ? 1 : 0;
        }
        return figures.length > 2 && rising * 10 >= (figures.length - 1) * 9;
    }

    /** Samples a second as a line above the headings states, or 0. */
    private double statedRate() {
        for (Map.Entry<String, String> line : headings.said().entrySet()) {
            String name = Channels.plain(line.getKey());
            boolean period = PERIOD.matcher(name).matches();
            Matcher figure = FIGURE.matcher(line.getValue());
            if ((!period && !RATE.matcher(name).matches()) || !figure.matches()) {
                continue;
            }
            double value = Double.parseDouble(figure.group(1).replace(',', '.'));
            String unit = Channels.plain(figure.group(2));
            double thousand = unit.equals("khz") ? 1e3 : 1;
            boolean millis = unit.equals("ms") || name.endsWith(" ms");
            double rate = period ? (millis ? 1000 : 1) / value : value * thousand;
            if (rate > 0 && rate <= TimeBase.FASTEST) {
                return rate;
            }
        }
        return 0;
    }
}
