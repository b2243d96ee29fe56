package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * One part, or one set that is fitted and counted together.
 *
 * @param mark serial or the mark the team gave it; unique
 * @param design what it is
 * @param batch maker's batch, empty when not known
 * @param supplier whom it came from
 * @param boughtOn or null when not known
 * @param madeOn or null when not known
 * @param useBy printed date that no plan may pass, or null
 * @param ofSet the set it was split from, or null
 * @param memberMark which member of that set it was, or null
 * @param splitAt when it was split; to then it carries the set's life
 * @param note anything else
 */
public record Part(
        String mark,
        Id<PartDesign> design,
        String batch,
        String supplier,
        @Nullable LocalDate boughtOn,
        @Nullable LocalDate madeOn,
        @Nullable LocalDate useBy,
        @Nullable Id<Part> ofSet,
        @Nullable String memberMark,
        @Nullable Moment splitAt,
        String note)
        implements Fact {
    public Part {
        if ((ofSet == null) != (splitAt == null) || (ofSet == null) != (memberMark == null)) {
            throw new IllegalArgumentException("a part split from a set names the set, the member and the moment");
        }
    }

    @Override
    public String knownAs() {
        return mark;
    }
}
