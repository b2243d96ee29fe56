package witnessmark.desktop.form;

import org.jspecify.annotations.Nullable;

/**
 * What a life strip draws, all three in the same unit, whichever it is.
 *
 * @param ran run so far, 0 or more; {@code null} when it is not known
 * @param adds what the run or event adds, 0 or more
 * @param limit the limit, more than 0; {@code null} when there is none
 */
public record Life(
        @Nullable Double ran, double adds, @Nullable Double limit) {
    public Life {
        if ((ran != null && !(ran >= 0)) || !(adds >= 0) || (limit != null && !(limit > 0))) {
            throw new IllegalArgumentException("cannot be drawn: ran " + ran + ", adds " + adds + ", limit " + limit);
        }
    }

    public static Life of(double ran, double adds, double limit) {
        return new Life(ran, adds, limit);
    }

    /** No limit, or running not known: drawn as a dashed outline, never as an empty bar. */
    public static Life notKnown() {
        return new Life(null, 0, null);
    }

    public boolean isKnown() {
        return ran != null && limit != null;
    }
}
