package witnessmark.trace.kept;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import witnessmark.trace.Layout;
import witnessmark.trace.SampleSink;

/**
 * A digest of what a trace says, however its text is written: the times and figures of its known channels, by their kind.
 * The same samples in another file, renamed, in another order of columns or with other decimal marks, have the same.
 */
public final class SampleDigest implements SampleSink {
    private final MessageDigest sha;
    private final List<Integer> columns = new ArrayList<>();
    private ByteBuffer row = ByteBuffer.allocate(0);
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
        for (int i = 0; i < layout.columns().size(); i++) {
            if (!layout.columns().get(i).kind().oftenMany()) {
                columns.add(i);
            }
        }
        columns.sort(Comparator.comparing(
                column -> layout.columns().get(column).kind().code()));
        row = ByteBuffer.allocate(8 + 8 * columns.size());
    }

    @Override
    public void sample(long micros, double[] values) {
        row.clear();
        row.putLong(micros);
        for (int column : columns) {
            row.putDouble(values[column] == 0 ? 0.0 : values[column]);
        }
        sha.update(row.array());
    }

    @Override
    public void part() {
        sha.update((byte) 1);
    }

    @Override
    public void end() {
        text = HexFormat.of().formatHex(sha.digest());
    }

    /** Sixty-four hexadecimal digits; empty before the end. */
    public String text() {
        return text;
    }
}
