package witnessmark.store;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;

/** Looks entries up whose kind is only known when running. */
final class Entries {
    private Entries() {}

    /** The entry that this one replaces. */
    @SuppressWarnings("unchecked") // an entry's fact is of the kind its id stands for
    static <F extends Fact> Optional<Entry<F>> find(Facts facts, Entry<F> entry) {
        return facts.of((Class<F>) entry.fact().getClass()).find(entry.id());
    }

    static <F extends Fact> Optional<Entry<F>> find(Facts facts, Class<F> kind, UUID id) {
        return facts.of(kind).find(new Id<>(id));
    }

    /** The fact referred to, or null when nothing is, or nothing is known of it. */
    static <F extends Fact> @Nullable F fact(Facts facts, Class<F> kind, @Nullable Id<F> id) {
        return id == null ? null : facts.of(kind).find(id).map(Entry::fact).orElse(null);
    }
}
