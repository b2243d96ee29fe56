package witnessmark.fit.result.face;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;

/**
 * How deep the deepest low place of a face was, by the pass that took the shadow away.
 *
 * @param over deeper than this: what had come off while there still was a shadow; 0 when there was none to see
 * @param upTo not deeper than this: what had come off when it was clean; null while the shadow never went
 * @param seen whether anybody looked: without that the bounds say nothing
 */
public record CleanUp(Length over, @Nullable Length upTo, boolean seen) {}
