package witnessmark.study.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.quantity.RunningTime;

/**
 * Another engine that carries what failed, or was put together alike.
 *
 * @param engine which engine
 * @param aspect in what it is alike: a design, a batch, a tool
 * @param what as people call it
 * @param parts the parts it is about, none for a tool
 * @param ran what the oldest of them has run, or what has run since the tool was used; null where nobody knows
 */
public record ReadAcross(
        Entry<Engine> engine,
        Aspect aspect,
        String what,
        List<Entry<Part>> parts,
        @Nullable RunningTime ran) {
    public ReadAcross {
        parts = List.copyOf(parts);
    }
}
