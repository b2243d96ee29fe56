package witnessmark.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Reading;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Moment;

/** How long oil had been in an engine when a sample was taken. What wears by itself collects until the oil is changed. */
final class OnTheOil {
    private final List<Moment> changes = new ArrayList<>();
    private final ToDoubleFunction<Moment> hoursAt;

    /** @param hoursAt what the engine had run by a moment */
    OnTheOil(LifeLedger ledger, ReadOn on, ToDoubleFunction<Moment> hoursAt) {
        this.hoursAt = hoursAt;
        for (Entry<Work> work : ledger.facts().of(Work.class).where(work -> change(work, on))) {
            changes.add(work.fact().at());
        }
        for (Entry<Build> build : on.builds()) {
            Moment closed = build.fact().closed();
            if (closed != null && build.fact().zones().contains(Zone.SUMP)) {
                changes.add(closed); // a sump that came off was empty
            }
        }
        changes.sort(Comparator.naturalOrder());
    }

    private static boolean change(Work work, ReadOn on) {
        return work.kind() == WorkKind.OIL_CHANGE && work.result() == WorkResult.DONE && on.is(work.engine());
    }

    /** Hours on the oil; 0 when no change before it is known or it had not run since. */
    double hours(Reading sample) {
        return changes.stream()
                .filter(change -> change.isBefore(sample.at()))
                .reduce((one, other) -> other)
                .map(change -> Math.max(0, hoursAt.applyAsDouble(sample.at()) - hoursAt.applyAsDouble(change)))
                .orElse(0.0);
    }
}
