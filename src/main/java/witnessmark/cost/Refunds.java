package witnessmark.logbook.money;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.ledger.AsOf;

/** What can be asked back, and until when. */
public final class Refunds {
    private Refunds() {}

    /** Costs of which nothing was got back yet and whose last day to ask is not over, the first last day first. */
    public static List<Entry<CostLine>> open(Facts facts, AsOf asOf) {
        return facts
                .of(CostLine.class)
                .where(line -> line.refundBy() != null
                        && !line.refundBy().isBefore(asOf.day())
                        && !line.day().isAfter(asOf.day())
                        && line.recovered().isNone())
                .stream()
                .sorted(Comparator.comparing(Refunds::lastDay))
                .toList();
    }

    private static LocalDate lastDay(Entry<CostLine> line) {
        LocalDate last = line.fact().refundBy();
        return last == null ? LocalDate.MAX : last;
    }
}
