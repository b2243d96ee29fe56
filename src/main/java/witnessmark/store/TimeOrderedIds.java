package witnessmark.store;

import com.fasterxml.uuid.Generators;
import com.fasterxml.uuid.impl.TimeBasedEpochGenerator;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.logbook.port.Ids;

/** Identities that sort by the time they were made: UUIDs of version 7 (RFC 9562, section 5.7). */
public final class TimeOrderedIds implements Ids {
    private final TimeBasedEpochGenerator generator = Generators.timeBasedEpochGenerator();

    @Override
    public <F extends Fact> Id<F> next() {
        return new Id<>(generator.generate());
    }
}
