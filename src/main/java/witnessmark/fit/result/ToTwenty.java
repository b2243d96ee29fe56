package witnessmark.fit.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Metal;
import witnessmark.quantity.Temperature;

/**
 * What brings a size that was read at another temperature to 20 °C, or what nobody wrote down to do so.
 *
 * @param at how warm part and gauge were; null where nobody wrote it down
 * @param metal what the part is made of; null where nobody wrote it down
 * @param by what is added to the figure as read, in nanometres; 0 while something is not known
 * @param halfWidth how far that may be out, either way, in nanometres
 * @param alpha linear expansion of the metal, in one for each kelvin; 0 while it is not known
 * @param gauge that of the gauge
 */
public record ToTwenty(
        @Nullable Temperature at, @Nullable Metal metal, long by, long halfWidth, double alpha, double gauge) {
    /** Whether it would matter, and what it takes is not known. */
    public boolean lacks() {
        return at == null || metal == null;
    }
}
