package witnessmark.trace.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.trace.DefectLog;
import witnessmark.trace.Layout;
import witnessmark.trace.SampleSink;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;

/**
 * Puts rows in the order of time. A few rows back in time are strays and left out; from the tenth that goes on from an
 * earlier time, time has begun anew. A row far ahead of those around it is a stray too. The first rows are held until
 * the usual step of each channel is known.
 */
final class Sequence {
    private static final int RESTART = 10;
    private static final int OPENING = 64;
    private static final int MOST_PARTS = 64;
    /** A row this far ahead of the one before, microseconds, is a stray if the next goes on from where time was. */
    private static final long FAR = 5_000_000;

    private static final int TIMES_FARTHER = 10;

    /** Time goes back so often that it is none. */
    static final class TooManyParts extends IOException {
        TooManyParts() {
            super("time");
        }
    }

    @SuppressWarnings("ArrayRecordComponent")
    private record Row(long micros, double[] values, long number) {}

    private final List<ColumnForm> columns;
    private final SampleSink sink;
    private final DefectLog defects;
    private @Nullable List<Row> opening = new ArrayList<>();
    private final List<Row> back = new ArrayList<>();
    private final List<Long> lasted = new ArrayList<>();
    private @Nullable Row held;
    private double[] spare;
    private boolean began;
    private long start;
    private long last;
    private long rows;
    private int part;

    Sequence(List<ColumnForm> columns, SampleSink sink, DefectLog defects) {
        this.columns = columns;
        this.sink = sink;
        this.defects = defects;
        this.spare = new double[columns.size()];
    }

    void add(long micros, double[] values, long number) throws IOException {
        if (held == null) {
            start = micros;
            hold(micros, values, number);
            return;
        }
        if (!back.isEmpty()) {
            goneBack(micros, values, number);
            return;
        }
        if (micros > held.micros) {
            emit(held);
            hold(micros, values, number);
        } else if (micros == held.micros) {
            same(held, values, number);
        } else if (began && aheadAlone(held, micros)) {
            stray(held);
            hold(micros, values, number);
        } else {
            back.add(new Row(micros, values.clone(), number));
        }
    }

    private boolean aheadAlone(Row far, long micros) {
        return micros > last && far.micros - last > FAR && (micros - last) * TIMES_FARTHER < far.micros - last;
    }

    private void goneBack(long micros, double[] values, long number) throws IOException {
        Row ahead = Objects.requireNonNull(held);
        Row before = back.get(back.size() - 1);
        if (micros > ahead.micros) {
            strays();
            emit(ahead);
            hold(micros, values, number);
        } else if (micros > before.micros) {
            back.add(new Row(micros, values.clone(), number));
            if (back.size() >= RESTART) {
                restart(ahead);
            }
        } else if (micros == before.micros) {
            defects.sample(DefectKind.DUPLICATE, "", part, within(micros), number);
        } else {
            strays();
            back.add(new Row(micros, values.clone(), number));
        }
    }

    private void restart(Row ahead) throws IOException {
        emit(ahead);
        open();
        lasted.add(last - start);
        if (lasted.size() >= MOST_PARTS) {
            throw new TooManyParts();
        }
        defects.whole(new Defect(DefectKind.RESTART, "", part, within(last), within(last), 1));
        sink.part();
        part++;
        start = back.get(0).micros;
        began = false;
        for (int i = 0; i < back.size() - 1; i++) {
            emit(back.get(i));
        }
        held = back.get(back.size() - 1);
        back.clear();
    }

    /** Two rows of one time: one sample if no channel is in both, else a duplicate. */
    private void same(Row row, double[] values, long number) {
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i]) && !Double.isNaN(row.values[i])) {
                defects.sample(DefectKind.DUPLICATE, "", part, within(row.micros), number);
                return;
            }
        }
        for (int i = 0; i < values.length; i++) {
            row.values[i] = Double.isNaN(values[i]) ? row.values[i] : values[i];
        }
    }

    private void strays() {
        back.forEach(this::stray);
        back.clear();
    }

    private void stray(Row row) {
        defects.sample(DefectKind.TIME_BACKWARDS, "", part, within(row.micros), row.number);
    }

    private void hold(long micros, double[] values, long number) {
        double[] own = opening == null ? spare : new double[values.length];
        System.arraycopy(values, 0, own, 0, values.length);
        spare = held == null || opening != null ? spare : held.values;
        held = new Row(micros, own, number);
    }

    private void emit(Row row) {
        last = row.micros;
        began = true;
        rows++;
        if (opening == null) {
            sink.sample(row.micros - start, row.values);
            return;
        }
        opening.add(row);
        if (opening.size() >= OPENING) {
            open();
        }
    }

    /** Tells the layout, then hands on the rows that waited for it. */
    private void open() {
        List<Row> waiting = opening;
        if (waiting == null) {
            return;
        }
        opening = null;
        spare = new double[columns.size()];
        sink.begin(new Layout(columns, steps(waiting)));
        waiting.forEach(row -> sink.sample(row.micros - start, row.values));
    }

    private List<Long> steps(List<Row> waiting) {
        List<Long> steps = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            long[] found = new long[waiting.size()];
            int count = 0;
            long before = Long.MIN_VALUE;
            for (Row row : waiting) {
                if (!Double.isNaN(row.values[i])) {
                    if (before != Long.MIN_VALUE) {
                        found[count++] = row.micros - before;
                    }
                    before = row.micros;
                }
            }
            Arrays.sort(found, 0, count);
            steps.add(count == 0 ? 0L : found[count / 2]);
        }
        return steps;
    }

    void end() {
        strays();
        if (held != null) {
            emit(held);
            open();
            lasted.add(last - start);
            sink.end();
        }
    }

    long rows() {
        return rows;
    }

    int part() {
        return part;
    }

    int parts() {
        return part + 1;
    }

    List<Long> lasted() {
        return lasted;
    }

    /** A time of the file within its part. */
    long within(long micros) {
        return held == null ? 0 : micros - start;
    }

    /** The newest time within its part. */
    long lastWithin() {
        return held == null ? 0 : held.micros - start;
    }
}
