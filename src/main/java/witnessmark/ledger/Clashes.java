package witnessmark.ledger;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.ledger.result.Clash;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Gathers what the checks find. */
final class Clashes {
    private final List<Clash> all = new ArrayList<>();

    /** Notes a problem with an entry; the facts are in the order its kind states. */
    void add(Entry<?> entry, ProblemKind kind, Object... facts) {
        all.add(new Clash(entry, null, Problem.of(kind, facts)));
    }

    /** The same where one part of the entry is wrong, by the name its record has for it. */
    void addIn(Entry<?> entry, String field, ProblemKind kind, Object... facts) {
        all.add(new Clash(entry, field, Problem.of(kind, facts)));
    }

    List<Clash> all() {
        return List.copyOf(all);
    }
}
