package witnessmark.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** The entries that take a change back. It reads amendments only; writing its entries makes new ones. */
final class Opposite {
    private Opposite() {}

    /**
     * @param facts everything as it stands
     * @param amendments those of the change to take back
     * @param why the words of that change, the reason new records are struck out with
     */
    static Outcome<List<Entry<?>>> of(Facts facts, List<Amendment> amendments, String why) {
        List<Entry<?>> entries = new ArrayList<>();
        for (int i = amendments.size() - 1; i >= 0; i--) {
            Amendment amendment = amendments.get(i);
            RecordType<?> type = RecordTypes.named(amendment.table()).orElseThrow();
            Outcome<Entry<?>> opposite = opposite(type, facts, amendment, why);
            if (!opposite.didWork()) {
                return Outcome.didNot(opposite.problems());
            }
            entries.add(opposite.orThrow());
        }
        return Outcome.worked(entries);
    }

    private static <F extends Fact> Outcome<Entry<?>> opposite(
            RecordType<F> type, Facts facts, Amendment amendment, String why) {
        Entry<F> now = facts.of(type.kind()).find(new Id<F>(amendment.record())).orElseThrow();
        Map<String, @Nullable Object> image = EntryImage.of(now);
        for (Map.Entry<String, @Nullable Object> after : amendment.after().entrySet()) {
            if (!Objects.equals(image.get(after.getKey()), after.getValue())) {
                String known = now.fact().knownAs();
                return Outcome.didNot(Problem.of(
                        ProblemKind.CHANGED_MEANWHILE,
                        type.name(),
                        known == null ? now.id().text() : known));
            }
        }
        if (amendment.makes()) {
            return Outcome.worked(new Entry<>(now.id(), now.fact(), Standing.STRUCK_OUT, why, now.rev() + 1));
        }
        image.putAll(amendment.before());
        return Outcome.worked(EntryImage.entry(type, amendment.record(), image, now.rev() + 1));
    }
}
