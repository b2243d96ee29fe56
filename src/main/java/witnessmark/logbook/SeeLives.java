package witnessmark.logbook;

import java.util.List;
import java.util.Optional;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** The life of an engine or a part, by every counter that runs feed, and the entries behind each figure. */
public final class SeeLives {
    private SeeLives() {}

    /** One life for each counter, in the order of {@link Counter}. */
    public static List<Life> of(View view, Subject subject) {
        return Counter.fedByRuns().stream()
                .map(counter -> of(view, subject, counter))
                .toList();
    }

    public static Life of(View view, Subject subject, Counter counter) {
        return subject.fold(
                engine -> view.ledger().engineLife(engine, counter),
                part -> view.ledger().life(part, counter));
    }

    /** When the first entry happened, if that is after the day looked at, so that nothing is known of it yet. */
    public static Optional<Moment> firstEntry(View view, Subject subject) {
        return subject.fold(
                engine -> view.ledger().firstEngineEntry(engine),
                part -> view.ledger().firstEntry(part));
    }

    /** Every entry behind a figure. */
    public static Account account(View view, Subject subject, Counter counter) {
        return subject.fold(
                engine -> view.ledger().engineAccount(engine, counter),
                part -> view.ledger().account(part, counter));
    }
}
