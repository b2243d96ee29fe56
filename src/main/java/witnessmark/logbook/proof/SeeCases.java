package witnessmark.logbook.proof;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.study.cases.Across;
import witnessmark.study.cases.Common;
import witnessmark.study.result.InCommon;
import witnessmark.study.result.ReadAcross;

/** Sees incidents beside each other and beside the other engines. */
public final class SeeCases {
    private SeeCases() {}

    /**
     * What two or more share.
     *
     * @throws IllegalArgumentException for fewer than two, or one named twice
     */
    public static InCommon common(View view, List<Entry<Incident>> incidents) {
        return new Common(view.ledger()).of(incidents);
    }

    /** Which other engines carry what failed in one. */
    public static List<ReadAcross> across(View view, Entry<Incident> incident) {
        return new Across(view.ledger()).of(incident);
    }
}
