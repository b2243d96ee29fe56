package witnessmark.trace.packed;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.InPieces;

/**
 * A text that may have been packed, as far as it could be unpacked: where it is cut short, or its check does not fit, it ends,
 * and {@link #flaw} says so. Whatever else is wrong with what is packed is thrown as ever.
 */
public final class UpToTheCut extends InPieces {
    private @Nullable Problem flaw;

    /** @param in as {@link Packed#open} gave it */
    public UpToTheCut(InputStream in) {
        super(in);
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        if (flaw != null) {
            return -1;
        }
        try {
            return in.read(into, offset, length);
        } catch (PackedProblem e) {
            if (!e.leavesText()) {
                throw e;
            }
            flaw = e.problem();
            return -1;
        }
    }

    /** What was wrong where the text ended; empty as long as it goes on, and when nothing was. */
    public Optional<Problem> flaw() {
        return Optional.ofNullable(flaw);
    }

    /** Whether it ended before its end: what follows is missing. */
    public boolean isCut() {
        return is(ProblemKind.PACKED_ENDS_EARLY);
    }

    /** Whether all of it was read, and is not what was packed. */
    public boolean isSuspect() {
        return is(ProblemKind.PACKED_CHECK);
    }

    private boolean is(ProblemKind kind) {
        return flaw != null && flaw.kind() == kind;
    }
}
