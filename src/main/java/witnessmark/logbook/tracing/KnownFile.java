package witnessmark.logbook.tracing;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.Beside;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.trace.InPieces;

/**
 * A logger's file that is known by its bytes when it was read: their digest is taken beside the reading, of the very bytes
 * that were read.
 */
final class KnownFile implements ReduceTrace.Source {
    /** Large enough that one who fills them seldom waits for the other to wake. */
    private static final int PIECE = 1 << 19;

    private final LoggerFile file;
    private final long size;
    private final Beside beside;
    private @Nullable Reading last;

    /** @param size bytes it has */
    KnownFile(LoggerFile file, long size, Beside beside) {
        this.file = file;
        this.size = size;
        this.beside = beside;
    }

    @Override
    public InputStream open() throws IOException {
        Reading opened = new Reading(file.open(), (int) Math.max(1, Math.min(PIECE, size)), beside);
        last = opened;
        return opened;
    }

    /**
     * SHA-256 of it, 64 hexadecimal digits. Reads it once more where not all of it was asked for, as the list at the end of
     * a zip is not.
     */
    String sha256() throws IOException {
        Reading read = last;
        return read != null && read.length == size ? read.digest() : Sha256.of(file::open);
    }

    /** Some bytes. */
    private static final class Piece {
        private final byte[] bytes;
        private int count;

        Piece(int most) {
            bytes = new byte[most];
        }
    }

    /** What is passed over is read too: the digest would miss it. */
    private static final class Reading extends InPieces {
        private final MessageDigest sha = Sha256.begin();
        private final Relay<Piece> relay;
        private Piece piece;
        private long length;

        Reading(InputStream in, int piece, Beside beside) {
            super(in);
            this.relay = new Relay<>(beside, () -> new Piece(piece));
            this.piece = relay.next();
        }

        @Override
        public int read(byte[] into, int offset, int most) throws IOException {
            int count = in.read(into, offset, most);
            for (int done = 0; done < count; ) {
                int some = Math.min(count - done, piece.bytes.length - piece.count);
                System.arraycopy(into, offset + done, piece.bytes, piece.count, some);
                piece.count += some;
                done += some;
                if (piece.count == piece.bytes.length) {
                    give();
                    piece = relay.next();
                    piece.count = 0;
                }
            }
            length += Math.max(0, count);
            return count;
        }

        private void give() {
            relay.give(piece, full -> sha.update(full.bytes, 0, full.count));
        }

        String digest() {
            give();
            relay.end();
            return HexFormat.of().formatHex(sha.digest());
        }
    }
}
