package witnessmark.trace.packed;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.InPieces;

/**
 * Opens a text that may be packed, as gzip or as a file in a zip. What unpacks too far is given up; names in an archive
 * are compared and shown, never used as paths; archives within archives are not opened.
 */
public final class Packed {
    private static final int MAGIC = 4;

    private Packed() {}

    /**
     * @param in from the first byte of the file; reading on throws a {@link PackedProblem} once a limit is reached or something
     *     is wrong with it, {@link UpToTheCut} not where what came before can be looked at
     * @param entry the name of the file wanted from a zip, or null if there is only one
     * @return the text's bytes, unpacked while they are read
     * @throws PackedProblem if it is packed in a way that is not opened
     */
    public static InputStream open(InputStream in, @Nullable String entry, UnpackLimits limits) throws IOException {
        PushbackInputStream back = new PushbackInputStream(in, MAGIC);
        byte[] magic = new byte[MAGIC];
        int length = back.readNBytes(magic, 0, MAGIC);
        back.unread(magic, 0, length);
        Written written = new Written(back);
        Counting raw = new Counting(written);
        try {
            if (isGzip(magic, length)) {
                Gzip gzip = new Gzip(raw, written);
                return inner(new Bounded(gzip, raw, limits, gzip::isWrongInItsCheck), "");
            }
            return isZip(magic, length) ? zip(new Zip(raw), raw, entry, limits) : back;
        } catch (ZipException | EOFException | IllegalArgumentException e) {
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
        PushbackInputStream back = new PushbackInputStream(in, MAGIC);
        byte[] magic = new byte[MAGIC];
        int length = back.readNBytes(magic, 0, MAGIC);
        back.unread(magic, 0, length);
        if (!isZip(magic, length)) {
            return List.of();
        }
        try {
            Counting raw = new Counting(new Written(back));
            return names(new Zip(raw), raw, limits);
        } catch (ZipException | EOFException | IllegalArgumentException e) {
            throw damaged(e);
        }
    }

    private static List<String> names(Zip zip, Counting raw, UnpackLimits limits) throws IOException {
        List<String> names = new ArrayList<>();
        Bounded bounded = new Bounded(zip, raw, limits, () -> false);
        for (ZipEntry next = zip.getNextEntry(); next != null; next = zip.getNextEntry()) {
            if (isFile(next)) {
                names.add(next.getName());
            }
            refuse(names.size() > limits.entries(), ProblemKind.PACKED_TOO_MANY, limits.entries());
            bounded.pass();
        }
        return names;
    }

    private static InputStream zip(Zip zip, Counting raw, @Nullable String wanted, UnpackLimits limits)
            throws IOException {
        Checked check = () -> zip.isWrongInItsCheck() && (wanted != null || zip.wasLast());
        Bounded bounded = new Bounded(zip, raw, limits, check);
        List<String> names = new ArrayList<>();
        for (ZipEntry next = zip.getNextEntry(); next != null; next = zip.getNextEntry()) {
            if (isFile(next)) {
                names.add(next.getName());
                refuse(names.size() > limits.entries(), ProblemKind.PACKED_TOO_MANY, limits.entries());
                if (wanted == null || wanted.equals(next.getName())) {
                    return inner(new Only(bounded, zip, wanted == null, names), next.getName());
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
                e instanceof EOFException
                        ? Problem.of(ProblemKind.PACKED_ENDS_EARLY)
                        : Problem.of(
                                ProblemKind.PACKED_DAMAGED,
                                e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage()));
    }

    /** Whether only what stands after a text to check it by is wrong. */
    @FunctionalInterface
    private interface Checked {
        boolean isWrongInItsCheck() throws IOException;
    }

    /** Unpacked bytes within the limits. */
    private static final class Bounded extends InPieces {
        private static final int PIECE = 1 << 13;

        private final Counting raw;
        private final UnpackLimits limits;
        private final Checked check;
        private long bytes;

        Bounded(InputStream in, Counting raw, UnpackLimits limits, Checked check) {
            super(in);
            this.raw = raw;
            this.limits = limits;
            this.check = check;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            try {
                return take(into, offset, length);
            } catch (EOFException e) {
                throw damaged(e);
            } catch (ZipException e) {
                if (raw.hasEnded()) { // a file that is in the zip as it is
                    throw new PackedProblem(Problem.of(ProblemKind.PACKED_ENDS_EARLY));
                }
                throw check.isWrongInItsCheck() ? new PackedProblem(Problem.of(ProblemKind.PACKED_CHECK)) : damaged(e);
            }
        }

        private int take(byte[] into, int offset, int length) throws IOException {
            int read = in.read(into, offset, length);
            bytes += Math.max(read, 0);
            refuse(bytes > limits.bytes(), ProblemKind.PACKED_TOO_LARGE, limits.bytes());
            refuse(
                    bytes > limits.free() && bytes > limits.times() * Math.max(raw.bytes(), 1),
                    ProblemKind.PACKED_TOO_DENSE,
                    limits.times());
            return read;
        }

        /** Reads an entry that is not wanted to its end. */
        void pass() throws IOException {
            byte[] piece = new byte[PIECE];
            try {
                int read;
                do {
                    read = take(piece, 0, PIECE);
                } while (read >= 0);
            } catch (ZipException | EOFException e) {
                throw damaged(e);
            }
        }

        @Override
        public void close() {
            // What was handed in is closed by whoever opened it.
        }
    }

    /** One file of a zip; at its end any other file is told, unless this one was asked for. */
    private static final class Only extends InPieces {
        private final Bounded text;
        private final Zip zip;
        private final boolean alone;
        private final List<String> names;
        private boolean ended;

        Only(Bounded text, Zip zip, boolean alone, List<String> names) {
            super(text);
            this.text = text;
            this.zip = zip;
            this.alone = alone;
            this.names = names;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int read = ended ? -1 : text.read(into, offset, length);
            if (read < 0 && !ended) {
                ended = true;
                if (alone) {
                    others();
                }
            }
            return read;
        }

        private void others() throws IOException {
            try {
                for (ZipEntry next = next(); next != null; next = next()) {
                    if (isFile(next)) {
                        names.add(next.getName());
                    }
                    refuse(names.size() > text.limits.entries(), ProblemKind.PACKED_TOO_MANY, text.limits.entries());
                    text.pass();
                }
            } catch (PackedProblem e) {
                refuseSeveral(e.leavesText() && names.size() > 1);
                throw e;
            }
            refuseSeveral(names.size() > 1);
            if (text.raw.hasEnded()) { // before the list of its files began: nobody knows whether there were others
                throw new PackedProblem(Problem.of(ProblemKind.PACKED_ENDS_EARLY));
            }
        }

        private @Nullable ZipEntry next() throws IOException {
            try {
                return zip.getNextEntry();
            } catch (EOFException e) { // within the name of another
                refuseSeveral(true);
                throw damaged(e);
            } catch (ZipException | IllegalArgumentException e) {
                throw damaged(e);
            }
        }

        private void refuseSeveral(boolean several) throws PackedProblem {
            refuse(several, ProblemKind.PACKED_SEVERAL, List.copyOf(few(names)));
        }
    }
}
