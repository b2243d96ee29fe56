package witnessmark.store;

import java.time.Duration;
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

/**
 * Which backups stay: the ten newest, the newest of each of seven days, and the newest of each of four weeks. Where one
 * is made after every saving, only the newest of each half hour or so counts among the ten, or they would reach back
 * minutes; the two newest stay whatever else.
 */
final class Thinning {
    static final int NEWEST = 10;
    private static final int ALWAYS = 2;
    static final int DAYS = 7;
    static final int WEEKS = 4;

    private final ZoneId zone;
    private final Duration apart;

    /** @param zone whose days and weeks are meant */
    Thinning(ZoneId zone) {
        this(zone, Duration.ofMillis(1));
    }

    /** @param apart of those made within one such stretch of the clock the newest alone counts among the newest */
    Thinning(ZoneId zone, Duration apart) {
        this.zone = zone;
        this.apart = apart;
    }

    /** @param made when each backup was made */
    Set<Instant> kept(Collection<Instant> made) {
        List<Instant> newestFirst =
                made.stream().distinct().sorted(Comparator.reverseOrder()).toList();
        Set<Instant> kept = new TreeSet<>(newestFirst.subList(0, Math.min(ALWAYS, newestFirst.size())));
        Set<Long> stretches = new HashSet<>();
        Set<LocalDate> days = new HashSet<>();
        Set<String> weeks = new HashSet<>();
        for (Instant instant : newestFirst) {
            long stretch = Math.floorDiv(instant.toEpochMilli(), apart.toMillis());
            if (stretches.size() < NEWEST && stretches.add(stretch)) {
                kept.add(instant);
            }
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
