package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A maker's notice about parts of a batch.
 *
 * @param number the maker's number or the title
 * @param maker who sent it
 * @param dated its date
 * @param design which part design, or null when it names the batch alone
 * @param batch which batch; empty for all of the design
 * @param marks serials, parted by semicolons; empty for all of the batch
 * @param asks what is to be done
 * @param holds whether such a part must not run before that
 * @param note anything else
 */
public record Notice(
        String number,
        String maker,
        LocalDate dated,
        @Nullable Id<PartDesign> design,
        String batch,
        String marks,
        String asks,
        boolean holds,
        String note)
        implements Fact {
    public Notice {
        if (design == null && batch.isBlank() && marks.isBlank()) {
            throw new IllegalArgumentException("a notice names a design, a batch or serials");
        }
        if (number.isBlank()) {
            throw new IllegalArgumentException("a notice has a number or a title");
        }
    }

    @Override
    public String knownAs() {
        return number;
    }
}
