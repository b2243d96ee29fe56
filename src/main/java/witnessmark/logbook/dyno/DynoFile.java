package witnessmark.logbook.dyno;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.AirPressure;
import witnessmark.domain.Coded;
import witnessmark.domain.CorrectionKind;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.DynoFigures;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.domain.StartKnown;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.TemperatureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedAirPressure;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.study.dyno.DynoSheets;
import witnessmark.study.result.DynoAnswer;

/**
 * One dyno sheet from a text file, with no logbook: lines {@code name = figure} for how it corrects and the air of the cell,
 * then the pulls as on a dyno sheet. Names: correction, figures, factor, pressure (with {@code dry} behind it where it is
 * that of dry air), air, humidity. What stands behind a {@code #} is a remark.
 */
public final class DynoFile {
    private static final Pattern NAMED = Pattern.compile("\\s*([A-Za-z ]+?)\\s*=\\s*(.*)");
    /** Tenths of a percent: less is a share that was meant as one, as 0.45 is. */
    private static final int LEAST_HUMIDITY = 10;

    private static final Id<DynoSheet> SHEET = new Id<>(new UUID(0, 0));
    private static final Id<Run> RUN = new Id<>(new UUID(0, 0));

    private final List<Problem> unread = new ArrayList<>();
    private final Map<String, String> named = new HashMap<>();
    private final Map<String, Integer> lines = new HashMap<>();

    private DynoFile() {}

    /**
     * What the lines come to.
     *
     * @param answer the sheet worked out, held against no other; empty when no point was understood
     * @param problems of the lines, each with its number; nothing of one that was not understood counts
     * @param asked whether a line asks for a correction, known or not
     */
    public record Read(Optional<DynoAnswer> answer, List<Problem> problems, boolean asked) {
        /** Whether it is corrected as a line asks for; so too where none does. */
        public boolean asAsked() {
            return !asked || answer.isEmpty() || answer.get().factor().corrects();
        }

        /** Whether the correction that a line asks for is none of those that are known. */
        public boolean asksUnknown() {
            return asked && answer.isPresent() && answer.get().sheet().fact().correction() == CorrectionKind.NONE;
        }
    }

    public static Read of(List<String> all) {
        DynoFile file = new DynoFile();
        StringBuilder pulls = new StringBuilder();
        for (int i = 0; i < all.size(); i++) {
            String text = all.get(i).replaceFirst("#.*", "");
            Matcher line = NAMED.matcher(text);
            boolean head = line.matches();
            if (head) {
                file.head(
                        i + 1,
                        text.strip(),
                        line.group(1).toLowerCase(Locale.ROOT),
                        line.group(2).strip());
            }
            // A remark or a name leaves its line empty, so that problems keep the number an editor shows.
            pulls.append(head ? "" : text).append('\n');
        }
        DynoSheet sheet = file.sheet();
        PullText.Read read = PullText.read(pulls.toString(), SHEET);
        Optional<DynoAnswer> answer = read.points().isEmpty()
                ? Optional.empty()
                : Optional.of(DynoSheets.alone(entry(SHEET, sheet), entry(RUN, run()), read.points()));
        List<Problem> problems = new ArrayList<>(file.unread);
        problems.sort(Comparator.comparing(problem -> (Integer) problem.facts().get(0)));
        problems.addAll(read.problems());
        return new Read(answer, List.copyOf(problems), file.asks());
    }

    private void head(int number, String text, String name, String figure) {
        switch (name) {
            case "correction", "figures", "factor", "pressure", "air", "humidity" -> {
                named.put(name, figure);
                lines.put(name, number);
            }
            default -> unread.add(Problem.of(ProblemKind.DYNO_LINE_UNREAD, number, text, "pressure = 98.2 kPa"));
        }
    }

    private boolean asks() {
        String correction = named.getOrDefault("correction", "");
        return !correction.isEmpty() && !correction.equalsIgnoreCase(CorrectionKind.NONE.code());
    }

    private DynoSheet sheet() {
        CorrectionKind correction =
                word(CorrectionKind.class, "correction", CorrectionKind.SAE_J1349, CorrectionKind.NONE);
        DynoFigures figures = word(DynoFigures.class, "figures", DynoFigures.OBSERVED, DynoFigures.OBSERVED);
        if (figures == DynoFigures.CORRECTED && correction == CorrectionKind.NONE) {
            unread("figures", "figures = observed");
            figures = DynoFigures.OBSERVED;
        }
        String air = named.getOrDefault("pressure", "");
        boolean dry = air.toLowerCase(Locale.ROOT).endsWith(" dry");
        named.replace("pressure", dry ? air.substring(0, air.length() - 4) : air);
        Pressure pressure = read("pressure", TypedAirPressure.read(named.getOrDefault("pressure", "")), "98.2 kPa");
        Temperature heat =
                read("air", TypedFigure.read(named.getOrDefault("air", ""), TemperatureUnit.CELSIUS), "22 °C");
        Long humidity = read("humidity", TypedFigure.parts(named.getOrDefault("humidity", ""), 1, "45 %", "%"), "45 %");
        Long factor = read("factor", TypedFigure.parts(named.getOrDefault("factor", ""), 6, "1.012"), "1.012");
        return new DynoSheet(
                RUN,
                "",
                figures,
                correction,
                whole(factor, 1, 10_000_000, "factor", "1.012"),
                pressure,
                dry ? AirPressure.DRY : AirPressure.TOTAL,
                heat,
                whole(humidity, LEAST_HUMIDITY, 1_000, "humidity", "45 %"),
                null,
                "",
                "",
                "",
                "",
                "",
                false,
                "",
                "");
    }

    private @Nullable Integer whole(@Nullable Long figure, long least, long most, String name, String example) {
        if (figure != null && (figure < least || figure > most)) {
            unread(name, name + " = " + example);
            return null;
        }
        return figure == null ? null : Integer.valueOf(figure.intValue());
    }

    private <T> @Nullable T read(String name, Typed<T> typed, String example) {
        if (named.getOrDefault(name, "").isEmpty()) {
            return null;
        }
        if (typed.only().isEmpty()) {
            unread(name, name + " = " + example);
        }
        return typed.only().orElse(null);
    }

    /**
     * @param unsaid where there is no such line
     * @param unread where what is said is none of the list: a figure by a rule that nobody asked for would be taken for one
     */
    private <E extends Enum<E> & Coded> E word(Class<E> list, String name, E unsaid, E unread) {
        String said = named.getOrDefault(name, "");
        for (E word : list.getEnumConstants()) {
            if (word.code().equalsIgnoreCase(said)) {
                return word;
            }
        }
        if (said.isEmpty()) {
            return unsaid;
        }
        unread(
                name,
                name + " = "
                        + Arrays.stream(list.getEnumConstants())
                                .map(Coded::code)
                                .collect(Collectors.joining(", ")));
        return unread;
    }

    private void unread(String name, String example) {
        unread.add(Problem.of(
                ProblemKind.DYNO_LINE_UNREAD,
                lines.getOrDefault(name, 0),
                name + " = " + named.getOrDefault(name, ""),
                example));
    }

    private static <F extends Fact> Entry<F> entry(Id<F> id, F fact) {
        return new Entry<>(id, fact, Standing.IN_FORCE, null, 1);
    }

    /** A sheet is of a run; of this one nothing is known and nothing asked. */
    private static Run run() {
        Moment start = Moment.endOf(LocalDate.EPOCH, ZoneOffset.UTC);
        return new Run(
                new Id<>(new UUID(0, 0)),
                null,
                null,
                null,
                RunKind.DYNO,
                "",
                start,
                StartKnown.ESTIMATE,
                null,
                null,
                RunningTime.ofMinutes(BigDecimal.ONE),
                KnownBy.all(HowKnown.TIMED),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                DriverAsked.NOT_ASKED,
                "",
                "",
                "",
                null);
    }
}
