package witnessmark.ledger;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.quantity.Moment;

/** From when to when an engine is on the bench for a build, and what belongs to it: what names it, or fell into it. */
record BuildSpan(Entry<Build> build, Moment from, Moment to) {
    /** Up to the ledger's day where the build goes on then. */
    static BuildSpan of(LifeLedger ledger, Entry<Build> build) {
        Moment last = ledger.asOf().last();
        Moment closed = build.fact().closed();
        return new BuildSpan(build, build.fact().opened(), closed == null || last.isBefore(closed) ? last : closed);
    }

    /** Whether a part was taken out of the engine in this build. */
    boolean tookOut(Fitment fitment) {
        return ofEngine(fitment) && holds(fitment.buildOut(), fitment.to());
    }

    /** Whether a part was fitted to the engine in this build. */
    boolean fitted(Fitment fitment) {
        return ofEngine(fitment) && holds(fitment.buildIn(), fitment.from());
    }

    boolean tightened(Joint joint) {
        return joint.engine().equals(build.fact().engine()) && holds(joint.build(), joint.at());
    }

    private boolean ofEngine(Fitment fitment) {
        return Objects.equals(build.fact().engine(), fitment.engine());
    }

    private boolean holds(@Nullable Id<Build> named, @Nullable Moment at) {
        boolean within = at != null && !at.isBefore(from) && !at.isAfter(to);
        return named == null ? within : named.equals(build.id()) && at != null && !at.isAfter(to);
    }
}
