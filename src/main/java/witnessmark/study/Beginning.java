package witnessmark.study;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Zone;
import witnessmark.ledger.ReadingSeries;
import witnessmark.quantity.Moment;

/**
 * Where readings of one place begin anew: at a reading that was marked as baseline, or with a build that opened what the
 * readings are of, whichever came last. A valve's lash goes on from its baseline whatever was opened: only setting it makes
 * it new, and that is a new baseline.
 *
 * @param build the build, or null when it was a baseline or nothing
 * @param at from when on readings count; null for all
 */
record Beginning(@Nullable Entry<Build> build, @Nullable Moment at) {
    /** Opening any of these makes what was read before another engine's, as far as that kind goes. */
    private static Set<Zone> anew(ReadingKind kind) {
        return switch (kind) {
            case LEAK_DOWN, COMPRESSION -> Set.of(Zone.HEAD, Zone.BOTTOM_END);
            case OIL_PRESSURE -> Set.of(Zone.SUMP, Zone.BOTTOM_END);
            default -> Set.of();
        };
    }

    /** @param builds of the engine that are closed, or none for a part's readings */
    static Beginning of(ReadingSeries series, List<Entry<Build>> builds) {
        Moment baseline = series.readings().stream()
                .map(Entry::fact)
                .filter(Reading::baseline)
                .map(Reading::at)
                .max(Comparator.naturalOrder())
                .orElse(null);
        Set<Zone> zones = anew(series.kind());
        Entry<Build> last = builds.stream()
                .filter(build -> build.fact().zones().stream().anyMatch(zones::contains))
                .max(Comparator.comparing(build -> closed(build)))
                .orElse(null);
        return last == null || baseline != null && !baseline.isBefore(closed(last))
                ? new Beginning(null, baseline)
                : new Beginning(last, closed(last));
    }

    private static Moment closed(Entry<Build> build) {
        return Objects.requireNonNull(build.fact().closed());
    }

    boolean counts(Reading reading) {
        return at == null || !reading.at().isBefore(at);
    }
}
