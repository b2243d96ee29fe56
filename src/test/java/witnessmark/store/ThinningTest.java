package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.WeekFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ten newest, seven days, four weeks: against a table of all days and weeks made the plain way. */
class ThinningTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void what_is_kept_is_what_a_table_of_days_and_weeks_says(long seed) {
        Random random = new Random(seed);
        long longest = List.of(3_600L, 86_400L, 10 * 86_400L, 400 * 86_400L).get(random.nextInt(4));
        Set<Instant> made = new TreeSet<>();
        int count = random.nextInt(200);
        for (int i = 0; i < count; i++) {
            made.add(Instant.ofEpochSecond(1_790_000_000L - random.nextLong(longest)));
        }
        List<Instant> newestFirst = new ArrayList<>(made);
        newestFirst.sort(Comparator.reverseOrder());
        Set<Instant> expected = new TreeSet<>(newestFirst.subList(0, Math.min(10, newestFirst.size())));
        expected.addAll(newestOfNewest(made, 7, moment -> LocalDate.ofInstant(moment, ZONE)));
        expected.addAll(newestOfNewest(
                made,
                4,
                moment -> LocalDate.ofInstant(moment, ZONE)
                        .with(WeekFields.ISO.dayOfWeek(), 1))); // the Monday of its week

        assertThat(new Thinning(ZONE).kept(made)).isEqualTo(expected);
    }

    /** Thinned after every one that is made, for two years of daily use: never more than twenty-one, never the newest. */
    @Test
    void backups_stay_few_and_reach_back_some_weeks() {
        Set<Instant> there = new TreeSet<>();
        Random random = new Random(9);
        Instant now = Instant.parse("2026-01-01T08:00:00Z");
        for (int i = 0; i < 3_000; i++) {
            now = now.plusSeconds(60L + random.nextInt(40_000));
            there.add(now);
            there = new TreeSet<>(new Thinning(ZONE).kept(there));
            assertThat(there).contains(now).hasSizeLessThanOrEqualTo(21);
        }
        assertThat(((TreeSet<Instant>) there).first()).isBefore(now.minusSeconds(14 * 86_400));
    }

    private static <K extends Comparable<? super K>> List<Instant> newestOfNewest(
            Set<Instant> made, int groups, Function<Instant, K> group) {
        Map<K, Instant> newest = new TreeMap<>(Comparator.reverseOrder());
        made.forEach(moment -> newest.merge(group.apply(moment), moment, (a, b) -> a.isAfter(b) ? a : b));
        return newest.values().stream().limit(groups).toList();
    }
}
