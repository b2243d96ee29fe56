package witnessmark.desktop.find;

import java.time.LocalDate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Facts;

/** The index of the newest revision as of today, kept until either is another. Asked off the event thread. */
final class IndexOfLatest {
    private final Supplier<Facts> facts;
    private final Supplier<LocalDate> today;
    private final ReadRecords read;
    private @Nullable Facts indexed;
    private @Nullable LocalDate day;
    private @Nullable RecordIndex index;

    IndexOfLatest(Supplier<Facts> facts, Supplier<LocalDate> today, ReadRecords read) {
        this.facts = facts;
        this.today = today;
        this.read = read;
    }

    synchronized RecordIndex now() {
        Facts newest = facts.get();
        LocalDate now = today.get();
        RecordIndex kept = index;
        if (kept == null || newest != indexed || !now.equals(day)) {
            kept = read.of(newest, now);
            index = kept;
            day = now;
            indexed = newest;
        }
        return kept;
    }
}
