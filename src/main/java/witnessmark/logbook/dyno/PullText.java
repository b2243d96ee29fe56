package witnessmark.logbook.dyno;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Id;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.study.result.PullColumn;

/**
 * Reads the pulls of a dyno sheet, a line for each speed: {@code 4000 171.0}, or what a spreadsheet gives, parted by tabs,
 * semicolons or spaces, with decimal points or commas. A heading says what the columns are ({@link PullHeading}); without one
 * they are rpm, N·m, lambda, oil in bar, oil and water in °C, then the exhausts, with kW third where the third column is
 * the power of the first two. A blank line, or one that says {@code pull 2}, begins the next pull.
 */
public final class PullText {
    static final String EXAMPLE = "4000 171.0";

    /** Power and torque of one line that are further apart than this contradict each other. */
    private static final BigDecimal APART = new BigDecimal("0.015");

    /** Of torque in N·m, power in kW and speed in rpm: T = 60 000·P / (2π·n). */
    private static final BigDecimal PER_KILOWATT = BigDecimal.valueOf(60_000 / (2 * Math.PI));

    private static final Pattern NEXT_PULL =
            Pattern.compile("(?i)(?:pull|sweep|run)\\s*(?:no\\.?|#)?\\s*(\\d{1,3})?\\s*:?");
    private static final Pattern LETTERS = Pattern.compile("[\\p{L}°λ].*|.*\\p{L}{2}.*", Pattern.DOTALL);
    private static final Pattern NOT_READ = Pattern.compile("[-–—−]|n/?a|", Pattern.CASE_INSENSITIVE);

    private final Id<DynoSheet> sheet;
    private final List<Line> lines = new ArrayList<>();
    private final List<String> notTaken = new ArrayList<>();
    private final Map<Integer, Map<Integer, Integer>> seen = new HashMap<>();
    private @Nullable PullHeading heading;
    private boolean headed;
    private boolean fromPower;
    private int pull = 1;

    /** Whether the next speed begins a pull: one has come to its end. */
    private boolean ended;

    private PullText(Id<DynoSheet> sheet) {
        this.sheet = sheet;
    }

    /**
     * A line as it was understood: a point, or a problem, or neither where it only parts pulls or names columns. A query
     * leaves the point beside it.
     *
     * @param number as counted from 1
     */
    public record Line(
            int number, @Nullable DynoPoint point, @Nullable Problem problem) {}

    /**
     * A text as it was understood.
     *
     * @param lines every line of it
     * @param columns what its columns were taken for, in order; empty without a line of figures
     * @param headed whether a heading said so
     * @param fromPower whether torque was worked out from power
     * @param notTaken headings of columns that are left out
     */
    public record Read(
            List<Line> lines, List<PullColumn> columns, boolean headed, boolean fromPower, List<String> notTaken) {
        public Read {
            lines = List.copyOf(lines);
            columns = List.copyOf(columns);
            notTaken = List.copyOf(notTaken);
        }

        public List<DynoPoint> points() {
            return lines.stream().map(Line::point).flatMap(Stream::ofNullable).toList();
        }

        /** What is wrong, line by line; what stops first. */
        public List<Problem> problems() {
            List<Problem> all = lines.stream()
                    .map(Line::problem)
                    .flatMap(Stream::ofNullable)
                    .toList();
            return Stream.concat(
                            all.stream().filter(Problem::stops), all.stream().filter(problem -> !problem.stops()))
                    .toList();
        }
    }

    /**
     * Reads a whole text.
     *
     * @param sheet whose points they become
     */
    public static Read read(String text, Id<DynoSheet> sheet) {
        PullText in = new PullText(sheet);
        String[] all = text.split("\\R", -1);
        for (int i = 0; i < all.length; i++) {
            in.line(i + 1, all[i].replace('\u00A0', ' ').replace('\u2009', ' ').replace('\u202F', ' '), all);
        }
        PullHeading last = in.heading;
        List<PullColumn> columns = last == null
                ? List.of()
                : last.columns().stream()
                        .flatMap(Stream::ofNullable)
                        .map(PullHeading.Column::of)
                        .toList();
        return new Read(
                in.lines,
                columns,
                in.headed,
                in.fromPower,
                in.notTaken.stream().distinct().toList());
    }

    private void line(int number, String text, String[] all) {
        if (text.isBlank()) {
            ended = true;
            lines.add(new Line(number, null, null));
            return;
        }
        Matcher next = NEXT_PULL.matcher(text.strip());
        if (next.matches()) {
            begin(next.group(1));
            lines.add(new Line(number, null, null));
            return;
        }
        List<String> cells = cells(text);
        if (LETTERS.matcher(cells.get(0)).matches()) {
            lines.add(new Line(number, null, heading(number, text)));
            return;
        }
        if (heading == null) {
            heading = PullHeading.without(cells.size(), powerThird(all));
        }
        lines.add(point(number, text.strip(), cells, heading));
    }

    /** Pulls that say their number keep it, so that one left out stays missing. */
    private void begin(@Nullable String number) {
        int said = number == null ? 0 : Integer.parseInt(number);
        pull = said > 0 ? said : seen.containsKey(pull) ? pull + 1 : pull;
        ended = false;
    }

    private @Nullable Problem heading(int number, String text) {
        PullHeading read = PullHeading.of(text);
        headed = true;
        heading = read;
        notTaken.addAll(read.unknown());
        if (read.tellsTorque()) {
            return null;
        }
        return read.has(PullColumn.SPEED) || read.has(PullColumn.TORQUE) || read.has(PullColumn.POWER)
                ? Problem.of(ProblemKind.DYNO_NO_TORQUE, number)
                : Problem.of(ProblemKind.DYNO_LINE_UNREAD, number, text.strip(), EXAMPLE);
    }

    /** Tabs or semicolons part cells where there are any; else blanks, or commas where points stand before decimals. */
    private static List<String> cells(String text) {
        if (text.indexOf('\t') >= 0) {
            return parted(text, "\t");
        }
        if (text.indexOf(';') >= 0) {
            return parted(text, ";");
        }
        String plain = text.strip();
        boolean commas = plain.indexOf(',') >= 0 && (plain.indexOf('.') >= 0 || plain.contains(", "));
        return parted(plain, commas ? "," : "\\s+");
    }

    private static List<String> parted(String text, String by) {
        return Stream.of(text.split(by, -1)).map(String::strip).toList();
    }

    private Line point(int number, String text, List<String> cells, PullHeading columns) {
        List<String> figures = trimmed(cells, columns.columns().size());
        if (figures.size() != columns.columns().size()) {
            return wrong(
                    number,
                    ProblemKind.DYNO_LINE_WIDTH,
                    figures.size(),
                    columns.columns().size());
        }
        PullLine line = new PullLine();
        for (int i = 0; i < figures.size(); i++) {
            PullHeading.Column column = columns.columns().get(i);
            String cell = figures.get(i);
            if (column == null || NOT_READ.matcher(cell).matches()) {
                continue;
            }
            Optional<BigDecimal> figure = figure(column.of(), cell);
            if (figure.isEmpty()) {
                return wrong(number, ProblemKind.DYNO_LINE_UNREAD, text, EXAMPLE);
            }
            BigDecimal own = column.unit().own(figure.get());
            if (!column.of().holds(own)) {
                return wrong(
                        number,
                        ProblemKind.DYNO_OUT_OF_RANGE,
                        column.of(),
                        shown(own),
                        column.of().low(),
                        column.of().high());
            }
            line.put(column, own);
        }
        return finished(number, text, line);
    }

    private Line finished(int number, String text, PullLine line) {
        BigDecimal speed = line.figure(PullColumn.SPEED);
        BigDecimal torque = line.figure(PullColumn.TORQUE);
        BigDecimal power = line.figure(PullColumn.POWER);
        BigDecimal made = torque != null || power == null || speed == null
                ? torque
                : power.multiply(PER_KILOWATT).divide(speed, MathContext.DECIMAL64);
        if (speed == null || made == null) {
            return wrong(number, ProblemKind.DYNO_LINE_UNREAD, text, EXAMPLE);
        }
        int rpm = speed.setScale(0, RoundingMode.HALF_UP).intValueExact();
        if (ended && !seen.getOrDefault(pull, Map.of()).isEmpty()) {
            pull++;
        }
        ended = false;
        Integer before = seen.computeIfAbsent(pull, each -> new HashMap<>()).putIfAbsent(rpm, number);
        if (before != null) {
            return wrong(number, ProblemKind.DYNO_SPEED_TWICE, rpm, before);
        }
        fromPower |= torque == null;
        Problem query = torque == null || power == null ? null : contradicts(number, speed, torque, power);
        return PullColumn.TORQUE.holds(made)
                ? new Line(number, line.point(sheet, pull, rpm, made), query)
                : wrong(
                        number,
                        ProblemKind.DYNO_OUT_OF_RANGE,
                        PullColumn.TORQUE,
                        shown(made),
                        PullColumn.TORQUE.low(),
                        PullColumn.TORQUE.high());
    }

    private static @Nullable Problem contradicts(int number, BigDecimal speed, BigDecimal torque, BigDecimal power) {
        BigDecimal own = torque.multiply(speed).divide(PER_KILOWATT, 1, RoundingMode.HALF_UP);
        BigDecimal apart = own.subtract(power).abs();
        boolean alike = apart.compareTo(power.max(own).multiply(APART)) <= 0 || apart.compareTo(BigDecimal.ONE) < 0;
        return alike ? null : Problem.of(ProblemKind.DYNO_POWER_OTHERWISE, number, shown(power), own);
    }

    /** Whether in every line of figures the third is the power of the first two. */
    private static boolean powerThird(String[] all) {
        boolean any = false;
        for (String text : all) {
            List<BigDecimal> first = cells(text).stream()
                    .limit(3)
                    .flatMap(cell -> TypedFigure.decimal(cell).only().stream())
                    .toList();
            if (first.size() == 3) {
                BigDecimal power = first.get(0).multiply(first.get(1)).divide(PER_KILOWATT, MathContext.DECIMAL64);
                any = true;
                if (power.subtract(first.get(2)).abs().compareTo(power.multiply(APART)) > 0) {
                    return false;
                }
            }
        }
        return any;
    }

    /** A spreadsheet ends rows with empty cells. */
    private static List<String> trimmed(List<String> cells, int columns) {
        int end = cells.size();
        while (end > columns && cells.get(end - 1).isEmpty()) {
            end--;
        }
        return cells.subList(0, end);
    }

    /** A speed may have its thousands apart; a temperature may lie below nothing. */
    private static Optional<BigDecimal> figure(PullColumn of, String cell) {
        if (of == PullColumn.SPEED) {
            Optional<BigDecimal> whole =
                    TypedFigure.engineSpeed(cell).only().map(speed -> BigDecimal.valueOf(speed.rpm()));
            return whole.isPresent() ? whole : TypedFigure.decimal(cell).only();
        }
        boolean below = cell.startsWith("-") || cell.startsWith("−");
        return TypedFigure.decimal(below ? cell.substring(1) : cell)
                .only()
                .map(figure -> below ? figure.negate() : figure);
    }

    private static BigDecimal shown(BigDecimal figure) {
        BigDecimal short_ = figure.setScale(Math.min(2, Math.max(0, figure.scale())), RoundingMode.HALF_UP);
        return new BigDecimal(short_.stripTrailingZeros().toPlainString());
    }

    private static Line wrong(int number, ProblemKind kind, Object... facts) {
        Object[] all =
                Stream.concat(Stream.of((Object) number), Stream.of(facts)).toArray();
        return new Line(number, null, Problem.of(kind, all));
    }
}
