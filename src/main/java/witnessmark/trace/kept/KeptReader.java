package witnessmark.trace.kept;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.Coded;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Envelope;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.Wave;

/** Reads kept samples at any place, and draws any stretch of them in a time that goes by its width, not by its samples. */
public final class KeptReader {
    private static final int MOST_PARTS = 4096;
    /** Of a channel: more than a day at a thousand a second. */
    private static final long MOST_SAMPLES = 1L << 27;

    private static final int MOST_BLOCKS = 1 << 24;
    private static final int LARGEST_INDEX = 1 << 29;

    private final Bytes bytes;
    /** Whether its stretches are as they were written at first. */
    private final boolean deflated;

    private final List<ColumnForm> columns;
    private final List<List<List<Block>>> index;

    private KeptReader(Bytes bytes, boolean deflated, List<ColumnForm> columns, List<List<List<Block>>> index) {
        this.bytes = bytes;
        this.deflated = deflated;
        this.columns = columns;
        this.index = index;
    }

    /** @throws IOException if the bytes cannot be read or are not as they were written */
    public static KeptReader open(Bytes bytes) throws IOException {
        if (bytes.size() < Frame.MAGIC.length + Frame.TRAILER) {
            throw new KeptDamaged("too short");
        }
        byte[] trailer = new byte[Frame.TRAILER];
        bytes.read(bytes.size() - Frame.TRAILER, trailer, 0, Frame.TRAILER);
        boolean deflated = Arrays.equals(trailer, 16, 24, Frame.FIRST_MAGIC, 0, 8);
        if (!deflated && !Arrays.equals(trailer, 16, 24, Frame.MAGIC, 0, 8)) {
            throw new KeptDamaged("no end");
        }
        try (Frame.Unpacker unpacker = new Frame.Unpacker(bytes)) {
            return read(
                    bytes,
                    deflated,
                    unpacker.read(
                            number(trailer, 0, 8),
                            (int) number(trailer, 8, 4),
                            (int) number(trailer, 12, 4),
                            LARGEST_INDEX));
        } catch (IllegalArgumentException e) {
            throw new KeptDamaged("a word of another version");
        }
    }

    private static KeptReader read(Bytes bytes, boolean deflated, Numbers.Reading numbers) throws KeptDamaged {
        List<ColumnForm> columns = new ArrayList<>();
        int width = numbers.count(TraceForm.MOST_COLUMNS);
        for (int i = 0; i < width; i++) {
            columns.add(new ColumnForm(
                    numbers.text(),
                    Coded.of(ChannelKind.class, numbers.text()),
                    Coded.of(ChannelUnit.class, numbers.text()),
                    Coded.of(ColumnForm.From.class, numbers.text())));
        }
        long room = bytes.size();
        List<List<List<Block>>> index = new ArrayList<>();
        int parts = numbers.count(MOST_PARTS);
        for (int part = 0; part < parts; part++) {
            List<List<Block>> channels = new ArrayList<>();
            for (int i = 0; i < width; i++) {
                List<Block> blocks = new ArrayList<>();
                int count = numbers.count(MOST_BLOCKS);
                for (int b = 0; b < count; b++) {
                    Block block = Block.read(numbers);
                    room -= (long) block.length() + block.envelopeLength();
                    if (room < 0) {
                        throw new KeptDamaged("more than the file holds");
                    }
                    blocks.add(block);
                }
                channels.add(blocks);
            }
            index.add(channels);
        }
        return new KeptReader(bytes, deflated, List.copyOf(columns), index);
    }

    private static long number(byte[] from, int at, int length) {
        long value = 0;
        for (int i = at; i < at + length; i++) {
            value = value << 8 | (from[i] & 0xFF);
        }
        return value;
    }

    /** The columns of the trace; those of time have no samples. */
    public List<ColumnForm> columns() {
        return columns;
    }

    /** How often time begins. */
    public int parts() {
        return index.size();
    }

    /** How many samples a channel has in a part. */
    public long count(int part, int column) {
        return index.get(part).get(column).stream().mapToLong(Block::samples).sum();
    }

    /** The time of the last sample of a part, microseconds. */
    public long lasted(int part) {
        return index.get(part).stream()
                .filter(blocks -> !blocks.isEmpty())
                .mapToLong(blocks -> blocks.get(blocks.size() - 1).until())
                .max()
                .orElse(0);
    }

    /** All samples of a channel. */
    public Samples samples(int part, int column) throws IOException {
        return samples(part, column, Long.MIN_VALUE, Long.MAX_VALUE);
    }

    /** The samples of a channel from a time until another, both counted. */
    public Samples samples(int part, int column, long from, long until) throws IOException {
        List<Block> blocks = index.get(part).get(column).stream()
                .filter(block -> block.until() >= from && block.from() <= until)
                .toList();
        try (Stretches stretches = new Stretches(bytes, deflated)) {
            return within(samples(blocks, stretches), from, until);
        }
    }

    private static Samples samples(List<Block> blocks, Stretches stretches) throws IOException {
        long all = blocks.stream().mapToLong(Block::samples).sum();
        if (all > MOST_SAMPLES) {
            throw new KeptDamaged("as many samples as nobody logs");
        }
        int count = (int) all;
        long[] micros = new long[count];
        double[] values = new double[count];
        int at = 0;
        for (Block block : blocks) {
            stretches.samples(block, micros, values, at);
            at += block.samples();
        }
        return new Samples(micros, values);
    }

    private static Samples within(Samples read, long from, long until) {
        long[] micros = read.micros();
        int first = 0;
        while (first < micros.length && micros[first] < from) {
            first++;
        }
        int end = micros.length;
        while (end > first && micros[end - 1] > until) {
            end--;
        }
        return first == 0 && end == micros.length
                ? read
                : new Samples(Arrays.copyOfRange(micros, first, end), Arrays.copyOfRange(read.values(), first, end));
    }

    /**
     * Least and most of a channel in equal pieces of a stretch of time. Samples, sixty-fours of them or whole blocks are
     * looked at, whichever is just finer than the pieces.
     *
     * @param pieces pixels, 1 or more
     */
    public Envelope envelope(int part, int column, long from, long until, int pieces) throws IOException {
        return wave(part, column, from, until, (long) Block.BUCKET * pieces).envelope(from, until, pieces);
    }

    /**
     * A stretch of a channel, to be drawn at any width: samples where there are no more than so many, else the least and
     * most of sixty-fours of them, or of whole blocks. At both ends it is samples in any case.
     *
     * @param most points, about
     */
    public Wave wave(int part, int column, long from, long until, long most) throws IOException {
        List<Block> blocks = index.get(part).get(column).stream()
                .filter(block -> block.until() >= from && block.from() <= until)
                .toList();
        long samples = blocks.stream().mapToLong(Block::samples).sum();
        Wave.Filling wave = new Wave.Filling();
        try (Stretches stretches = new Stretches(bytes, deflated)) {
            for (Block block : blocks) {
                boolean within = block.from() >= from && block.until() <= until;
                if (within && samples >= Block.BUCKET * most) {
                    wave.several(block.from(), block.least(), block.most());
                } else if (within && samples >= most) {
                    buckets(block, stretches, wave);
                } else {
                    Samples read = within(samples(List.of(block), stretches), from, until);
                    for (int i = 0; i < read.micros().length; i++) {
                        wave.sample(read.micros()[i], read.values()[i]);
                    }
                }
            }
        }
        return wave.done();
    }

    private static void buckets(Block block, Stretches stretches, Wave.Filling wave) throws IOException {
        Stretches.Buckets buckets = stretches.buckets(block);
        for (int i = 0; i < buckets.times().length; i++) {
            wave.several(buckets.times()[i], buckets.least()[i], buckets.most()[i]);
        }
    }
}
