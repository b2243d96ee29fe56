package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.ledger.result.Point;
import witnessmark.quantity.Moment;

/** A life as it grew, for a line over time. */
final class Growth {
    private Growth() {}

    /** A point for each charge that counts, at the moment its entry was over. */
    static List<Point> of(Account account) {
        List<Charge> charges = account.charges().stream()
                .filter(charge -> charge.counted() == Counted.YES)
                .sorted(Comparator.comparing(Growth::over))
                .toList();
        List<Point> points = new ArrayList<>(charges.size());
        long lowest = 0;
        long likely = 0;
        long highest = 0;
        for (Charge charge : charges) {
            lowest = Math.addExact(lowest, charge.lowest());
            likely = Math.addExact(likely, charge.amount());
            highest = Math.addExact(highest, charge.highest());
            points.add(new Point(over(charge), lowest, likely, highest, charge.source()));
        }
        return List.copyOf(points);
    }

    private static Moment over(Charge charge) {
        if (charge.source().fact() instanceof Run run) {
            return run.back();
        }
        return charge.source().fact() instanceof ToldRunning told ? told.to() : charge.at();
    }
}
