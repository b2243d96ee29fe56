package witnessmark.trace.packed;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Opens a text that may be packed, as gzip or as a file in a zip. What unpacks too far is given up; names in an archive
 * are compared and shown, never used as paths; archives within archives are not opened.
 */
public final class Packed {
    private static final int MAGIC = 4;

    private Packed() {}

    /**
     * @param in from the first byte of the file; reading on throws a {@link PackedProblem} once a limit is reached
     * @param entry the name of the file wanted from a zip, or null if there is only one
     * @return the text's bytes, unpacked while they are read
     * @throws PackedProblem if it is packed in a way that is not opened
     */
    public static InputStream open(InputStream in, @Nullable String entry, UnpackLimits limits) throws IOException {
        Counting raw = new Counting(in);
        PushbackInputStream back = new PushbackInputStream(raw, MAGIC);
        byte[] magic = new byte[MAGIC];
        int length = back.readNBytes(magic, 0, MAGIC);
        back.unread(magic, 0, length);
        try {
            if (isGzip(magic, length)) {
                return inner(new Bounded(new GZIPInputStream(back), raw, limits), "");
            }
            return isZip(magic, length) ? zip(new ZipInputStream(back), raw, entry, limits) : back;
        } catch (ZipException | java.io.EOFException | IllegalArgumentException e) {
            throw damaged(e);
        }
    }

    /**
     * Refuses a zip of several files by the list at its end, before the first of them is read; lets pass whatever cannot be told
     * like this, since reading tells it too.
     *
     * @param in from the first byte of the file
     * @throws PackedProblem naming the files
     */
    public static void notSeveral(InputStream in, UnpackLimits limits) throws IOException {
        byte[] magic = in.readNBytes(MAGIC);
        List<String> names = isZip(magic, magic.length) ? ZipList.names(in) : List.of();
        refuse(names.size() > limits.entries(), ProblemKind.PACKED_TOO_MANY, limits.entries());
        refuse(names.size() > 1, ProblemKind.PACKED_SEVERAL, List.copyOf(few(names)));
    }

    /** The names of the files in a zip, as they are written in it; empty for anything else. */
    public static List<String> names(InputStream in, UnpackLimits limits) throws IOException {
        Counting raw = new Counting(in);
        PushbackInputStream back = new PushbackInputStream(raw, MAGIC);
        byte[] magic = new byte[MAGIC];
        int length = back.readNBytes(magic, 0, MAGIC);
        back.unread(magic, 0, length);
        if (!isZip(magic, length)) {
            return List.of();
        }
        try {
            return names(new ZipInputStream(back), raw, limits);
        } catch (ZipException | java.io.EOFException | IllegalArgumentException e) {
            throw damaged(e);
        }
    }

    private static List<String> names(ZipInputStream zip, Counting raw, UnpackLimits limits) throws IOException {
        List<String> names = new ArrayList<>();
        Bounded bounded = new Bounded(zip, raw, limits);
        for (ZipEntry next = zip.getNextEntry(); next != null; next = zip.getNextEntry()) {
            if (isFile(next)) {
                names.add(next.getName());
            }
            refuse(names.size() > limits.entries(), ProblemKind.PACKED_TOO_MANY, limits.entries());
            bounded.pass();
        }
        return names;
    }

    private static InputStream zip(ZipInputStream zip, Counting raw, @Nullable String wanted, UnpackLimits limits)
            throws IOException {
        Bounded bounded = new Bounded(zip, raw, limits);
        List<String> names = new ArrayList<>();
        for (ZipEntry next = zip.getNextEntry(); next != null; next = zip.getNextEntry()) {
            if (isFile(next)) {
                names.add(next.getName());
                refuse(names.size() > limits.entries(), ProblemKind.PACKED_TOO_MANY, limits.entries());
                if (wanted == null || wanted.equals(next.getName())) {
                    return inner(new Only(bounded, zip, wanted == null, names, limits), next.getName());
                }
            }
            bounded.pass();
        }
        if (wanted != null && !names.isEmpty()) {
            throw new PackedProblem(Problem.of(ProblemKind.PACKED_NOT_IN_IT, wanted, String.join(", ", few(names))));
        }
        throw new PackedProblem(Problem.of(ProblemKind.PACKED_EMPTY));
    }

    /** The text itself, unless it is an archive again. */
    private static InputStream inner(InputStream text, String name) throws IOException {
        PushbackInputStream back = new PushbackInputStream(text, MAGIC);
        byte[] magic = new byte[MAGIC];
        int length = back.readNBytes(magic, 0, MAGIC);
        refuse(isGzip(magic, length) || isZip(magic, length), ProblemKind.PACKED_WITHIN, name);
        back.unread(magic, 0, length);
        return back;
    }

    private static boolean isFile(ZipEntry entry) {
        return ZipList.isFile(entry.getName());
    }

    private static List<String> few(List<String> names) {
        return names.subList(0, Math.min(names.size(), 20));
    }

    private static boolean isGzip(byte[] magic, int length) {
        return length >= 2 && (magic[0] & 0xFF) == 0x1F && (magic[1] & 0xFF) == 0x8B;
    }

    private static boolean isZip(byte[] magic, int length) {
        return length == MAGIC && magic[0] == 'P' && magic[1] == 'K' && magic[2] <= 8 && magic[3] <= 8 && magic[2] > 0;
    }

    private static void refuse(boolean that, ProblemKind kind, Object fact) throws PackedProblem {
        if (that) {
            throw new PackedProblem(Problem.of(kind, fact));
        }
    }

    private static PackedProblem damaged(Exception e) {
        return new PackedProblem(
                e instanceof java.io.EOFException
                        ? Problem.of(ProblemKind.PACKED_ENDS_EARLY)
                        : Problem.of(
                                ProblemKind.PACKED_DAMAGED,
                                e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage()));
    }

    /** Counts what is read of the packed bytes. */
    private static final class Counting extends FilterInputStream {
        private long bytes;

        Counting(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int one = in.read();
            bytes += one < 0 ? 0 : 1;
            return one;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int read = in.read(into, offset, length);
            bytes += Math.max(read, 0);
            return read;
        }
    }

    /** Unpacked bytes within the limits. */
    private static final class Bounded extends FilterInputStream {
        private static final int PIECE = 1 << 13;

        private final Counting raw;
        private final UnpackLimits limits;
        private long bytes;

        Bounded(InputStream in, Counting raw, UnpackLimits limits) {
            super(in);
            this.raw = raw;
            this.limits = limits;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int read;
            try {
                read = in.read(into, offset, length);
            } catch (ZipException | java.io.EOFException e) {
                throw damaged(e);
            }
            bytes += Math.max(read, 0);
            refuse(bytes > limits.bytes(), ProblemKind.PACKED_TOO_LARGE, limits.bytes());
            refuse(
                    bytes > limits.free() && bytes > limits.times() * Math.max(raw.bytes, 1),
                    ProblemKind.PACKED_TOO_DENSE,
                    limits.times());
            return read;
        }

        /** Reads an entry to its end. */
        void pass() throws IOException {
            byte[] piece = new byte[PIECE];
            int read;
            do {
                read = read(piece, 0, PIECE);
            } while (read >= 0);
        }

        @Override
        public void close() {
            // What was handed in is closed by whoever opened it.
        }
    }

    /** One file of a zip; at its end any other file is told, unless this one was asked for. */
    private static final class Only extends FilterInputStream {
        private final ZipInputStream zip;
        private final boolean alone;
        private final List<String> names;
        private final UnpackLimits limits;
        private boolean ended;

        Only(Bounded in, ZipInputStream zip, boolean alone, List<String> names, UnpackLimits limits) {
            super(in);
            this.zip = zip;
            this.alone = alone;
            this.names = names;
            this.limits = limits;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int read = ended ? -1 : in.read(into, offset, length);
            if (read < 0 && !ended) {
                ended = true;
                others();
            }
            return read;
        }

        private void others() throws IOException {
            if (!alone) {
                return;
            }
            ZipEntry next = zip.getNextEntry();
            while (next != null) {
                if (isFile(next)) {
                    names.add(next.getName());
                }
                refuse(names.size() > limits.entries(), ProblemKind.PACKED_TOO_MANY, limits.entries());
                ((Bounded) in).pass();
                next = zip.getNextEntry();
            }
            if (names.size() > 1) {
                throw new PackedProblem(Problem.of(ProblemKind.PACKED_SEVERAL, List.copyOf(few(names))));
            }
        }
    }
}
