package witnessmark.cost.result;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Season;

/**
 * The days of a season.
 *
 * @param name what it is called
 * @param first its first day
 * @param last its last day
 * @param season the entry that says so, or null for a calendar year
 */
public record SeasonSpan(
        String name,
        LocalDate first,
        LocalDate last,
        @Nullable Id<Season> season) {
    /** Whether a day falls in it. */
    public boolean has(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }
}
