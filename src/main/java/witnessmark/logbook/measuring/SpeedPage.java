package witnessmark.logbook.measuring;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.fit.WhatIf;
import witnessmark.fit.result.Answer;
import witnessmark.fit.speed.Marks;
import witnessmark.fit.speed.RodLoads;
import witnessmark.fit.speed.SpeedAnswer;

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
        List<RodLoads.Load> loads,
        int overRevs,
        Marks.@Nullable Reading marks) {
    public SpeedPage {
        loads = List.copyOf(loads);
    }
}
