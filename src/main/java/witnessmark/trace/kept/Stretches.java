package witnessmark.trace.kept;

import java.io.IOException;

/** Reads stretches of channels one after another, in the coding of their file. */
final class Stretches implements AutoCloseable {
    private static final int LARGEST = Block.SAMPLES * 24;

    private final Frame.Unpacker unpacker;
    private final boolean deflated;
    private final long[] changes = new long[Block.SAMPLES];

    /** @param deflated whether they are as they were written at first */
    Stretches(Bytes bytes, boolean deflated) {
        this.unpacker = new Frame.Unpacker(bytes);
        this.deflated = deflated;
    }

    /** Puts the samples of a block where there is room for them. */
    void samples(Block block, long[] micros, double[] values, int at) throws IOException {
        Numbers.Reading numbers = numbers(block.at(), block.length(), block.checksum());
        times(numbers, block.samples(), micros, at);
        figures(numbers, block.samples(), values, at);
        numbers.end();
    }

    /** Time, least and most of each bucket of a block. */
    record Buckets(long[] times, double[] least, double[] most) {}

    Buckets buckets(Block block) throws IOException {
        Numbers.Reading numbers = numbers(block.envelopeAt(), block.envelopeLength(), block.envelopeChecksum());
        int count = (block.samples() + Block.BUCKET - 1) / Block.BUCKET;
        Buckets read = new Buckets(new long[count], new double[count], new double[count]);
        times(numbers, count, read.times(), 0);
        figures(numbers, count, read.least(), 0);
        figures(numbers, count, read.most(), 0);
        numbers.end();
        return read;
    }

    private Numbers.Reading numbers(long at, int length, int checksum) throws IOException {
        return deflated ? unpacker.read(at, length, checksum, LARGEST) : unpacker.plain(at, length, checksum, LARGEST);
    }

    private void times(Numbers.Reading from, int count, long[] into, int at) throws KeptDamaged {
        if (deflated) {
            System.arraycopy(FirstCoding.times(count, from), 0, into, at, count);
        } else {
            Coding.times(from, changes, count, into, at);
        }
    }

    private void figures(Numbers.Reading from, int count, double[] into, int at) throws KeptDamaged {
        if (deflated) {
            System.arraycopy(FirstCoding.figures(count, from), 0, into, at, count);
        } else {
            Coding.figures(from, changes, count, into, at);
        }
    }

    @Override
    public void close() {
        unpacker.close();
    }
}
