package witnessmark.logbook.measuring;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.MarkReading;
import witnessmark.fit.result.RodLoad;
import witnessmark.fit.result.SpeedAnswer;
import witnessmark.fit.result.WhatIf;

/**
 * An engine's fit at speed as worked out of a build sheet.
 *
 * @param build which build
 * @param engine of which engine
 * @param whatIf what is tried on it
 * @param answer the fit, with what is tried
 * @param squish crown to head at rest, with what is tried; null where it is not worked out
 * @param ratio compression ratio at rest, with what is tried; null where it is not worked out
 * @param loads what the rod bolts hold, at the red line, the highest speed seen and every over-rev
 * @param overRevs how many of the loads, the last ones, are of over-revs
 * @param marks what the marks at the crowns fit, or null where too few are read
 */
public record SpeedPage(
        Entry<Build> build,
        Entry<Engine> engine,
        WhatIf whatIf,
        SpeedAnswer answer,
        @Nullable Answer squish,
        @Nullable Answer ratio,
        List<RodLoad> loads,
        int overRevs,
        @Nullable MarkReading marks) {
    public SpeedPage {
        loads = List.copyOf(loads);
    }
}
