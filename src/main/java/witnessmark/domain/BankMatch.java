package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Money;

/**
 * A line of a bank statement and what it pays for.
 *
 * @param bank which line of the statement
 * @param cost the cost it pays, or pays back, or null
 * @param income the income it is, or null
 * @param amount how much of the line belongs to it; below nothing for what went out
 */
public record BankMatch(
        Id<BankLine> bank,
        @Nullable Id<CostLine> cost,
        @Nullable Id<IncomeLine> income,
        Money amount) implements Fact {
    public BankMatch {
        if ((cost == null) == (income == null)) {
            throw new IllegalArgumentException("a line of a statement is matched with one cost or one income");
        }
    }
}
