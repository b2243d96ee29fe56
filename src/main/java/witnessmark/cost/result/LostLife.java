package witnessmark.cost.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.CostLine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/**
 * A price already counted, split by the life its part had run: never added to anything.
 *
 * @param line the cost whose price it is
 * @param part whose life
 * @param price what was paid
 * @param ran what it had run, or null when not known
 * @param limit what it was limited to, or null when not known
 * @param used the part of the price that life was used for, or null when that cannot be said
 * @param lost the part of the price that was not used, or null when that cannot be said
 */
public record LostLife(
        Id<CostLine> line,
        Id<Part> part,
        Money price,
        @Nullable RunningTime ran,
        @Nullable RunningTime limit,
        @Nullable Money used,
        @Nullable Money lost) {}
