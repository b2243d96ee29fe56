package witnessmark.desktop.find;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Facts;

/** The index of the newest revision, kept until the next. Asked off the event thread. */
final class IndexOfLatest {
    private final Supplier<Facts> facts;
    private final ReadRecords read;
    private @Nullable Facts indexed;
    private @Nullable RecordIndex index;

    IndexOfLatest(Supplier<Facts> facts, ReadRecords read) {
        this.facts = facts;
        this.read = read;
    }

    synchronized RecordIndex now() {
        Facts newest = facts.get();
        RecordIndex kept = index;
        if (kept == null || newest != indexed) {
            kept = read.of(newest);
            index = kept;
            indexed = newest;
        }
        return kept;
    }
}
