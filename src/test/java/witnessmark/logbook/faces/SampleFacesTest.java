package witnessmark.logbook.faces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.SkimPass;
import witnessmark.fit.result.face.Comeback;
import witnessmark.fit.result.face.FacePlace;
import witnessmark.fit.result.face.FacePlace.Kind;
import witnessmark.fit.result.face.FacePlace.Side;
import witnessmark.fit.result.face.SkimEffect;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.fit.result.face.ZoneFinding.State;
import witnessmark.logbook.View;
import witnessmark.quantity.Length;
import witnessmark.sample.SampleViews;

/** The skims and low zones of the invented season, told to its end, against the printed tables it was made from. */
class SampleFacesTest {
    private static View end;

    @BeforeAll
    static void tell() {
        end = SampleViews.end();
    }

    private static FacePage page(View view, String mark) {
        return SeeFaces.of(
                        view,
                        view.facts().of(Part.class).named(mark).orElseThrow().id())
                .orElseThrow();
    }

    private static String mm(@Nullable Length length) {
        return Objects.requireNonNull(length)
                .inMillimetres()
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String ratio(@Nullable Double ratio) {
        return BigDecimal.valueOf(Objects.requireNonNull(ratio))
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    @ParameterizedTest
    @CsvSource({
        "HD-03, 2026-01-20, 0.06, 117.80, 0.20, 0.40, 11.80, 11.88, 0.04 + 0.02, 0.04, 0.06",
        "HD-06, 2026-06-05, 0.10, 117.82, 0.18, 0.42, 11.74, 11.86, 0.05 + 0.03 + 0.02, 0.08, 0.10",
        "HD-06, 2026-11-09, 0.12, 117.69, 0.31, 0.29, 11.86, 12.01, 0.06 + 0.04 + 0.02, 0.06, 0.10",
    })
    void each_skim_is_as_printed(
            String head,
            LocalDate day,
            String removed,
            String left,
            String off,
            String remaining,
            String ratioBefore,
            String ratioAfter,
            String passes,
            String over,
            String upTo) {
        SkimLine line = page(end, head).skims().stream()
                .filter(skim -> skim.work().fact().at().day().equals(day))
                .findFirst()
                .orElseThrow();
        assertThat(mm(line.removed())).isEqualTo(removed);
        assertThat(mm(line.work().fact().left())).isEqualTo(left);
        assertThat(mm(line.off())).isEqualTo(off);
        assertThat(mm(line.left())).isEqualTo(remaining);
        SkimEffect effect = Objects.requireNonNull(line.effect());
        assertThat(ratio(effect.ratioBefore())).isEqualTo(ratioBefore);
        assertThat(ratio(effect.ratioAfter())).isEqualTo(ratioAfter);
        assertThat(String.join(
                        " + ",
                        line.passes().stream()
                                .map(SkimPass::depth)
                                .map(SampleFacesTest::mm)
                                .toList()))
                .isEqualTo(passes);
        assertThat(mm(line.cleanUp().over())).isEqualTo(over);
        assertThat(mm(line.cleanUp().upTo())).isEqualTo(upTo);
    }

    @Test
    void the_june_skim_took_the_valves_nearer_and_turned_the_cams() {
        SkimLine line = page(end, "HD-06").skims().get(1);
        SkimEffect effect = Objects.requireNonNull(line.effect());
        assertThat(effect.valves())
                .extracting(SkimEffect.Valve::kind, valve -> mm(valve.before()), valve -> mm(valve.measured()))
                .containsExactly(
                        tuple(MeasureKind.VALVE_TO_PISTON_INLET, "2.31", "2.22"),
                        tuple(MeasureKind.VALVE_TO_PISTON_EXHAUST, "2.82", "2.73"));
        assertThat(BigDecimal.valueOf(Objects.requireNonNull(effect.crank())).setScale(1, RoundingMode.HALF_UP))
                .isEqualTo(new BigDecimal("0.3"));
        assertThat(effect.missing()).isEmpty();
        SkimEffect november =
                Objects.requireNonNull(page(end, "HD-06").skims().get(0).effect());
        assertThat(november.missing()).contains(MeasureKind.VALVE_ANGLE_INLET, MeasureKind.VALVE_ANGLE_EXHAUST);
        assertThat(november.valves()).extracting(SkimEffect.Valve::lostMost).containsOnlyNulls();
    }

    /** "5 (earlier unknown)" before the June skim; 24 from then to the strip in October. */
    @Test
    void heat_cycles_since_the_skim_are_as_printed() {
        SkimLine last = page(end, "HD-06").skims().get(0);
        RunBetween since = Objects.requireNonNull(last.since());
        assertThat(since.cycles()).isEqualTo(24);
        assertThat(since.cyclesKnown()).isTrue();
        assertThat(BigDecimal.valueOf(since.hours()).setScale(2, RoundingMode.HALF_UP))
                .isEqualTo(new BigDecimal("11.68"));
        View june = SampleViews.on(end.facts(), LocalDate.of(2026, 5, 29));
        assertThat(page(june, "HD-06").since().cycles()).isEqualTo(5);
        assertThat(page(june, "HD-06").since().cyclesKnown()).isFalse();
    }

    @Test
    void the_zone_between_2_and_3_comes_back_and_that_at_4_is_new() {
        List<ZoneFinding> findings =
                page(end, "HD-06").lastMeasured().orElseThrow().findings();
        assertThat(findings)
                .extracting(finding -> finding.zone().place(), ZoneFinding::state)
                .containsExactly(
                        tuple(new FacePlace(Kind.BETWEEN, 2, Side.EXHAUST), State.COMING_BACK),
                        tuple(new FacePlace(Kind.CYLINDER, 4, Side.EXHAUST), State.NEW));
        ZoneFinding back = findings.get(0);
        assertThat(mm(Objects.requireNonNull(back.before()).deepest().depth())).isEqualTo("0.08");
        Comeback comeback = Objects.requireNonNull(back.comeback());
        assertThat(mm(comeback.from())).isEqualTo("0.01"); // what the skim left there
        assertThat(mm(comeback.now())).isEqualTo("0.03");
        assertThat(comeback.cycles()).isEqualTo(24);
    }

    /** In July the skimmed head is flat: what comes up first is that look, held against the zone it had in May. */
    @Test
    void a_face_comes_up_at_its_last_grid_with_the_low_zone_before_it_behind() {
        FacePage july = page(SampleViews.opening(), "HD-06");
        LookLine first = july.foremost().orElseThrow();
        assertThat(first.look().fact().at().day()).isEqualTo(LocalDate.of(2026, 6, 5));
        assertThat(first.findings()).isEmpty();
        assertThat(july.behind(first).orElseThrow().look().fact().at().day()).isEqualTo(LocalDate.of(2026, 5, 29));
        LookLine may = july.behind(first).orElseThrow();
        assertThat(july.behind(may)).as("nothing before it").isEmpty();

        FacePage winter = page(end, "HD-06");
        LookLine october = winter.foremost().orElseThrow();
        assertThat(october.look().fact().at().day()).isEqualTo(LocalDate.of(2026, 10, 26));
        assertThat(winter.behind(october).orElseThrow().look().id())
                .isEqualTo(may.look().id());
    }

    /** HG-06a was clamped between HD-06 and BL-06 from the building of K06 until it boiled over; HD-03 never met it. */
    @Test
    void gaskets_that_were_clamped_to_a_face_come_first_among_what_is_laid_over_it() {
        List<FacePage> all = SeeFaces.all(end);
        FacePage gasket = page(end, "HG-06a");
        for (String mark : List.of("HD-06", "BL-06")) {
            FacePage face = page(end, mark);
            assertThat(face.against(gasket)).as(mark).isPresent();
            assertThat(SeeFaces.over(face, all).get(0).part().fact().mark())
                    .as(mark)
                    .isEqualTo("HG-06a");
        }
        FacePage other = page(end, "HD-03");
        assertThat(other.against(gasket)).isEmpty();
        assertThat(SeeFaces.over(other, all))
                .as("all of them, heads as listed")
                .hasSameSizeAs(all)
                .first()
                .satisfies(page -> assertThat(page.kind()).isEqualTo(PartKind.HEAD));
    }

    @Test
    void in_may_it_was_one_zone_never_looked_at_before() {
        View may = SampleViews.on(end.facts(), LocalDate.of(2026, 5, 29));
        LookLine look = page(may, "HD-06").lastMeasured().orElseThrow();
        assertThat(look.findings()).extracting(ZoneFinding::state).containsExactly(State.FIRST_LOOK);
        assertThat(look.findings().get(0).zone().points()).hasSize(5);
    }

    /** 18.40 h before the season, 3.195 h until it boiled over, 11.68 h since: 21.60 and 33.28 h as printed. */
    @Test
    void lives_side_by_side_have_their_skims_and_incidents_at_the_hours_they_had_then() {
        List<FaceLife> lives = FaceLife.of(end, SeeFaces.all(end));
        FaceLife head = lives.stream()
                .filter(life -> life.page().part().fact().mark().equals("HD-06"))
                .findFirst()
                .orElseThrow();
        assertThat(head.skims()).extracting(skim -> hours(skim.hours())).containsExactly("21.60", "33.28");
        assertThat(hours(head.total() - head.since())).isEqualTo("0.00");
        assertThat(head.incidents())
                .extracting(incident -> incident.what().fact().mark())
                .contains("INC-04", "INC-07", "INC-09");
        assertThat(hours(head.incidents().get(0).hours())).isEqualTo("21.60");
        assertThat(lives)
                .extracting(life -> life.total() - life.since())
                .isSortedAccordingTo(Comparator.reverseOrder());
    }

    private static String hours(double hours) {
        return BigDecimal.valueOf(Math.round(hours * 10_000), 4)
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** A head that no skim is written down for stands by its build sheet. */
    @Test
    void thickness_is_what_was_last_written_down() {
        assertThat(mm(page(end, "HD-05").thickness())).isEqualTo("117.71");
        assertThat(mm(page(end, "HD-05").left())).isEqualTo("0.31");
        assertThat(mm(page(end, "HD-06").left())).isEqualTo("0.29");
        assertThat(page(end, "HD-22").thickness()).isNull();
    }

    @Test
    void as_of_an_earlier_day_later_looks_and_skims_are_not_seen() {
        View july = SampleViews.on(end.facts(), LocalDate.of(2026, 7, 8));
        assertThat(page(july, "HD-06").skims()).hasSize(1);
        assertThat(page(july, "HD-06").looks()).hasSize(3);
        assertThat(SeeFaces.parts(july)).extracting(part -> part.fact().mark()).contains("HG-06a", "BL-06", "HD-22");
    }
}
