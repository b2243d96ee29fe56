package witnessmark.trace.kept;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32C;
import java.util.zip.Deflater;
import witnessmark.trace.Layout;
import witnessmark.trace.SampleSink;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Envelope;

/**
 * Keeps samples without loss while a trace is read: each channel by itself, in stretches with a checksum, the
 * least and most of every 64 samples beside them, and an index at the end. Memory grows only by the index, some sixty
 * bytes for 4096 samples of a channel. What was written without {@link #end} is nothing.
 */
public final class KeptWriter implements SampleSink {
    private final OutputStream out;
    private final Deflater deflater = new Deflater(Deflater.BEST_SPEED);
    private final byte[] packed = new byte[1 << 16];
    private final Numbers numbers = new Numbers();
    private final Coding coding = new Coding(Block.SAMPLES);
    private final List<List<List<Block>>> index = new ArrayList<>();
    private List<ColumnForm> columns = List.of();
    private Filling[] fillings = new Filling[0];
    /** Times of the channels that have a figure in every row, or a hole; they fill at once. */
    private final long[] rows = new long[Block.SAMPLES];

    private int rowCount;
    /** These times as bytes, for all but the first of those channels. */
    private final Numbers rowTimes = new Numbers();

    private boolean rowTimesCoded;
    private long position;

    /** Samples of one channel that are not written yet. */
    private static final class Filling {
        private final long[] micros;
        private final double[] values = new double[Block.SAMPLES];
        /** Whether rows without a figure of it are holes; else it is logged more slowly than others. */
        private final boolean everyRow;

        private int count;

        Filling(boolean everyRow, long[] micros) {
            this.everyRow = everyRow;
            this.micros = micros;
        }
    }

    /** @param out where to; not closed */
    public KeptWriter(OutputStream out) {
        this.out = out;
    }

    @Override
    public void begin(Layout layout) {
        columns = layout.columns();
        fillings = new Filling[columns.size()];
        for (int i = 0; i < fillings.length; i++) {
            boolean everyRow = layout.steps().get(i) > 0 && layout.steps().get(i) < layout.step() * 3 / 2;
            fillings[i] = new Filling(everyRow, everyRow ? rows : new long[Block.SAMPLES]);
        }
        write(Frame.MAGIC, Frame.MAGIC.length);
        openPart();
    }

    private void openPart() {
        List<List<Block>> blocks = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            blocks.add(new ArrayList<>());
        }
        index.add(blocks);
    }

    @Override
    public void sample(long micros, double[] values) {
        rows[rowCount++] = micros;
        for (int i = 0; i < fillings.length; i++) {
            Filling filling = fillings[i];
            double value = values[i];
            if (!filling.everyRow) {
                if (Double.isNaN(value)) {
                    continue;
                }
                filling.micros[filling.count] = micros;
            }
            filling.values[filling.count++] = value;
            if (filling.count == Block.SAMPLES) {
                flush(i);
            }
        }
        if (rowCount == Block.SAMPLES) {
            nextRows();
        }
    }

    private void nextRows() {
        rowCount = 0;
        rowTimesCoded = false;
    }

    private void flush(int column) {
        Filling filling = fillings[column];
        if (filling.count == 0) {
            return;
        }
        numbers.clear();
        times(filling);
        coding.figures(filling.values, filling.count, numbers);
        long at = position;
        int checksum = plain();
        int length = (int) (position - at);
        double[] range = envelope(filling);
        long envelopeAt = position;
        int envelopeChecksum = plain();
        index.get(index.size() - 1)
                .get(column)
                .add(new Block(
                        at,
                        length,
                        checksum,
                        filling.count,
                        filling.micros[0],
                        filling.micros[filling.count - 1],
                        range[0],
                        range[1],
                        envelopeAt,
                        (int) (position - envelopeAt),
                        envelopeChecksum));
        filling.count = 0;
    }

    private void times(Filling filling) {
        if (!filling.everyRow) {
            coding.times(filling.micros, filling.count, numbers);
            return;
        }
        if (!rowTimesCoded) {
            rowTimes.clear();
            coding.times(rows, rowCount, rowTimes);
            rowTimesCoded = true;
        }
        numbers.add(rowTimes);
    }

    /** Writes time, least and most of each bucket; answers those of the whole. */
    private double[] envelope(Filling filling) {
        int buckets = (filling.count + Block.BUCKET - 1) / Block.BUCKET;
        long[] times = new long[buckets];
        double[] least = new double[buckets];
        double[] most = new double[buckets];
        double[] whole = {Double.NaN, Double.NaN};
        for (int b = 0; b < buckets; b++) {
            int first = b * Block.BUCKET;
            times[b] = filling.micros[first];
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = first; i < Math.min(first + Block.BUCKET, filling.count); i++) {
                double value = filling.values[i]; // a hole is neither less nor more
                low = value < low ? value : low;
                high = value > high ? value : high;
            }
            boolean none = low > high;
            least[b] = none ? Double.NaN : low;
            most[b] = none ? Double.NaN : high;
            whole[0] = Envelope.less(whole[0], least[b]);
            whole[1] = Envelope.more(whole[1], most[b]);
        }
        numbers.clear();
        coding.times(times, buckets, numbers);
        coding.figures(least, buckets, numbers);
        coding.figures(most, buckets, numbers);
        return whole;
    }

    @Override
    public void part() {
        flushAll();
        openPart();
    }

    private void flushAll() {
        for (int i = 0; i < fillings.length; i++) {
            flush(i);
        }
        nextRows();
    }

    @Override
    public void end() {
        flushAll();
        numbers.clear();
        numbers.unsigned(columns.size());
        for (ColumnForm column : columns) {
            numbers.text(column.heading());
            numbers.text(column.kind().code());
            numbers.text(column.unit().code());
            numbers.text(column.from().code());
        }
        numbers.unsigned(index.size());
        for (List<List<Block>> part : index) {
            for (List<Block> blocks : part) {
                numbers.unsigned(blocks.size());
                blocks.forEach(block -> block.write(numbers));
            }
        }
        long at = position;
        int checksum = pack();
        int length = (int) (position - at);
        byte[] trailer = new byte[Frame.TRAILER];
        for (int i = 0; i < 8; i++) {
            trailer[i] = (byte) (at >>> (56 - 8 * i));
            trailer[16 + i] = Frame.MAGIC[i];
        }
        for (int i = 0; i < 4; i++) {
            trailer[8 + i] = (byte) (length >>> (24 - 8 * i));
            trailer[12 + i] = (byte) (checksum >>> (24 - 8 * i));
        }
        write(trailer, trailer.length);
        deflater.end();
    }

    /** Writes the numbers in hand as they are; answers their checksum. */
    private int plain() {
        write(numbers.array(), numbers.length());
        return Frame.checksum(numbers.array(), numbers.length());
    }

    /** Packs the numbers in hand and writes them; answers their checksum. */
    private int pack() {
        CRC32C crc = new CRC32C();
        deflater.reset();
        deflater.setInput(numbers.array(), 0, numbers.length());
        deflater.finish();
        while (!deflater.finished()) {
            int length = deflater.deflate(packed);
            crc.update(packed, 0, length);
            write(packed, length);
        }
        return (int) crc.getValue();
    }

    private void write(byte[] bytes, int length) {
        try {
            out.write(bytes, 0, length);
            position += length;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
