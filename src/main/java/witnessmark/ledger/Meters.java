package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.MeterReading;
import witnessmark.domain.Part;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.ledger.result.MeterStretch.Finding;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * Hour meters held against the logbook. A meter is charged the runs of its car like any other part of it; from one
 * reading to the next its face must have moved by as much. Two readings of a face with tenths of an hour may be a tenth
 * off, and an engine turns over a little outside its logged runs: a tenth of an hour and a twentieth of what was logged
 * are let pass (our own choice).
 */
public final class Meters {
    private static final long TENTH_OF_AN_HOUR = 360_000;
    private static final int SHARE = 20;

    private final LifeLedger ledger;

    public Meters(LifeLedger ledger) {
        this.ledger = ledger;
    }

    /** Every stretch of every meter by the day of the ledger, meter by meter in the order of time. */
    public List<MeterStretch> all() {
        Map<Id<Part>, List<Entry<MeterReading>>> byMeter =
                ledger
                        .facts()
                        .of(MeterReading.class)
                        .where(reading -> ledger.asOf().counts(reading.at()))
                        .stream()
                        .collect(Collectors.groupingBy(reading -> reading.fact().meter()));
        return byMeter.entrySet().stream()
                .flatMap(each ->
                        stretches(
                                ledger.facts()
                                        .of(Part.class)
                                        .find(each.getKey())
                                        .orElseThrow(),
                                each.getValue())
                                .stream())
                .sorted(Comparator.comparing(
                                (MeterStretch stretch) -> stretch.meter().fact().mark())
                        .thenComparing(stretch -> stretch.meter().id())) // within a meter they stay in time
                .toList();
    }

    private List<MeterStretch> stretches(Entry<Part> meter, List<Entry<MeterReading>> written) {
        List<Entry<MeterReading>> readings = written.stream()
                .sorted(Comparator.comparingLong(
                                (Entry<MeterReading> each) -> each.fact().at().epochMillis())
                        .thenComparing(Entry::id))
                .toList();
        List<Charge> charges = ledger.account(meter.id(), Counter.RUNNING).charges();
        List<MeterStretch> stretches = new ArrayList<>();
        for (int i = 1; i < readings.size(); i++) {
            stretches.add(stretch(meter, readings.get(i - 1), readings.get(i), charges));
        }
        return stretches;
    }

    private MeterStretch stretch(
            Entry<Part> meter, Entry<MeterReading> from, Entry<MeterReading> to, List<Charge> charges) {
        long lowest = 0;
        long highest = 0;
        int runs = 0;
        for (Charge charge : charges) {
            boolean within = charge.at().isAfter(from.fact().at())
                    && !charge.at().isAfter(to.fact().at());
            if (within && charge.fitment() != null && charge.counted() == Counted.YES) {
                lowest += charge.lowest();
                highest += charge.highest();
                runs++;
            }
        }
        long shown = to.fact().shows().millis() - from.fact().shows().millis();
        boolean fitted = fitted(meter.id(), from.fact().at(), to.fact().at());
        return new MeterStretch(meter, from, to, shown, lowest, highest, runs, finding(shown, lowest, highest, fitted));
    }

    private boolean fitted(Id<Part> meter, Moment from, Moment to) {
        return ledger.stays(meter).stream()
                .anyMatch(stay -> stay.from().isBefore(to)
                        && (stay.to() == null || stay.to().isAfter(from)));
    }

    private static Finding finding(long shown, long lowest, long highest, boolean fitted) {
        if (shown < 0) {
            return Finding.BACKWARDS;
        }
        if (!fitted) {
            return shown == 0 ? Finding.AGREE : Finding.NOT_FITTED;
        }
        if (shown < lowest - TENTH_OF_AN_HOUR - lowest / SHARE) {
            return Finding.STOOD_STILL;
        }
        return shown > highest + TENTH_OF_AN_HOUR + highest / SHARE ? Finding.NOT_LOGGED : Finding.AGREE;
    }
}
