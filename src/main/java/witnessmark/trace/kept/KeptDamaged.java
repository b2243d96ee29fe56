package witnessmark.trace.kept;

import java.io.IOException;

/** Kept samples are not as they were written. */
public final class KeptDamaged extends IOException {
    KeptDamaged(String what) {
        super(what);
    }
}
