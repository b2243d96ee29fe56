package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

/**
 * A face looked at or measured once.
 *
 * @param part head, gasket or block
 * @param face which face of it
 * @param at when
 * @param method how
 * @param finest the finest step of what it was measured with, above 0; no figure of it is finer
 * @param tool with what, or null when not said
 * @param by by whom
 * @param note anything else
 */
public record FaceLook(
        Id<Part> part,
        FaceKind face,
        Moment at,
        FaceMethod method,
        Length finest,
        @Nullable Id<Tool> tool,
        String by,
        String note)
        implements Fact {
    public FaceLook {
        if (finest.nanometres() <= 0) {
            throw new IllegalArgumentException("what a face is measured with has a step above 0");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
