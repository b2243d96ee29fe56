package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.cost.result.Refund;
import witnessmark.domain.Clearance;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Grade;
import witnessmark.domain.PartKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Reading;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Expected;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.ReadingUse.Broken;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.logbook.standing.Standing;
import witnessmark.logbook.standing.StillOpen;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/**
 * Day by day what a watchful crew would have been shown, by the table printed with the invented season, as far as
 * running, limits, readings and holds reach.
 */
class ShownOnTheDayTest {
    @TempDir
    static Path folder;

    private static Desk desk;

    @BeforeAll
    static void tellTheSeason() {
        SampleBooks books = new SampleBooks(folder);
        desk = books.open();
        books.tellAll(desk);
    }

    @AfterAll
    static void close() {
        desk.logbook().close();
    }

    private static List<MarkOn> on(String day) {
        View view = desk.view();
        LocalDate then = LocalDate.parse(day);
        Standing standing = SeeStanding.of(new View(
                view.facts(), then, view.zone(), LifeLedger.of(view.facts(), new AsOf(then, view.zone())), true));
        return Stream.concat(standing.going().stream(), standing.elsewhere().stream())
                .toList();
    }

    private static StillOpen openOn(String day) {
        View view = desk.view();
        LocalDate then = LocalDate.parse(day);
        return SeeStanding.of(new View(
                        view.facts(),
                        then,
                        view.zone(),
                        LifeLedger.of(view.facts(), new AsOf(then, view.zone())),
                        true))
                .open();
    }

    private static List<String> incidentsOn(String day) {
        return openOn(day).incidents().stream()
                .map(open -> open.incident().fact().mark())
                .toList();
    }

    private static MarkOn limitOn(String day, String part) {
        return on(day).stream()
                .filter(mark -> part.equals(mark.serial()) && mark.use() != null)
                .findFirst()
                .orElseThrow();
    }

    private static ReadingUse readingOn(String day, String engine, String limit) {
        return on(day).stream()
                .filter(mark -> engine.equals(mark.engine()))
                .map(mark -> mark.mark().reason())
                .filter(ReadingUse.class::isInstance)
                .map(ReadingUse.class::cast)
                .filter(use -> use.limit().fact().name().equals(limit))
                .findFirst()
                .orElseThrow();
    }

    private static String hours(LimitUse use) {
        return new RunningTime(use.used().total()).hours(2).toPlainString();
    }

    /** Until June the card of RB-05 stood as it was written at the winter rebuild: with it, what disagrees is told. */
    @Test
    void on_1_february_the_card_of_rb_05_and_its_serial_history_disagree() {
        Facts facts = desk.view().facts();
        Entry<PriorLife> card = facts.of(PriorLife.class).all().stream()
                .filter(prior -> prior.fact().words().equals("card of the winter rebuild"))
                .findFirst()
                .orElseThrow();
        Entry<PriorLife> standing =
                new Entry<>(card.id(), card.fact(), witnessmark.domain.Standing.IN_FORCE, null, card.rev() + 1);

        assertThat(Coherence.forEntries(
                        facts.with(List.of(standing)),
                        List.of(standing),
                        new AsOf(LocalDate.of(2026, 2, 1), desk.view().zone())))
                .extracting(Problem::kind, problem -> problem.facts().get(0))
                .contains(tuple(ProblemKind.PRIOR_LIVES_DIFFER, "RB-05"));
        assertThat(card.fact().amount()).isZero();
    }

    @Test
    void on_24_march_the_rod_bolts_of_k05_go_over_at_round_1_which_needs_about_2_2_h() {
        MarkOn bolts = limitOn("2026-03-24", "RB-05");

        assertThat(bolts.state()).isEqualTo(MarkState.DUE);
        assertThat(hours(bolts.use())).isEqualTo("29.90");
        assertThat(bolts.runsOut().event().fact().name()).startsWith("Round 1");
        assertThat(bolts.runsOut().sure()).isTrue();
        assertThat(new RunningTime(bolts.mark().expected().likely()).hours(1)).isEqualByComparingTo("2.2");
        assertThat(bolts.mark().expected().basis()).isEqualTo(Expected.Basis.TIMETABLE);
    }

    @Test
    void on_14_april_the_filter_of_k05_went_from_specks_to_flakes_and_its_shells_are_held() {
        assertThat(on("2026-04-14").stream()
                        .filter(mark -> mark.state() == MarkState.HELD && "K05".equals(mark.engine())))
                .extracting(MarkOn::serial)
                .contains("BE-05a");
        assertThat(on("2026-04-14").stream().filter(mark -> mark.state() == MarkState.HELD && "57".equals(mark.car())))
                .as("the cooler of car 57: debris, not replaced")
                .extracting(MarkOn::serial)
                .contains("OC-57");
        ReadingUse filter = readingOn("2026-04-14", "K05", "filter cut open");
        assertThat(filter.worst().fact().grade()).isEqualTo(Grade.FLAKES);
        assertThat(desk.view().facts().of(Reading.class).inForce())
                .filteredOn(reading -> reading.fact().grade() == Grade.FEW_SPECKS)
                .isNotEmpty();
    }

    /** The case opened that evening stands there until it is closed, and the one of June is open to the end. */
    @Test
    void what_is_open_of_a_car_that_goes_is_told_from_the_day_it_happened() {
        assertThat(incidentsOn("2026-04-13")).doesNotContain("INC-03");
        assertThat(incidentsOn("2026-04-14")).contains("INC-03");
        assertThat(incidentsOn("2026-05-10")).as("closed that evening").doesNotContain("INC-03");
        assertThat(incidentsOn("2026-07-07")).containsExactly("INC-05");
        assertThat(incidentsOn("2026-09-01"))
                .as("car 41 with a wrecked engine goes too")
                .startsWith("INC-07");
        assertThat(incidentsOn("2026-10-24")).contains("INC-05");
    }

    /** Entries are asked back until two weeks before their event; that of car 41 for Round 7 was, but for 130. */
    @Test
    void what_can_be_asked_back_is_told_until_its_last_day() {
        assertThat(openOn("2026-07-07").refunds())
                .extracting(
                        refund -> refund.by().toString(),
                        refund -> refund.still().text())
                .containsExactly(
                        tuple("2026-07-11", "520.00 EUR"),
                        tuple("2026-07-11", "520.00 EUR"),
                        tuple("2026-08-08", "520.00 EUR"),
                        tuple("2026-08-08", "130.00 EUR"));
        assertThat(openOn("2026-07-12").refunds()).hasSize(2).noneMatch(Refund::late);
        assertThat(openOn("2026-08-09").refunds())
                .as("car 57 goes to Round 7; of car 41 the event is still to come")
                .allMatch(refund -> !refund.late() || refund.begun());
        assertThat(openOn("2026-10-24").refunds()).isEmpty();
    }

    @Test
    void on_3_may_k03_is_held_for_9340_rpm_on_rods_bolts_valves_and_springs() {
        assertThat(on("2026-05-03").stream()
                        .filter(mark -> mark.state() == MarkState.HELD && "K03".equals(mark.engine()))
                        .map(MarkOn::kind))
                .contains(PartKind.RODS, PartKind.ROD_BOLTS, PartKind.EXHAUST_VALVES, PartKind.VALVE_SPRINGS);
        assertThat(on("2026-05-02").stream()
                        .filter(mark -> mark.state() == MarkState.HELD && "K03".equals(mark.engine())))
                .isEmpty();
        assertThat(on("2026-05-20").stream()
                        .filter(mark -> mark.state() == MarkState.HELD && "K03".equals(mark.engine())))
                .as("signed clear on 12 May, the rods aside: nobody crack tested them")
                .extracting(MarkOn::serial)
                .containsExactly("RS-03");
        assertThat(desk.view().facts().of(Clearance.class).inForce()).isNotEmpty();
        assertThat(on("2026-05-03").get(0).mark().reason()).isInstanceOf(HeldBy.class);
    }

    @Test
    void on_26_may_the_springs_of_k05_go_over_at_round_4() {
        MarkOn springs = limitOn("2026-05-26", "VS-05");

        assertThat(hours(springs.use())).isEqualTo("10.47");
        assertThat(springs.state()).isEqualTo(MarkState.DUE);
        assertThat(springs.runsOut().event().fact().name()).startsWith("Round 4");
        assertThat(springs.runsOut().after()).isFalse();
    }

    @Test
    void on_14_june_the_springs_of_k03_go_over_at_round_5() {
        MarkOn springs = limitOn("2026-06-14", "VS-03");

        assertThat(hours(springs.use())).isEqualTo("10.65");
        assertThat(springs.state()).isEqualTo(MarkState.DUE);
        assertThat(springs.runsOut().event().fact().name()).startsWith("Round 5");
        assertThat(springs.runsOut().after()).isFalse();
    }

    @Test
    void on_7_july_they_are_over_and_exhaust_3b_is_9_percent_down_against_8() {
        MarkOn springs = limitOn("2026-07-07", "VS-03");
        assertThat(hours(springs.use())).isEqualTo("12.87");
        assertThat(springs.state()).isEqualTo(MarkState.OVER);

        ReadingUse force = readingOn("2026-07-07", "K03", "spring force");
        assertThat(force.broken()).isEqualTo(Broken.FALL);
        assertThat(force.worst().fact().place()).isEqualTo("exhaust 3B");
        assertThat(force.worst().fact().value()).isEqualTo(266_000);

        assertThat(limitOn("2026-07-09", "VS-03").state())
                .as("the run-on signed the evening after")
                .isEqualTo(MarkState.RUN_ON);
    }

    @Test
    void on_15_september_the_exhaust_lash_of_k06_closed_by_0_05_mm() {
        ReadingUse lash = readingOn("2026-09-15", "K06", "exhaust lash");

        assertThat(lash.broken()).isEqualTo(Broken.CHANGE);
        assertThat(lash.baseline().fact().value() - lash.worst().fact().value()).isBetween(40_000L, 50_000L);
    }

    @Test
    void on_6_october_cylinder_4_of_k06_leaks_8_percent_and_rises() {
        ReadingUse leak = readingOn("2026-10-06", "K06", "leak-down");

        assertThat(leak.broken()).isEqualTo(Broken.CHANGE);
        assertThat(leak.worst().fact().place()).isEqualTo("4");
        assertThat(leak.worst().fact().value()).isEqualTo(800);
    }
}
