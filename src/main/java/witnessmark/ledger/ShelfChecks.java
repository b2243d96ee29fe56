package witnessmark.ledger;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Notice;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.Tool;
import witnessmark.outcome.ProblemKind;

/** Items taken from a shelf that does not hold them, tools used when they should not be, notices that mean nobody. */
final class ShelfChecks {
    private final Surroundings around;
    private final Clashes clashes;

    ShelfChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    /** A move that leaves less than nothing then or later; a move that went away is checked by the guards alone. */
    void checkMove(Entry<StockMove> entry) {
        Id<StockBatch> stock = entry.fact().stock();
        List<Entry<StockMove>> moves =
                around.facts.of(StockMove.class).where(move -> move.stock().equals(stock));
        List<Entry<StockMove>> inOrder = moves.stream()
                .sorted(Comparator.comparingLong(
                                (Entry<StockMove> move) -> move.fact().at().epochMillis())
                        .thenComparing(move -> -move.fact().change()))
                .toList();
        int held = 0;
        for (Entry<StockMove> move : inOrder) {
            int change = move.fact().change();
            if (held + change < 0
                    && !entry.fact().at().isAfter(move.fact().at())
                    && entry.fact().change() < 0) {
                clashes.add(entry, ProblemKind.STOCK_BELOW_NOTHING, around.names.batch(stock), held, -change);
                return;
            }
            held += change;
        }
    }

    /** A joint made with a tool that was out of use. */
    void checkJoint(Entry<Joint> entry) {
        Id<Tool> id = entry.fact().tool();
        Tool tool = id == null
                ? null
                : around.facts.of(Tool.class).find(id).map(Entry::fact).orElse(null);
        if (id == null || tool == null) {
            return;
        }
        LocalDate day = entry.fact().at().day();
        if (tool.outOfUse() != null && !day.isBefore(tool.outOfUse())) {
            clashes.add(entry, ProblemKind.TOOL_OUT_OF_USE, tool.mark(), tool.outOfUse(), day);
        }
    }

    /** A notice whose batch or serials nobody has. */
    void checkNotice(Entry<Notice> entry) {
        if (Notices.parts(around.facts, entry.fact()).isEmpty()) {
            clashes.add(entry, ProblemKind.NOTICE_OF_NOTHING, entry.fact().number());
        }
    }
}
