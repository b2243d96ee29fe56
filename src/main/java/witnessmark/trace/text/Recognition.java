package witnessmark.trace.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceForm;

/** Understands the beginning of a trace. What can be read in two ways is asked. */
public final class Recognition {
    /** So much of a file's beginning is looked at, bytes. */
    public static final int HEAD = 1 << 17;

    private static final int SHOWN = 20;
    private static final int FEW = 20;

    private Recognition() {}

    /**
     * @param head the first bytes of a file, unpacked
     * @param length how many, up to {@link #HEAD}
     * @param whole whether that is all of the file
     * @return the likeliest form with its questions, or why it is no trace
     */
    public static Outcome<Recognised> of(byte[] head, int length, boolean whole) {
        return of(head, length, whole, true);
    }

    /**
     * The same where it was said how dates are read.
     *
     * @param dayFirst whether 03/04 is the third of April
     */
    public static Outcome<Recognised> of(byte[] head, int length, boolean whole, boolean dayFirst) {
        if (length - Encodings.mark(head, length) <= 0) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_EMPTY));
        }
        HeadLines lines = HeadLines.of(head, length, whole);
        if (Encodings.binary(lines.text())) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_NOT_TEXT));
        }
        if (lines.lines().isEmpty() && !whole) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_TOO_WIDE, TraceForm.MOST_COLUMNS));
        }
        Table table = Table.in(lines.lines());
        if (table == null) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_WITHOUT_FIGURES));
        }
        if (table.width() > TraceForm.MOST_COLUMNS) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_TOO_WIDE, TraceForm.MOST_COLUMNS));
        }
        return Outcome.worked(understood(lines, table, dayFirst));
    }

    private static Recognised understood(HeadLines lines, Table table, boolean dayFirst) {
        Marks marks = Marks.of(table);
        Headings headings = Headings.of(lines.lines(), table);
        TimeGuess time = new TimeGuess(table, headings, marks.decimal(), dayFirst);
        TimeBase base = time.base();
        List<Question> questions = new ArrayList<>(time.questions());
        if (marks.doubtful() != null) {
            questions.add(Question.of(Question.Kind.DECIMAL_MARK, -1, marks.doubtful()));
        }
        List<ColumnForm> columns = columns(headings, base, questions);
        TraceForm form = new TraceForm(
                lines.coding(),
                table.delimiter(),
                marks.decimal(),
                marks.thousands(),
                headings.comment(),
                table.first(),
                base,
                columns);
        for (int i = 0; i < columns.size(); i++) {
            askUnit(table, form, i).ifPresent(questions::add);
        }
        if (form.column(ChannelKind.ENGINE_SPEED) < 0) {
            questions.add(Question.of(Question.Kind.NO_ENGINE_SPEED, -1, headings.names()));
        }
        List<List<String>> shown = table.rows().stream()
                .limit(SHOWN)
                .map(row -> row.subList(0, table.width()))
                .toList();
        return new Recognised(form, questions, headings.said(), shown, time.begins());
    }

    private static List<ColumnForm> columns(Headings headings, TimeBase base, List<Question> questions) {
        List<ColumnForm> columns = new ArrayList<>();
        Map<ChannelKind, List<String>> claims = new EnumMap<>(ChannelKind.class);
        for (int i = 0; i < headings.names().size(); i++) {
            String heading = headings.names().get(i);
            boolean when = i == base.column() || i == base.dateColumn();
            ColumnForm column = when || !headings.named()
                    ? ColumnForm.other(heading)
                    : channel(heading, headings.units().get(i));
            if (!column.kind().oftenMany()) {
                List<String> claimed = claims.computeIfAbsent(column.kind(), kind -> new ArrayList<>());
                claimed.add(heading);
                column = claimed.size() > 1 ? column.as(ChannelKind.OTHER) : column;
            }
            columns.add(column);
        }
        claims.forEach((kind, claimed) -> {
            if (claimed.size() > 1 && matters(kind)) {
                questions.add(Question.of(Question.Kind.WHICH_CHANNEL, -1, kind, claimed));
            }
        });
        return columns;
    }

    /** Of these the first is as good as another. */
    private static boolean matters(ChannelKind kind) {
        return switch (kind) {
            case CAR_SPEED, LAP, DISTANCE, LAMBDA, BATTERY, GEAR -> false;
            default -> true;
        };
    }

    private static ColumnForm channel(String heading, String written) {
        Optional<ChannelUnit> said = UnitWords.unit(written);
        Optional<ChannelKind> known = Channels.of(heading);
        if (said.isEmpty()) {
            return known.map(kind -> ColumnForm.other(heading).as(kind)).orElseGet(() -> ColumnForm.other(heading));
        }
        ColumnForm other = new ColumnForm(heading, ChannelKind.OTHER, said.get(), ColumnForm.From.FILE);
        if (known.isEmpty()) {
            return other;
        }
        boolean fits = known.get().unit().measure() == said.get().measure();
        boolean turning = known.get() == ChannelKind.CAR_SPEED
                && said.get().measure() == ChannelUnit.Measure.ENGINE_SPEED
                && Channels.plain(heading).equals("speed");
        boolean number = said.get() == ChannelUnit.COUNT;
        if (turning) {
            return other.as(ChannelKind.ENGINE_SPEED);
        }
        // Raw volts of a sensor are no pressure.
        return fits || number || known.get().oftenMany() ? other.as(known.get()) : other;
    }

    private static Optional<Question> askUnit(Table table, TraceForm form, int column) {
        if (form.isTime(column)) {
            return Optional.empty();
        }
        double[] figures = table.column(column).stream()
                .mapToDouble(cell -> figure(cell, form.decimal()))
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        if (figures.length == 0) {
            return Optional.empty();
        }
        int out = Math.max(figures.length / FEW, figures.length > 2 ? 1 : 0);
        return Plausible.ask(
                column, form.columns().get(column), figures[out], figures[figures.length - 1 - out], false);
    }

    /** A cell as a number, whatever marks its thousands; NaN if it is none. */
    static double figure(String cell, char decimal) {
        for (char thousands : new char[] {decimal == ',' ? '.' : ',', ' ', '\''}) {
            byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
            Decimals decimals = new Decimals(decimal, thousands);
            if (decimals.read(bytes, 0, bytes.length)) {
                return decimals.value();
            }
        }
        return Double.NaN;
    }

    /** The headings of a form as a set of cells, to know them again in the midst of a file. */
    static boolean sameHeadings(TraceForm form, List<String> cells) {
        int same = 0;
        for (int i = 0; i < Math.min(cells.size(), form.columns().size()); i++) {
            String heading = UnitWords.apart(cells.get(i)).heading();
            same += !heading.isEmpty() && heading.equals(form.columns().get(i).heading()) ? 1 : 0;
        }
        return same * 2 > form.columns().size();
    }
}
