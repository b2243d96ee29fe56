package witnessmark.cost.result;

import witnessmark.domain.CostLine;
import witnessmark.domain.Id;
import witnessmark.quantity.Money;

/**
 * A cost that is in no total: it is in another currency and nobody wrote down the rate of its day.
 *
 * @param line which cost
 * @param amount what is missing from the totals
 */
public record NoRate(Id<CostLine> line, Money amount) {}
