package witnessmark.logbook.shelf;

import java.util.List;
import witnessmark.ledger.Meters;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.logbook.View;

/** Sees every hour meter held against the logbook on the day looked at. Reads only. */
public final class SeeMeters {
    private SeeMeters() {}

    /** Every stretch from reading to reading, meter by meter in the order of time. */
    public static List<MeterStretch> of(View view) {
        return new Meters(view.ledger()).all();
    }
}
