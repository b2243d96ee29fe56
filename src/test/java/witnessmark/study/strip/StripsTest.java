package witnessmark.study.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.PartKind;
import witnessmark.domain.Standing;
import witnessmark.domain.Zone;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleViews;
import witnessmark.study.result.StripCell;
import witnessmark.study.result.StripLine;
import witnessmark.study.result.StripReport;
import witnessmark.study.result.StripRow;
import witnessmark.study.result.StripRow.Pattern;

/** What was found at the strips of the invented season (its tables of incidents), and of strips made up by chance. */
class StripsTest {
    private static Facts facts;

    @BeforeAll
    static void tellTheSeason() {
        facts = SampleViews.end().facts();
    }

    private static Entry<Build> build(String engine, int number) {
        return facts.of(Build.class)
                .inForce()
                .filter(build -> facts.of(witnessmark.domain.Engine.class)
                                .get(build.fact().engine())
                                .number()
                                .equals(engine)
                        && build.fact().number() == number)
                .findFirst()
                .orElseThrow();
    }

    private static StripReport report(String engine, int number) {
        return new Strips(SampleViews.on(facts, SampleViews.WINTER).ledger()).of(build(engine, number));
    }

    private static StripRow row(StripReport report, StripLine line) {
        return report.rows().stream()
                .filter(row -> row.line() == line)
                .findFirst()
                .orElseThrow();
    }

    /** INC-05: shell back fretted at 12.46 h, brown polish there already in April. */
    @Test
    void the_back_of_shell_3_was_marked_at_the_strip_before_and_is_worse_now() {
        StripReport report = report("K05", 3);
        StripRow backs = row(report, StripLine.SHELL_BACK);
        StripCell third = backs.cell(3);
        assertThat(third.how()).contains(HowMarked.HEAVY);
        assertThat(third.worst().orElseThrow().fact().mark()).isEqualTo(FindingMark.FRETTED);
        assertThat(report.run().total() / 36_000.0).isCloseTo(1246, org.assertj.core.data.Offset.offset(1.0));
        assertThat(backs.part()).isNotNull();
        assertThat(backs.part().fact().mark()).isEqualTo("BE-05b");
        assertThat(row(report("K05", 2), StripLine.SHELL_BACK_UPPER).cell(3).how())
                .contains(HowMarked.LIGHT);
    }

    /** 14.11, INC-09: found at strip-down, nothing of it in running. */
    @Test
    void what_was_found_at_a_strip_down_is_in_its_report() {
        StripReport report = report("K06", 5);
        assertThat(row(report, StripLine.CHAMBER).cell(4).how()).contains(HowMarked.CLEAR);
        assertThat(row(report, StripLine.SEAT_EXHAUST)
                        .cell(4)
                        .worst()
                        .orElseThrow()
                        .fact()
                        .mark())
                .isEqualTo(FindingMark.RECESSED);
    }

    @Test
    void every_finding_of_every_build_is_in_its_report_once() {
        Strips strips = new Strips(SampleViews.on(facts, SampleViews.WINTER).ledger());
        List<Id<Finding>> told = facts.of(Build.class)
                .inForce()
                .flatMap(build -> strips.of(build).all())
                .map(Entry::id)
                .toList();
        assertThat(told)
                .doesNotHaveDuplicates()
                .hasSameElementsAs(facts.of(Finding.class).where(finding -> finding.build() != null).stream()
                        .map(Entry::id)
                        .toList());
    }

    @Test
    void what_a_build_did_not_open_is_not_asked_for() {
        StripReport report = report("K05", 2);
        assertThat(report.rows().stream().filter(StripRow::opened).map(StripRow::line))
                .contains(StripLine.BIG_END_UPPER, StripLine.OIL_FILTER)
                .doesNotContain(StripLine.CROWN, StripLine.VALVE_EXHAUST, StripLine.CHAIN);
    }

    /** A full strip leaves no place on the engine out but what hangs on its outside (common practice, no source). */
    @Test
    void with_everything_open_every_place_can_be_looked_at() {
        EnumSet<FindingPlace> asked = EnumSet.noneOf(FindingPlace.class);
        Stream.of(StripLine.values())
                .filter(line -> line.openedBy(EnumSet.allOf(Zone.class)))
                .forEach(line -> asked.add(line.place()));
        EnumSet<FindingPlace> left = EnumSet.complementOf(asked);
        assertThat(left)
                .containsOnly(
                        FindingPlace.OIL_COOLER,
                        FindingPlace.HOSE,
                        FindingPlace.SEAL,
                        FindingPlace.INJECTOR,
                        FindingPlace.WIRING,
                        FindingPlace.ELSEWHERE);
    }

    /** A part comes within reach with the zone that reaches its kind; so does what is found on it. */
    @ParameterizedTest
    @EnumSource(StripLine.class)
    void what_lays_a_line_open_reaches_the_part_it_is_on(StripLine line) {
        for (Zone zone : Zone.values()) {
            PartKind kind = line.kind();
            if (kind != null && line.openedBy(EnumSet.of(zone)) && !alsoWithoutTakingOut(line)) {
                assertThat(zone.reaches(kind)).as(line + " by " + zone).isTrue();
            }
        }
    }

    /** Seen where they sit: bores and crowns with the head off, pins with a cap off, the filter whenever it is changed. */
    private static boolean alsoWithoutTakingOut(StripLine line) {
        return switch (line) {
            case BORE, CROWN, BLOCK_FACE, CRANK_PIN, OIL_FILTER -> true;
            default -> false;
        };
    }

    @ParameterizedTest
    @CsvSource({
        "BIG_END_SHELL, upper, BIG_END_UPPER",
        "BIG_END_SHELL, 'Lower, thrust side', BIG_END_LOWER",
        "BIG_END_SHELL, '', BIG_END_SHELL",
        "SPRING, exhaust 3B, SPRING_EXHAUST",
        "SEAT, between the seats, SEAT",
        "CROWN, upper, CROWN"
    })
    void a_spot_that_begins_with_a_side_belongs_to_its_line(FindingPlace place, String spot, StripLine line) {
        assertThat(StripLine.of(finding(place, 3, spot, null))).isEqualTo(line);
        assertThat(StripLine.of(finding(place, 3, line.spot(line.beyondSide(spot)), null)))
                .isEqualTo(line);
    }

    private static Finding finding(
            @Nullable FindingPlace place, @Nullable Integer number, String spot, @Nullable HowMarked how) {
        Entry<Build> of = build("K05", 3);
        return new Finding(
                null,
                of.fact().engine(),
                of.id(),
                null,
                "",
                place,
                number,
                spot,
                FindingMark.WORN,
                how,
                null,
                null,
                null,
                null,
                Moment.parse("2026-06-20T12:00Z[Europe/London]"),
                "",
                "",
                null,
                null);
    }

    /** One stands alone, or all are alike, told over from the marks themselves. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void what_stands_out_is_what_the_marks_show(long seed) {
        Random random = new Random(seed);
        for (int turn = 0; turn < 30; turn++) {
            Integer[] how = IntStream.range(0, 4)
                    .mapToObj(i -> random.nextInt(4) == 0 ? null : random.nextInt(5))
                    .toArray(Integer[]::new);
            Pattern pattern = pattern(how);
            List<Integer> judged =
                    Arrays.stream(how).filter(each -> each != null).toList();
            boolean alone = judged.size() >= 3
                    && judged.stream()
                            .anyMatch(worst -> judged.stream()
                                            .filter(other -> other <= worst - 2)
                                            .count()
                                    == judged.size() - 1);
            boolean alike = judged.size() == 4
                    && judged.stream().allMatch(each -> each > 0)
                    && judged.stream().allMatch(one -> judged.stream().allMatch(other -> Math.abs(one - other) <= 1));
            assertThat(pattern)
                    .as("seed " + seed + ": " + Arrays.toString(how))
                    .isEqualTo(alone ? Pattern.ONE_ALONE : alike ? Pattern.ALL_ALIKE : Pattern.NONE);
        }
    }

    private static Pattern pattern(Integer[] how) {
        List<Entry<Finding>> made = IntStream.range(0, how.length)
                .filter(i -> how[i] != null)
                .mapToObj(i -> new Entry<>(
                        Id.<Finding>parse("019ed686-8280-7000-8000-00000000000" + i),
                        finding(FindingPlace.PIN_BOSS, i + 1, "", HowMarked.values()[how[i]]),
                        Standing.IN_FORCE,
                        null,
                        1))
                .toList();
        return row(
                        new Strips(SampleViews.on(facts.with(made), SampleViews.WINTER)
                                        .ledger())
                                .of(build("K05", 3)),
                        StripLine.PIN_BOSS)
                .pattern();
    }
}
