package witnessmark.logbook.faces;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;

/**
 * What a face may be and its part is as new.
 *
 * @param thickness of the part as new, or null when not written down
 * @param least thickness it may be skimmed to, or null
 * @param flat how far from flat it may be, or null
 */
public record FaceLimits(
        @Nullable Length thickness,
        @Nullable Length least,
        @Nullable Length flat) {}
