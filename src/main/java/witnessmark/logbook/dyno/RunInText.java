package witnessmark.logbook.dyno;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.RunInStep;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedTime;
import witnessmark.study.result.PullColumn;

/**
 * Reads the steps of running in, a line for each: how long, at or up to which speed, at which share of full load, and what
 * was done, as in {@code 10 min 3000 rpm 30 % cam bedded in}. Only how long has to be there; a bare figure is minutes.
 */
public final class RunInText {
    static final String EXAMPLE = "10 min 3000 rpm 30 % cam bedded in";

    /** A bare figure is minutes only where a speed or nothing follows: before a word it may be anything. */
    private static final Pattern LASTED = Pattern.compile(
            "(\\d+(?:[.,]\\d+)?(?: ?(?:h|min|m|s)\\b(?: ?\\d+ ?(?:min|m|s)\\b)?|(?= +\\d)|$)"
                    + "|\\d+h\\d+(?:m|min)?)(?:[ ,;:]+|$)(.*)",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern SPEED = Pattern.compile(
            "(?:(?:at|up to|to) )?(?:(\\d[\\d ]*) ?(?:-|–|to) ?)?(\\d[\\d ]*) ?(?:rpm|r/min|1/min)(?:[ ,;:]+|$)(.*)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LOAD = Pattern.compile(
            "(?:at )?(\\d{1,3}(?:[.,]\\d)?) ?%(?: (?:of full load|of load|load))?(?:[ ,;:]+|$)(.*)",
            Pattern.CASE_INSENSITIVE);

    private RunInText() {}

    /**
     * A line as it was understood: a step, or a problem; both null for an empty line.
     *
     * @param number as counted from 1
     */
    public record Line(
            int number, @Nullable RunInStep step, @Nullable Problem problem) {}

    /** Every line of a text; steps are counted in their order. */
    public static List<Line> read(String text, Id<Run> run) {
        List<Line> lines = new ArrayList<>();
        int number = 0;
        int step = 1;
        for (String line : text.split("\\R", -1)) {
            number++;
            Line read = line(number, step, line.strip().replaceAll("[ \\t\\u00A0\\u2009]+", " "), run);
            step += read.step() == null ? 0 : 1;
            lines.add(read);
        }
        return lines;
    }

    public static List<RunInStep> steps(List<Line> lines) {
        return lines.stream().map(Line::step).flatMap(Stream::ofNullable).toList();
    }

    private static Line line(int number, int step, String text, Id<Run> run) {
        if (text.isEmpty()) {
            return new Line(number, null, null);
        }
        Matcher lasted = LASTED.matcher(text);
        RunningTime time = lasted.matches() ? time(lasted.group(1)) : null;
        if (time == null || time.millis() == 0) {
            return unread(number, text);
        }
        String rest = lasted.group(2);
        EngineSpeed speed = null;
        String from = "";
        Matcher said = SPEED.matcher(rest);
        if (said.matches()) {
            BigDecimal rpm = new BigDecimal(said.group(2).replace(" ", ""));
            if (rpm.compareTo(PullColumn.SPEED.high()) > 0 || rpm.signum() == 0) {
                return unread(number, text);
            }
            speed = new EngineSpeed(rpm.intValueExact());
            from = said.group(1) == null ? "" : "from " + said.group(1).strip() + " rpm";
            rest = said.group(3);
        }
        Integer load = null;
        Matcher share = LOAD.matcher(rest);
        if (share.matches()) {
            BigDecimal permille = new BigDecimal(share.group(1).replace(',', '.')).movePointRight(1);
            if (permille.compareTo(BigDecimal.valueOf(1_000)) > 0) {
                return unread(number, text);
            }
            load = permille.setScale(0, RoundingMode.HALF_UP).intValueExact();
            rest = share.group(2);
        }
        String words = Stream.of(from, rest.strip())
                .filter(each -> !each.isEmpty())
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        return new Line(number, new RunInStep(run, step, speed, load, time, words), null);
    }

    private static @Nullable RunningTime time(String text) {
        Typed<RunningTime> typed = TypedTime.read(text);
        return typed.only().orElse(null);
    }

    private static Line unread(int number, String text) {
        return new Line(number, null, Problem.of(ProblemKind.DYNO_LINE_UNREAD, number, text, EXAMPLE));
    }

    /** Steps as lines that read back exactly. */
    public static String text(List<RunInStep> steps) {
        StringJoiner lines = new StringJoiner("\n");
        for (RunInStep step : steps) {
            StringJoiner row = new StringJoiner(" ").add(lasted(step.lasted()));
            EngineSpeed speed = step.speed();
            if (speed != null) {
                row.add(speed.text() + " rpm");
            }
            Integer load = step.loadPermille();
            if (load != null) {
                row.add(plain(BigDecimal.valueOf(load, 1)) + " %");
            }
            lines.add(row.add(step.words()).toString().strip());
        }
        return lines.toString();
    }

    private static String lasted(RunningTime time) {
        return time.millis() % 60_000 == 0
                ? time.millis() / 60_000 + " min"
                : plain(BigDecimal.valueOf(time.millis(), 3)) + " s";
    }

    private static String plain(BigDecimal figure) {
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }
}
