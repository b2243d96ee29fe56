package witnessmark.logbook.tracing;

import java.util.function.Consumer;
import witnessmark.logbook.port.Beside;
import witnessmark.trace.Layout;
import witnessmark.trace.SampleSink;

/** Hands samples on to a sink that works beside the reading, some thousand rows at a time. */
final class SamplesBeside implements SampleSink {
    private static final int FIGURES = 1 << 17;

    private final Relay<Rows> relay;
    private final SampleSink sink;
    private Rows rows;

    /** Rows that were read, one figure after another. */
    private static final class Rows {
        private long[] micros = new long[0];
        private double[] figures = new double[0];
        private double[] row = new double[0];
        private int count;

        void shape(int columns) {
            int most = Math.max(1, FIGURES / Math.max(1, columns));
            if (row.length != columns || micros.length != most) {
                micros = new long[most];
                figures = new double[most * columns];
                row = new double[columns];
            }
            count = 0;
        }

        boolean add(long at, double[] values) {
            micros[count] = at;
            System.arraycopy(values, 0, figures, count * row.length, row.length);
            return ++count == micros.length;
        }

        void to(SampleSink sink) {
            for (int i = 0; i < count; i++) {
                System.arraycopy(figures, i * row.length, row, 0, row.length);
                sink.sample(micros[i], row);
            }
        }
    }

    SamplesBeside(Beside beside, SampleSink sink) {
        this.relay = new Relay<>(beside, Rows::new);
        this.sink = sink;
        this.rows = relay.next();
    }

    @Override
    public void begin(Layout layout) {
        int columns = layout.columns().size();
        rows.shape(columns);
        then(all -> all.begin(layout), columns);
    }

    @Override
    public void sample(long micros, double[] values) {
        if (rows.add(micros, values)) {
            then(all -> {}, values.length);
        }
    }

    @Override
    public void part() {
        then(SampleSink::part, rows.row.length);
    }

    @Override
    public void end() {
        Rows last = rows;
        relay.give(last, full -> {
            full.to(sink);
            sink.end();
        });
        relay.end();
    }

    /** Gives away the rows that are full, what comes after them, and begins others. */
    private void then(Consumer<SampleSink> after, int columns) {
        relay.give(rows, full -> {
            full.to(sink);
            after.accept(sink);
        });
        rows = relay.next();
        rows.shape(columns);
    }
}
