package witnessmark.logbook.port;

import witnessmark.domain.Fact;
import witnessmark.domain.Id;

/** Gives new identities, each later than the last. */
public interface Ids {
    <F extends Fact> Id<F> next();
}
