package witnessmark.logbook.trends;

import java.util.List;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.study.result.KindTrends;

/**
 * Where the readings of an engine are going.
 *
 * @param engine which one
 * @param kinds its own and those of the parts in it, what asks for most first; at least one
 */
public record EngineTrends(Entry<Engine> engine, List<KindTrends> kinds) {
    public EngineTrends {
        kinds = List.copyOf(kinds);
    }
}
