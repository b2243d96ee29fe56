package witnessmark.logbook.money;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.MissedRun;
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

    /** Those of events a car is known not to go to: what has to be asked for now. */
    public static List<Entry<CostLine>> due(Facts facts, AsOf asOf) {
        return open(facts, asOf).stream()
                .filter(line -> facts
                        .of(MissedRun.class)
                        .where(missed -> missed.planned() == null
                                && missed.event().equals(line.fact().event())
                                && missed.car().equals(line.fact().car()))
                        .stream()
                        .findAny()
                        .isPresent())
                .toList();
    }

    private static LocalDate lastDay(Entry<CostLine> line) {
        LocalDate last = line.fact().refundBy();
        return last == null ? LocalDate.MAX : last;
    }
}
