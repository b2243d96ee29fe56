package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Standing;
import witnessmark.domain.Warmth;
import witnessmark.logbook.View;
import witnessmark.logbook.trends.SeeTrends;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleViews;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.PlaceTrend;

/** What is said of the readings of K06 as its fourth cylinder goes; figures from the table printed with the season. */
class TrendWordsTest {
    private static final TrendWords WORDS = words(Units.METRIC);

    private static Facts facts;

    @BeforeAll
    static void tellTheSeason() {
        facts = SampleViews.end().facts();
    }

    private static TrendWords words(Units units) {
        Texts texts = Texts.in(Locale.UK);
        return new TrendWords(texts, new Measures(texts, units));
    }

    private static KindTrends kind(String day, ReadingKind kind) {
        return kind(facts, day, kind);
    }

    private static KindTrends kind(Facts facts, String day, ReadingKind kind) {
        View view = SampleViews.on(facts, LocalDate.parse(day));
        Engine named = view.facts().of(Engine.class).named("K06").orElseThrow().fact();
        return SeeTrends.of(
                        view,
                        view.facts()
                                .of(Engine.class)
                                .named(named.number())
                                .orElseThrow()
                                .id())
                .stream()
                .filter(each -> each.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static PlaceTrend place(KindTrends of, String place) {
        return of.places().stream()
                .filter(each -> each.place().equals(place))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_cylinder_to_look_at_says_so_and_when_it_meets_its_limit() {
        KindTrends leak = kind("2026-10-06", ReadingKind.LEAK_DOWN);

        assertThat(WORDS.answer(leak, place(leak, "4")))
                .isEqualTo("Cylinder 4 leaks more: 3 → 3 → 4 → 7 → 6 → 6 → 8 %; the 3 others read 4 % in the middle, "
                        + "this one 4 % more. Look at cylinder 4. At this rate 10 % in about 4.5 h, not before 1.7 h.");
        assertThat(WORDS.basis(leak, place(leak, "4")))
                .containsExactly(
                        "7 readings since build 2, 5 Jun",
                        "rises by 0.46 % an hour of running (0.21 to 0.67 % nine times in ten)",
                        "by chance 3 times in 100");
        assertThat(WORDS.answer(leak, place(leak, "1")))
                .isEqualTo("Cylinder 1: 3 → 3 → 3 → 3 → 3 → 3 → 4 %, no trend in 7 readings");
    }

    /** That a reading made hot is held against none made cold: common practice, no source. */
    @Test
    void one_reading_without_hot_or_cold_says_which_it_is_not_compared_with() {
        KindTrends leak = kind("2026-10-06", ReadingKind.LEAK_DOWN);
        Reading last = Objects.requireNonNull(place(leak, "1").last()).reading().fact();
        assertThat(last.warmth()).isEqualTo(Warmth.HOT);
        Facts with = facts.with(List.of(new Entry<>(
                new Id<Reading>(new UUID(1, 1)),
                new Reading(
                        last.kind(),
                        Moment.of(LocalDate.of(2026, 10, 7).atTime(9, 0), ZoneId.of("Europe/London")),
                        last.engine(),
                        null,
                        "1",
                        400L,
                        null,
                        "",
                        Warmth.NOT_SAID,
                        false,
                        "TE",
                        "",
                        null),
                Standing.IN_FORCE,
                null,
                1)));

        KindTrends now = kind(with, "2026-10-07", ReadingKind.LEAK_DOWN);

        assertThat(WORDS.answer(now, place(now, "1")))
                .isEqualTo("Cylinder 1: 4 %; it takes 4 readings to see a trend, 1 is there; "
                        + "9 readings made hot not compared");
        assertThat(WORDS.basis(now, place(now, "1"))).noneMatch(line -> line.contains("compared"));
    }

    @Test
    void lash_that_closed_is_held_against_the_build() {
        KindTrends lash = kind("2026-09-15", ReadingKind.LASH);

        assertThat(lash.places().stream().map(each -> WORDS.finding(lash, each)))
                .isEqualTo(List.of(
                        "exhaust 4A: 0.21 mm, 0.04 mm less than the baseline of 0.25 mm; past what is allowed",
                        "exhaust 4B: 0.20 mm, 0.05 mm less than the baseline of 0.25 mm; past what is allowed"));
    }

    @Test
    void compression_is_said_in_the_units_chosen_with_the_unit_once() {
        KindTrends compression = kind("2026-10-06", ReadingKind.COMPRESSION);

        assertThat(WORDS.answer(compression, place(compression, "4")))
                .startsWith("Cylinder 4 compresses less: 14.5 → 14.4 → 14.3 → 13.9 → 14.0 → 14.0 → 13.8 bar. "
                        + "At this rate 12.87 bar in about 14.6 h");
    }

    @Test
    void grades_are_told_in_their_order() {
        KindTrends filter = kind("2026-08-28", ReadingKind.FILTER);

        assertThat(WORDS.finding(filter, filter.grades().get(0)))
                .isEqualTo("Filter: clean → clean → clean → clean → clean → few specks → clean");
    }
}
