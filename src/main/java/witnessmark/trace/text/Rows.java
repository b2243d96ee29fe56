package witnessmark.trace.text;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelUnit;
import witnessmark.trace.DefectLog;
import witnessmark.trace.packed.UpToTheCut;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceForm;

/** Rows of cells into samples: their time, their figures in the units of their channels, and what is wrong with them. */
final class Rows {
    private final RowScanner scanner;
    private final TraceForm form;
    private final TimeBase time;
    private final TimeCells times;
    private final Sequence sequence;
    private final DefectLog defects;
    private final Charset charset;
    private final byte[] comment;
    private final int width;
    private final double[] values;
    private final boolean[] converted;
    private final boolean[] figures;
    private final @Nullable Spread[] spreads;
    private final boolean[] when;
    private final List<Question> late = new ArrayList<>();
    private long row;
    private boolean cutOff;

    Rows(RowScanner scanner, TraceForm form, Sequence sequence, DefectLog defects) {
        this.scanner = scanner;
        this.form = form;
        this.time = form.time();
        this.times = new TimeCells(time);
        this.sequence = sequence;
        this.defects = defects;
        this.charset =
                form.coding().wide() ? StandardCharsets.UTF_8 : form.coding().charset();
        this.comment = form.comment().getBytes(charset);
        this.width = form.columns().size();
        this.values = new double[width];
        this.converted = new boolean[width];
        this.figures = new boolean[width];
        this.spreads = new Spread[width];
        this.when = new boolean[width];
        for (int i = 0; i < width; i++) {
            ColumnForm column = form.columns().get(i);
            converted[i] =
                    column.unit() != column.kind().unit() && !column.kind().oftenMany();
            when[i] = form.isTime(i);
            spreads[i] = when[i] || column.kind().oftenMany() ? null : new Spread(column);
        }
    }

    /**
     * Takes the row the scanner stands at.
     *
     * @param broken whether the text broke off, so that a row without its end may go on within its last figure
     */
    void take(boolean broken) throws IOException {
        if (broken && scanner.cut()) {
            wrong(DefectKind.CUT_OFF);
            return;
        }
        if (scanner.endless()) {
            wrong(DefectKind.UNREADABLE_ROW);
            return;
        }
        if (scanner.startsWith(comment)) {
            return;
        }
        long micros = time();
        if (micros == TimeCells.NONE) {
            wrong(withoutTime());
            return;
        }
        int cells = scanner.cells();
        if (cells < width) {
            if (scanner.cut()) {
                wrong(DefectKind.CUT_OFF);
                return;
            }
            defects.sample(DefectKind.SHORT_ROW, "", sequence.part(), sequence.within(micros), row);
        } else if (cells > width && more(cells)) {
            defects.sample(DefectKind.LONG_ROW, "", sequence.part(), sequence.within(micros), row);
        }
        figures(Math.min(cells, width), micros);
        sequence.add(micros, values, row);
        row++;
    }

    /** After the last row: what is wrong with the text as a whole. */
    void end(UpToTheCut text) {
        long until = sequence.lastWithin();
        if (text.isCut() && !cutOff) { // right after a row
            defects.whole(new Defect(DefectKind.CUT_OFF, "", sequence.part(), until, until, 0));
        }
        if (text.isSuspect()) {
            defects.whole(new Defect(DefectKind.CHECKSUM, "", sequence.part(), 0, until, 0));
        }
    }

    private void figures(int cells, long micros) {
        double[] found = scanner.values();
        byte[] kinds = scanner.kinds();
        for (int i = 0; i < cells; i++) {
            if (when[i]) {
                values[i] = Double.NaN;
            } else if (kinds[i] == RowScanner.NUMBER) {
                double figure = found[i];
                double value = converted[i] ? form.columns().get(i).reckoned(figure) : figure;
                values[i] = value;
                figures[i] = true;
                Spread spread = spreads[i];
                if (spread != null) {
                    spread.add(figure, value);
                }
            } else {
                values[i] = Double.NaN;
                noFigure(i, kinds[i], micros);
            }
        }
        for (int i = cells; i < width; i++) {
            values[i] = Double.NaN;
        }
    }

    private void noFigure(int column, byte kind, long micros) {
        if (kind == RowScanner.NO_NUMBER) {
            defects.sample(DefectKind.NOT_A_NUMBER, heading(column), sequence.part(), sequence.within(micros), row);
        } else if (kind == RowScanner.TEXT
                && (figures[column] || !form.columns().get(column).kind().oftenMany())) {
            // A column of words is none of figures.
            defects.sample(DefectKind.TEXT, heading(column), sequence.part(), sequence.within(micros), row);
        }
    }

    private String heading(int column) {
        return form.columns().get(column).heading();
    }

    private long time() {
        return switch (time.kind()) {
            case RATE -> anyFigure() ? Math.round(row * 1e6 / time.rate()) : TimeCells.NONE;
            case CLOCK, DATE_TIME ->
                scanner.kind(time.column()) == RowScanner.TEXT
                        ? times.written(
                                scanner.text(time.column(), charset),
                                time.dateColumn() < 0 ? "" : scanner.text(time.dateColumn(), charset))
                        : TimeCells.NONE;
            default ->
                scanner.kind(time.column()) == RowScanner.NUMBER
                        ? times.number(scanner.value(time.column()))
                        : TimeCells.NONE;
        };
    }

    private boolean anyFigure() {
        for (int i = 0; i < Math.min(width, scanner.cells()); i++) {
            if (scanner.kind(i) == RowScanner.NUMBER) {
                return true;
            }
        }
        return false;
    }

    private boolean more(int cells) {
        return cells > width + 1 || scanner.kind(width) != RowScanner.EMPTY;
    }

    private void wrong(DefectKind kind) {
        cutOff = kind == DefectKind.CUT_OFF;
        defects.sample(kind, "", sequence.part(), sequence.lastWithin(), row);
        row += time.kind() == TimeBase.Kind.RATE ? 0 : 1;
    }

    /** What a row is whose time cannot be read. */
    private DefectKind withoutTime() {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < Math.min(width, scanner.cells()); i++) {
            cells.add(scanner.text(i, charset));
        }
        if (Recognition.sameHeadings(form, cells)) {
            return DefectKind.REPEATED_HEADING;
        }
        long units = cells.stream().filter(UnitWords::any).count();
        if (cells.stream().anyMatch(UnitWords::says) && units * 3 >= cells.size() * 2L) {
            units(cells);
            return DefectKind.UNITS_ROW;
        }
        return scanner.cut() ? DefectKind.CUT_OFF : DefectKind.UNREADABLE_ROW;
    }

    /** A row of units that comes late may say that another unit was taken. */
    private void units(List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            ColumnForm column = form.columns().get(i);
            Optional<ChannelUnit> unit = UnitWords.unit(cells.get(i));
            boolean other = unit.isPresent()
                    && unit.get() != column.unit()
                    && unit.get().measure() == column.unit().measure();
            int at = i;
            Spread spread = spreads[i];
            if (other && spread != null && !column.stated() && late.stream().noneMatch(asked -> asked.column() == at)) {
                late.add(Question.of(
                        Question.Kind.UNIT,
                        i,
                        column.heading(),
                        column.kind(),
                        column.unit(),
                        spread.low(),
                        spread.high(),
                        List.of(unit.get().code())));
            }
        }
    }

    /** What only the whole file asks. */
    List<Question> late() {
        for (int i = 0; i < width; i++) {
            int column = i;
            Spread spread = spreads[i];
            if (spread != null && late.stream().noneMatch(asked -> asked.column() == column)) {
                Plausible.ask(i, form.columns().get(i), spread.low(), spread.high(), true)
                        .ifPresent(late::add);
            }
        }
        return late;
    }

    /** The least and most of a channel, as the file has it, without the few beyond what is plausible. */
    private static final class Spread {
        private static final int FEW = 20;

        private final double edge;
        private final double floor;
        private double low = Double.POSITIVE_INFINITY;
        private double high = Double.NEGATIVE_INFINITY;
        private double beyond = Double.NEGATIVE_INFINITY;
        private double below = Double.POSITIVE_INFINITY;
        private long samples;
        private long over;
        private long under;

        Spread(ColumnForm column) {
            this.edge = column.kind().plausibleHigh();
            this.floor = column.kind().plausibleLow();
        }

        void add(double figure, double value) {
            samples++;
            if (value > edge) {
                over++;
                beyond = Math.max(beyond, figure);
            } else if (value < floor) {
                under++;
                below = Math.min(below, figure);
            } else {
                low = figure < low ? figure : low;
                high = figure > high ? figure : high;
            }
        }

        double low() {
            return under * FEW > samples || low > high ? Math.min(low, below) : low;
        }

        double high() {
            return over * FEW > samples || low > high ? Math.max(high, beyond) : high;
        }
    }
}
