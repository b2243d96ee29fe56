package witnessmark.logbook.bank;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.BankLine;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.IncomeLine;
import witnessmark.quantity.Money;

/**
 * A statement held against the logbook.
 *
 * @param lines every line of it in the order of its days
 * @param costs costs in cash that no line pays, in the order of their days
 * @param income income that is on no line, in the order of its days
 */
public record Reconciled(List<Line> lines, List<Entry<CostLine>> costs, List<Entry<IncomeLine>> income) {
    public Reconciled {
        lines = List.copyOf(lines);
        costs = List.copyOf(costs);
        income = List.copyOf(income);
    }

    /**
     * A line of the statement.
     *
     * @param bank the line
     * @param left what of it is matched with nothing yet
     * @param cost the cost it most likely pays or pays back, or null
     * @param earning the income it most likely is, or null
     */
    public record Line(
            Entry<BankLine> bank,
            Money left,
            @Nullable Entry<CostLine> cost,
            @Nullable Entry<IncomeLine> earning) {
        /** Whether nobody has to look at it any more. */
        public boolean settled() {
            return left.isNone() || !bank.fact().aside().isBlank();
        }

        /** Whether there is something to propose. */
        public boolean proposed() {
            return cost != null || earning != null;
        }
    }
}
