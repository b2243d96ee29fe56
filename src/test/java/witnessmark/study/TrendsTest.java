package witnessmark.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Grade;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Tool;
import witnessmark.domain.ToolKind;
import witnessmark.domain.Warmth;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Story;
import witnessmark.quantity.Moment;
import witnessmark.study.result.Call;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Trend;

/** What must hold of trends whatever was read; an engine that runs an hour on each day, read each evening. */
class TrendsTest {
    private static final LocalDate FIRST = LocalDate.parse("2026-03-01");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);

    private static Moment morning(int day) {
        return at(FIRST.plusDays(day) + "T09:00Z");
    }

    private static Moment evening(int day) {
        return at(FIRST.plusDays(day) + "T20:00Z");
    }

    private void run(int days) {
        for (int day = 0; day < days; day++) {
            story.run(engine, null, morning(day), 60);
        }
    }

    private void read(ReadingKind kind, String place, int day, long value, boolean baseline, Warmth warmth) {
        story.add(new Reading(
                kind, evening(day), engine, null, place, value, null, "", warmth, baseline, "Chief", "", null));
    }

    private void leak(String place, long... percent) {
        for (int day = 0; day < percent.length; day++) {
            read(ReadingKind.LEAK_DOWN, place, day, 100 * percent[day], day == 0, Warmth.HOT);
        }
    }

    private void limit(ReadingKind kind, @Nullable Long atMost, @Nullable Long change) {
        story.add(new ReadingLimit(
                kind.code(),
                kind,
                design,
                null,
                null,
                null,
                atMost,
                change,
                null,
                null,
                null,
                LimitRank.OWN,
                "",
                FIRST,
                null));
    }

    private List<KindTrends> all(Facts facts) {
        return new Trends(LifeLedger.of(facts, asOf("2026-06-30"))).ofEngine(engine);
    }

    private PlaceTrend only() {
        List<KindTrends> all = all(story.facts());
        assertThat(all).hasSize(1);
        return all.get(0).places().get(0);
    }

    @Test
    void four_in_order_are_a_trend_and_three_are_not() {
        run(4);
        leak("1", 3, 5, 6);
        assertThat(only().trend()).isEqualTo(Trend.TOO_FEW);
        read(ReadingKind.LEAK_DOWN, "1", 3, 800, false, Warmth.HOT);

        assertThat(only().trend()).isEqualTo(Trend.RISING);
        assertThat(only().chance()).isCloseTo(2.0 / 24, within(1e-12)); // two orders of 24
        assertThat(only().call()).isEqualTo(Call.WORSE);
    }

    @Test
    void what_rises_by_no_more_than_two_readings_differ_by_does_not_rise() {
        run(6);
        for (int day = 0; day < 6; day++) {
            read(ReadingKind.LEAK_DOWN, "1", day, 300 + 20L * day, day == 0, Warmth.HOT);
        }

        assertThat(only().chance()).isLessThan(0.01);
        assertThat(only().trend()).isEqualTo(Trend.NONE);
    }

    @Test
    void a_place_that_rises_with_all_others_is_not_the_one_to_look_at() {
        run(5);
        for (String place : List.of("1", "2", "3", "4")) {
            leak(place, 3, 5, 6, 8, 9);
        }

        assertThat(all(story.facts()).get(0).places()).allSatisfy(place -> {
            assertThat(place.trend()).isEqualTo(Trend.RISING);
            assertThat(place.call()).isEqualTo(Call.WORSE);
        });
    }

    @Test
    void a_place_that_always_stood_off_is_not_the_one_to_look_at() {
        run(5);
        leak("1", 3, 3, 3, 3, 3);
        leak("2", 3, 3, 3, 3, 3);
        leak("3", 9, 9, 8, 9, 9);

        PlaceTrend three = all(story.facts()).get(0).places().get(2);
        assertThat(three.neighbours().standsOff()).isTrue();
        assertThat(three.call()).isEqualTo(Call.NONE);
    }

    @Test
    void one_other_place_does_not_say_which_of_the_two_is_off() {
        run(5);
        leak("1", 3, 3, 3, 3, 3);
        leak("2", 3, 5, 6, 8, 9);

        assertThat(all(story.facts()).get(0).places())
                .extracting(PlaceTrend::neighbours)
                .containsOnlyNulls();
    }

    @Test
    void a_limit_is_ahead_only_where_the_slope_cannot_be_level() {
        run(6);
        limit(ReadingKind.LEAK_DOWN, 1500L, null);
        leak("1", 3, 5, 4, 6, 5, 5);
        assertThat(only().trend()).isEqualTo(Trend.NONE);
        assertThat(only().limits())
                .singleElement()
                .extracting(LimitAhead::ahead)
                .isEqualTo(false);

        leak("2", 3, 5, 7, 9, 11, 13);
        LimitAhead ahead = all(story.facts()).get(0).places().get(1).next();
        assertThat(ahead.likely()).isCloseTo(1, within(1e-9)); // 13 % now, 2 % an hour, 15 % allowed
        assertThat(ahead.soonest()).isCloseTo(1, within(1e-9));
    }

    /** A line past its limit is due at once, never at a time that is over. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void a_range_ahead_is_in_order_and_never_over(long seed) {
        Random random = new Random(seed);
        run(8);
        limit(ReadingKind.LEAK_DOWN, 1200L, 400L);
        for (String place : List.of("1", "2", "3", "4")) {
            leak(
                    place,
                    LongStream.range(0, 8)
                            .map(day -> 2 + day + random.nextInt(4))
                            .toArray());
        }

        for (PlaceTrend place : all(story.facts()).get(0).places()) {
            for (LimitAhead ahead : place.limits()) {
                assertThat(ahead.passed())
                        .isEqualTo(
                                ahead.what() == LimitAhead.What.BELOW_BASELINE
                                        ? place.last().figure() < ahead.figure()
                                        : place.last().figure() > ahead.figure());
                boolean past = ahead.what() == LimitAhead.What.BELOW_BASELINE
                        ? place.last().figure() < ahead.figure()
                        : place.last().figure() > ahead.figure();
                assertThat(ahead.passed()).as("seed %d", seed).isEqualTo(past);
                if (ahead.ahead()) {
                    assertThat(ahead.soonest())
                            .as("seed %d", seed)
                            .isNotNegative()
                            .isLessThanOrEqualTo(ahead.likely());
                    assertThat(ahead.latest()).isGreaterThanOrEqualTo(ahead.likely());
                    assertThat(past).isFalse();
                }
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13})
    void the_order_of_entries_and_what_is_read_elsewhere_changes_nothing(long seed) {
        Random random = new Random(seed);
        run(6);
        leak("1", LongStream.range(0, 6).map(day -> 3 + random.nextInt(5)).toArray());
        PlaceTrend alone = only();
        for (int day = 0; day < 6; day++) {
            read(ReadingKind.COMPRESSION, "1", day, 1_400_000 - 1000L * random.nextInt(90), day == 0, Warmth.COLD);
        }
        List<Entry<?>> entries = new ArrayList<>(story.entries());
        Collections.shuffle(entries, random);

        KindTrends leaks = all(Facts.none().with(entries)).stream()
                .filter(kind -> kind.kind() == ReadingKind.LEAK_DOWN)
                .findFirst()
                .orElseThrow();
        assertThat(leaks.places().get(0)).as("seed %d", seed).isEqualTo(alone);
    }

    @Test
    void hot_and_cold_are_never_on_one_line() {
        run(6);
        leak("1", 3, 3, 3, 3);
        read(ReadingKind.LEAK_DOWN, "1", 4, 900, false, Warmth.COLD);
        read(ReadingKind.LEAK_DOWN, "1", 5, 300, false, Warmth.HOT);

        assertThat(only().apart()).singleElement().extracting("figure").isEqualTo(900.0);
        assertThat(only().counted()).hasSize(5);
    }

    @Test
    void a_new_baseline_or_an_open_head_begins_anew_and_lash_goes_on() {
        run(9);
        leak("1", 3, 5, 6, 8);
        for (int day = 0; day < 4; day++) {
            read(ReadingKind.LASH, "exhaust 1A", day, 250_000 - 15_000L * day, day == 0, Warmth.COLD);
        }
        story.build(engine, 2, EnumSet.of(Zone.HEAD), evening(4), evening(5));
        read(ReadingKind.LEAK_DOWN, "1", 6, 300, false, Warmth.HOT);

        List<KindTrends> all = all(story.facts());
        assertThat(all.get(0).kind()).isEqualTo(ReadingKind.LASH);
        assertThat(all.get(0).places().get(0).trend()).isEqualTo(Trend.FALLING);
        PlaceTrend leak = all.get(1).places().get(0);
        assertThat(leak.trend()).isEqualTo(Trend.TOO_FEW);
        assertThat(leak.since().fact().number()).isEqualTo(2);

        read(ReadingKind.LEAK_DOWN, "1", 7, 400, true, Warmth.HOT);
        PlaceTrend again = all(story.facts()).get(1).places().get(0);
        assertThat(again.since()).isNull();
        assertThat(again.counted()).hasSize(1);
    }

    /** Two oil changes: 12 ppm after 2 h and 18 ppm after 3 h wear alike. */
    @Test
    void oil_metal_is_by_the_hour_on_the_oil_where_every_change_is_known() {
        run(8);
        change(morning(0).before());
        read(ReadingKind.OIL_METAL, "iron", 1, 12_000, true, Warmth.COLD);
        assertThat(all(story.facts()).get(0).perHour()).isTrue();
        change(evening(1).plus(Story.minutes(1)));
        read(ReadingKind.OIL_METAL, "iron", 4, 18_000, false, Warmth.COLD);

        assertThat(only().counted()).extracting("figure").containsExactly(6000.0, 6000.0);
    }

    @Test
    void oil_metal_is_as_it_was_found_where_a_change_is_not_known() {
        run(3);
        read(ReadingKind.OIL_METAL, "iron", 1, 12_000, true, Warmth.COLD);

        assertThat(all(story.facts()).get(0).perHour()).isFalse();
        assertThat(only().counted()).extracting("figure").containsExactly(12_000.0);
    }

    private void change(Moment when) {
        story.add(new Work(WorkKind.OIL_CHANGE, when, engine, null, WorkResult.DONE, null, null, "Chief", ""));
    }

    @Test
    void readings_made_with_another_tester_are_drawn_apart_and_those_of_none_are_not() {
        Id<Tool> first = story.add(new Tool("LD-1", ToolKind.LEAK_DOWN_TESTER, "", null, ""));
        Id<Tool> second = story.add(new Tool("LD-2", ToolKind.LEAK_DOWN_TESTER, "", null, ""));
        run(3);
        List<@Nullable Id<Tool>> testers = Arrays.asList(first, null, second, second);
        for (int i = 0; i < testers.size(); i++) {
            story.add(new Reading(
                    ReadingKind.LEAK_DOWN,
                    evening(i + 1),
                    engine,
                    null,
                    "1",
                    300L + i,
                    null,
                    "",
                    Warmth.HOT,
                    false,
                    "Chief",
                    "",
                    testers.get(i)));
        }

        PlaceTrend place = all(story.facts()).get(0).places().get(0);
        assertThat(place.apart()).hasSize(1);
        assertThat(place.apart().get(0).figure()).isEqualTo(300);
        assertThat(place.counted().size() + place.before().size()).isEqualTo(3);
    }

    @Test
    void a_grade_that_got_worse_twice_is_told_as_the_ledger_decides() {
        run(3);
        for (Grade grade : List.of(Grade.CLEAN, Grade.FEW_SPECKS, Grade.FLAKES)) {
            story.add(new Reading(
                    ReadingKind.FILTER,
                    evening(grade.badness()),
                    engine,
                    null,
                    "",
                    null,
                    grade,
                    "",
                    Warmth.COLD,
                    false,
                    "Chief",
                    "",
                    null));
        }

        KindTrends filter = all(story.facts()).get(0);
        assertThat(filter.grades()).singleElement().extracting("worseTwice").isEqualTo(true);
        assertThat(filter.call()).isEqualTo(Call.WORSE);
    }

    @Test
    void places_come_as_a_crew_counts_them() {
        run(2);
        for (String place : List.of("10", "2", "1")) {
            leak(place, 3);
        }
        for (String place : List.of("exhaust 4B", "mean of 16", "inlet 1A", "exhaust 4A")) {
            read(ReadingKind.LASH, place, 1, 250_000, false, Warmth.COLD);
        }

        assertThat(all(story.facts()).get(0).places())
                .extracting(PlaceTrend::place)
                .containsExactly("1", "2", "10");
        assertThat(all(story.facts()).get(1).places())
                .extracting(PlaceTrend::place)
                .containsExactly("exhaust 4A", "exhaust 4B", "inlet 1A", "mean of 16");
    }

    @Test
    void nothing_read_is_no_trend_and_no_error() {
        assertThat(all(story.facts())).isEmpty();
        assertThat(new Trends(LifeLedger.of(story.facts(), asOf("2026-06-30")))
                        .ofEngine(new Id<>(new java.util.UUID(1, 2))))
                .isEmpty();
    }
}
