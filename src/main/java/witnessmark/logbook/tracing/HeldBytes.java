package witnessmark.logbook.tracing;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.util.Optional;
import witnessmark.logbook.port.Kept;

/** Bytes held in memory up to a limit; what goes beyond it is not held at all, and the writer is not disturbed. */
final class HeldBytes extends OutputStream {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final int most;
    private boolean full;

    HeldBytes(int most) {
        this.most = most;
    }

    @Override
    public void write(int one) {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] from, int offset, int length) {
        if (full || bytes.size() + length > most) {
            full = true;
            bytes.reset();
        } else {
            bytes.write(from, offset, length);
        }
    }

    /** What was written; empty when it was too much. */
    Optional<Kept> kept() {
        return full || bytes.size() == 0 ? Optional.empty() : Optional.of(Kept.of(bytes.toByteArray()));
    }
}
