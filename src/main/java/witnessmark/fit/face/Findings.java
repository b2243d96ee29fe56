package witnessmark.fit.face;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.fit.result.face.Comeback;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.LowZone;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.fit.result.face.ZoneFinding.State;
import witnessmark.quantity.Length;

/** Holds the low zones of a look against the looks before it. */
public final class Findings {
    /** Within so many running hours of a skim a zone seen again is coming back (common practice, no source). */
    public static final double COMING_BACK_HOURS = 15;

    private Findings() {}

    /**
     * A look as it is held against others.
     *
     * @param points what was measured
     * @param finest step of what it was measured with
     */
    public record Look(List<LowPoint> points, Length finest) {
        public Look {
            points = List.copyOf(points);
        }
    }

    /**
     * What was run between two moments.
     *
     * @param hours running hours, or null when not known
     * @param cycles heat cycles, or null when not known
     */
    public record Run(@Nullable Double hours, @Nullable Long cycles) {}

    /**
     * What lies before a look.
     *
     * @param beforeSkim looks before the last skim, the earliest first; all earlier looks when there was none
     * @param sinceSkim looks between that skim and this one, the earliest first
     * @param skimmed whether there was a skim
     * @param flatAfter how flat the face was left by it, or null
     * @param run what was run since the skim, or since the last look when there was none
     * @param limit how deep a low place may be, or null
     */
    public record Past(
            List<Look> beforeSkim,
            List<Look> sinceSkim,
            boolean skimmed,
            @Nullable Length flatAfter,
            Run run,
            @Nullable Length limit) {
        public Past {
            beforeSkim = List.copyOf(beforeSkim);
            sinceSkim = List.copyOf(sinceSkim);
        }
    }

    /** One finding for each low zone, the worst first. */
    public static List<ZoneFinding> of(Face face, Look now, Past past) {
        return Zones.of(face, now.points()).stream()
                .map(zone -> finding(face, now, zone, past))
                .sorted(Comparator.comparing(ZoneFinding::state))
                .toList();
    }

    private static ZoneFinding finding(Face face, Look now, LowZone zone, Past past) {
        LowZone before = last(face, past.beforeSkim(), zone);
        LowZone since = last(face, past.sinceSkim(), zone);
        Comeback comeback = comeback(face, now, zone, past);
        if (past.beforeSkim().isEmpty() && past.sinceSkim().isEmpty()) {
            return new ZoneFinding(zone, State.FIRST_LOOK, null, comeback);
        }
        if (before == null && since == null) {
            return new ZoneFinding(zone, State.NEW, null, comeback);
        }
        if (!past.skimmed() || before == null) {
            return new ZoneFinding(zone, State.STILL, since == null ? before : since, comeback);
        }
        Double hours = past.run().hours();
        boolean soon = hours != null && hours < COMING_BACK_HOURS;
        return new ZoneFinding(zone, soon ? State.COMING_BACK : State.AGAIN, before, comeback);
    }

    private static @Nullable LowZone last(Face face, List<Look> looks, LowZone zone) {
        LowZone found = null;
        for (Look look : looks) {
            for (LowZone each : Zones.of(face, look.points())) {
                found = Zones.same(face, each, zone) ? each : found;
            }
        }
        return found;
    }

    /** From what was there first after the skim, else from what the skim left, else from the look before. */
    private static @Nullable Comeback comeback(Face face, Look now, LowZone zone, Past past) {
        List<Look> looks = past.skimmed() ? past.sinceSkim() : past.beforeSkim();
        Length from = looks.isEmpty() ? null : there(looks.get(past.skimmed() ? 0 : looks.size() - 1), zone, face);
        if (from == null && past.skimmed()) {
            from = past.flatAfter() == null ? new Length(0) : past.flatAfter();
        }
        return from == null
                ? null
                : Comebacks.of(
                        from,
                        zone.deepest().depth(),
                        now.finest(),
                        past.run().hours(),
                        past.run().cycles(),
                        past.limit());
    }

    /** What was read where the zone is deepest, or next to it; null where nothing was. */
    private static @Nullable Length there(Look look, LowZone zone, Face face) {
        return face.nearest(zone.deepest(), look.points()).map(LowPoint::depth).orElse(null);
    }
}
