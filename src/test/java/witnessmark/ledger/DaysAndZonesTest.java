package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Days that are not 24 hours long, clocks that change, and runs in other zones than the team's. */
class DaysAndZonesTest {
    private static final long MINUTE = 60_000;
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Position> here = story.position(design, PartKind.RODS, "rods", 1, false);
    private final Id<Part> rods = story.part("R-1", story.partDesign("rods", PartKind.RODS, false));

    static Stream<Arguments> clock_changes() {
        return AccrualCasesTest.rows("elapsed-across-clock-changes.csv").stream()
                .map(row -> Arguments.of(row[0], row[1], row[2], Long.parseLong(row[3])));
    }

    @ParameterizedTest(name = "{0}, {1} to {2}")
    @MethodSource("clock_changes")
    void a_run_across_a_clock_change_lasts_as_long_as_it_lasted(String zone, String out, String in, long minutes) {
        Moment start = Moment.of(LocalDateTime.parse(out), ZoneId.of(zone));
        Moment back = Moment.of(LocalDateTime.parse(in), ZoneId.of(zone));
        RunningTime running = new RunningTime(back.epochMillis() - start.epochMillis());
        story.fit(rods, engine, here, start, null);
        story.add(new RunDraft(engine, null, start, running).in(back).written());

        LifeLedger ledger = LifeLedger.of(story.facts(), new AsOf(start.day(), ZoneId.of(zone)));
        assertThat(ledger.life(rods, Counter.RUNNING).total()).isEqualTo(minutes * MINUTE);
        assertThat(start.plus(running).wallClock()).isEqualTo(LocalDateTime.parse(in));
    }

    @Test
    void a_part_changed_in_the_hour_the_clocks_show_twice_is_charged_in_the_order_things_happened() {
        // Half past one comes twice on 25 October 2026 in London: first summer time, an hour later standard time.
        Moment first = Moment.of(Instant.parse("2026-10-25T00:30:00Z"), LONDON);
        Moment between = Moment.of(Instant.parse("2026-10-25T00:45:00Z"), LONDON);
        Moment second = Moment.of(Instant.parse("2026-10-25T01:30:00Z"), LONDON);
        assertThat(first.wallClock()).isEqualTo(second.wallClock());
        story.fit(rods, engine, here, between, null);
        story.run(engine, null, first, 10);
        story.run(engine, null, second, 15);

        LifeLedger ledger = LifeLedger.of(story.facts(), new AsOf(LocalDate.parse("2026-10-25"), LONDON));
        assertThat(ledger.life(rods, Counter.RUNNING).total()).isEqualTo(15 * MINUTE);
    }

    @Test
    void a_day_ends_when_the_next_begins_in_the_teams_zone() {
        AsOf long25 = new AsOf(LocalDate.parse("2026-10-25"), LONDON);
        assertThat(long25.last().instant()).isEqualTo(Instant.parse("2026-10-25T23:59:59.999Z"));
        AsOf short29 = new AsOf(LocalDate.parse("2026-03-29"), LONDON);
        assertThat(short29.last().instant()).isEqualTo(Instant.parse("2026-03-29T22:59:59.999Z"));
        assertThat(short29.last().epochMillis()
                        - new AsOf(LocalDate.parse("2026-03-28"), LONDON).last().epochMillis())
                .isEqualTo(23 * 60 * MINUTE);
    }

    @Test
    void an_hour_shown_twice_before_midnight_counts_whole() {
        // In São Paulo the clocks went back from midnight to 23:00 on 18 February 2018 (IANA tz database).
        ZoneId zone = ZoneId.of("America/Sao_Paulo");
        AsOf day = new AsOf(LocalDate.parse("2018-02-17"), zone);
        assertThat(day.last().instant()).isEqualTo(Instant.parse("2018-02-18T02:59:59.999Z"));
        assertThat(day.counts(Moment.of(Instant.parse("2018-02-18T02:30:00Z"), zone)))
                .isTrue();
        assertThat(day.counts(Moment.of(Instant.parse("2018-02-18T03:00:00Z"), zone)))
                .isFalse();
    }

    @Test
    void a_day_that_began_without_a_midnight_still_ends_the_day_before() {
        // In São Paulo the clocks went on from midnight to 01:00 on 4 November 2018 (IANA tz database).
        AsOf day = new AsOf(LocalDate.parse("2018-11-03"), ZoneId.of("America/Sao_Paulo"));
        assertThat(day.last().instant()).isEqualTo(Instant.parse("2018-11-04T02:59:59.999Z"));
    }

    @Test
    void a_run_abroad_counts_by_the_day_of_the_team_and_in_its_true_order() {
        // Nine in the morning of the 11th in Tokyo is midnight of the 10th to 11th in Greenwich.
        Moment tokyo = Moment.of(LocalDateTime.parse("2026-03-11T08:59:59"), ZoneId.of("Asia/Tokyo"));
        Id<Run> run = story.run(engine, null, tokyo, 10);
        story.fit(rods, engine, here, Moment.of(LocalDateTime.parse("2026-03-10T12:00"), LONDON), null);

        LifeLedger tenth = LifeLedger.of(story.facts(), new AsOf(LocalDate.parse("2026-03-10"), LONDON));
        assertThat(tenth.life(rods, Counter.RUNNING).total()).isEqualTo(10 * MINUTE);
        LifeLedger newYork =
                LifeLedger.of(story.facts(), new AsOf(LocalDate.parse("2026-03-10"), ZoneId.of("America/New_York")));
        assertThat(newYork.account(rods, Counter.RUNNING).charges())
                .extracting(charge -> charge.source().id().value())
                .isEqualTo(List.of(run.value()));
        assertThat(Coherence.forEntries(
                        story.facts(),
                        story.entries().stream()
                                .filter(entry -> entry.id().equals(run))
                                .toList(),
                        new AsOf(LocalDate.parse("2026-03-10"), LONDON)))
                .isEmpty();
    }

    @Test
    void what_has_no_moment_counts_on_every_day_and_a_limit_from_its_first_day_to_its_last() {
        AsOf day = new AsOf(LocalDate.parse("2026-03-10"), LONDON);
        assertThat(day.counts(null)).isTrue();
        assertThat(Stream.of("2026-03-09", "2026-03-10", "2026-03-11").map(first -> day.stands(limit(first, null))))
                .containsExactly(true, true, false);
        assertThat(Stream.of("2026-03-09", "2026-03-10", "2026-03-11")
                        .map(last -> day.stands(limit("2026-01-01", last))))
                .containsExactly(false, true, true);
    }

    private Limit limit(String first, String last) {
        return new Limit(
                "due",
                LimitAction.RENEW,
                null,
                PartKind.RODS,
                null,
                null,
                null,
                null,
                Counter.RUNNING,
                1,
                LimitRank.OWN,
                "",
                LocalDate.parse(first),
                last == null ? null : LocalDate.parse(last));
    }
}
