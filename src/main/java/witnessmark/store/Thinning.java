package witnessmark.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.IsoFields;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Which backups stay: the ten newest, the newest of each of seven days, and the newest of each of four weeks. */
final class Thinning {
    static final int NEWEST = 10;
    static final int DAYS = 7;
    static final int WEEKS = 4;

    private final ZoneId zone;

    /** @param zone whose days and weeks are meant */
    Thinning(ZoneId zone) {
        this.zone = zone;
    }

    /** @param made when each backup was made */
    Set<Instant> kept(Collection<Instant> made) {
        List<Instant> newestFirst =
                made.stream().distinct().sorted(Comparator.reverseOrder()).toList();
        Set<Instant> kept = new TreeSet<>(newestFirst.subList(0, Math.min(NEWEST, newestFirst.size())));
        Set<LocalDate> days = new HashSet<>();
        Set<String> weeks = new HashSet<>();
        for (Instant instant : newestFirst) {
            LocalDate day = LocalDate.ofInstant(instant, zone);
            if (days.size() < DAYS && days.add(day)) {
                kept.add(instant);
            }
            if (weeks.size() < WEEKS && weeks.add(week(day))) {
                kept.add(instant);
            }
        }
        return kept;
    }

    private static String week(LocalDate day) {
        return day.get(IsoFields.WEEK_BASED_YEAR) + "-" + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }
}
