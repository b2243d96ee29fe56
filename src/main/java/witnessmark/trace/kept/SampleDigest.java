package witnessmark.trace.kept;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.stream.IntStream;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.Layout;
import witnessmark.trace.SampleSink;

/**
 * A digest of what a trace says, however its text is written: the times and figures of its known channels, by their kind.
 * The same samples in another file, renamed, in another order of columns or with other decimal marks, have the same.
 */
public final class SampleDigest implements SampleSink {
    /** Rows that are digested together. */
    private static final int AT_ONCE = 128;

    private final MessageDigest sha;
    private int[] columns = {};
    private ByteBuffer rows = ByteBuffer.allocate(0);
    private String text = "";

    public SampleDigest() {
        try {
            sha = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    @Override
    public void begin(Layout layout) {
        columns = IntStream.range(0, layout.columns().size())
                .filter(column -> !kind(layout, column).oftenMany())
                .boxed()
                .sorted(Comparator.comparing(column -> kind(layout, column).code()))
                .mapToInt(Integer::intValue)
                .toArray();
        rows = ByteBuffer.allocate(AT_ONCE * (8 + 8 * columns.length));
    }

    private static ChannelKind kind(Layout layout, int column) {
        return layout.columns().get(column).kind();
    }

    @Override
    public void sample(long micros, double[] values) {
        rows.putLong(micros);
        for (int column : columns) {
            rows.putDouble(values[column] + 0.0); // a zero without its sign
        }
        if (!rows.hasRemaining()) {
            update();
        }
    }

    private void update() {
        sha.update(rows.flip());
        rows.clear();
    }

    @Override
    public void part() {
        update();
        sha.update((byte) 1);
    }

    @Override
    public void end() {
        update();
        text = HexFormat.of().formatHex(sha.digest());
    }

    /** Sixty-four hexadecimal digits; empty before the end. */
    public String text() {
        return text;
    }
}
