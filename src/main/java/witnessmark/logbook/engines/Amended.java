package witnessmark.logbook.engines;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.image.EntryImage;

/**
 * One change of an entry.
 *
 * @param at when it was written
 * @param who who wrote it
 * @param why the reason given, or what was done
 * @param makes whether this wrote the entry for the first time
 * @param fields what it changed; empty when it wrote the entry
 */
public record Amended(Instant at, String who, String why, boolean makes, List<Field> fields) {
    public Amended {
        fields = List.copyOf(fields);
    }

    /**
     * One field changed.
     *
     * @param name as the fact's record spells it, or one of those every entry has ({@link EntryImage#STANDING})
     * @param before its value before, null when it was empty; of a reference the name people know it by
     * @param after its value after, null when it was emptied
     */
    public record Field(
            String name, @Nullable Object before, @Nullable Object after) {}
}
