package witnessmark.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Metal;
import witnessmark.domain.PlacedAt;
import witnessmark.domain.SpeedFigures;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.ToTwenty;
import witnessmark.mechanics.Growth;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Temperature;

/** Sizes of parts at 20 °C, the reference temperature of ISO 1, held against published worked figures. */
class AtTwentyTest {
    private static final Moment NOON = Moment.of(Instant.parse("2026-01-29T12:00:00Z"), ZoneId.of("Europe/London"));

    private static SpeedFigures made(@Nullable Metal block, @Nullable Metal crank, @Nullable Metal pistons) {
        return new SpeedFigures(
                new Id<>(UUID.randomUUID()),
                block,
                crank,
                Metal.STEEL,
                pistons,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                "test");
    }

    private static Measurement read(MeasureKind kind, @Nullable Spot spot, String typed, @Nullable String celsius) {
        BigDecimal figure = new BigDecimal(typed.replace(" in", ""));
        BigDecimal shown = typed.endsWith(" in") ? figure.multiply(new BigDecimal("25.4")) : figure;
        return new Measurement(
                new Id<>(UUID.randomUUID()),
                kind,
                kind.placedAt() == PlacedAt.ENGINE ? null : 1,
                spot,
                kind.dimension().parts(shown),
                typed,
                NOON,
                null,
                celsius == null ? null : Temperature.ofCelsius(new BigDecimal(celsius)),
                HowStood.NOT_SAID,
                true,
                "Crew chief",
                "");
    }

    private static long by(@Nullable ToTwenty brought) {
        return brought == null ? 0 : brought.by();
    }

    /** NPL, "How do I correct lengths to 20 °C?": 500.035 mm of steel at 23.7 °C, 11.7 in a million, is 500.013 mm. */
    @Test
    void what_a_length_grows_is_what_a_national_laboratory_works_out() {
        assertThat(500.035 - Growth.of(11.7e-6, 500.035, 3.7)).isCloseTo(500.013, within(0.0005));
    }

    /**
     * Trade handbook 4.1: an aluminium bore of 85 mm at 28 °C is 0.016 mm large and a steel standard of that size 0.008,
     * so half the error remains though all is equally warm. The handbook's aluminium grows 23 in a million, ours 21.5.
     */
    @Test
    void half_of_an_aluminium_bores_growth_remains_beside_a_steel_standard_as_warm() {
        Measurement bore = read(MeasureKind.BORE, Spot.TOP_ACROSS, "85.000", "28");
        long by = by(new AtTwenty(made(Metal.ALUMINIUM, Metal.STEEL, Metal.ALUMINIUM)).of(bore));
        assertThat(by / 1e6).isCloseTo(-(0.016 - 0.008), within(0.001));
    }

    /** JCGM 100:2008, H.1: l = (l_S(1 + α_S·θ) + d) / (1 + α·θ), here with d in the reading; to first order as exactly. */
    @ParameterizedTest
    @CsvSource({"85.131, 27, 21.5e-6", "85.131, 12.5, 21.5e-6", "75.0000, 31, 21.5e-6"})
    void a_piston_is_brought_to_twenty_as_the_guide_to_uncertainty_does_it(String read, String celsius, double alpha) {
        ToTwenty brought = new AtTwenty(made(Metal.CAST_IRON, Metal.STEEL, Metal.ALUMINIUM))
                .of(read(MeasureKind.PISTON, null, read, celsius));
        double warmer = Double.parseDouble(celsius) - 20;
        double size = Double.parseDouble(read);
        double exact = size * (1 + 11.5e-6 * warmer) / (1 + alpha * warmer);
        double step = read.endsWith("0000") ? 1e-4 : 1e-3;
        assertThat(size + by(brought) / 1e6).isCloseTo(exact, within(step / 2 + 1e-5));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5", "20", "35"})
    void steel_beside_steel_reads_right_at_any_temperature_and_asks_nothing(String celsius) {
        AtTwenty at = new AtTwenty(made(Metal.CAST_IRON, Metal.STEEL, Metal.ALUMINIUM));
        assertThat(at.of(read(MeasureKind.PIN_JOURNAL, Spot.FRONT_UPRIGHT, "45.000", celsius)))
                .isNull();
        assertThat(at.of(read(MeasureKind.PIN_JOURNAL, Spot.FRONT_UPRIGHT, "45.000", null)))
                .isNull();
    }

    /** What is smaller than half the last digit read is not added: 0.0004 mm on a piston read to 0.001 at 20.5 °C. */
    @ParameterizedTest
    @CsvSource({"85.131, 20.5, 0", "85.1310, 20.5, -400", "3.3516 in, 27, -5080", "85.13, 27, -10000"})
    void no_more_is_said_than_was_read(String read, String celsius, long by) {
        AtTwenty at = new AtTwenty(made(Metal.CAST_IRON, Metal.STEEL, Metal.ALUMINIUM));
        assertThat(by(at.of(read(MeasureKind.PISTON, null, read, celsius)))).isEqualTo(by);
    }

    @Test
    void a_gap_is_read_as_a_gap() {
        AtTwenty at = new AtTwenty(made(Metal.ALUMINIUM, Metal.ALUMINIUM, Metal.ALUMINIUM));
        for (MeasureKind gap : List.of(MeasureKind.RING_GAP_TOP, MeasureKind.ROD_SIDE, MeasureKind.MAIN_CLEARANCE)) {
            assertThat(at.of(read(gap, null, "0.400", "35"))).isNull();
        }
    }

    private static Check wall(SpeedFigures made, @Nullable String boreAt, @Nullable String pistonAt) {
        AtTwenty at = new AtTwenty(made);
        Map<MeasurePlace, Sheet.Stated> figures = new HashMap<>();
        for (Measurement figure : List.of(
                read(MeasureKind.BORE, Spot.TOP_ACROSS, "85.211", boreAt),
                read(MeasureKind.PISTON, null, "85.131", pistonAt))) {
            figures.put(figure.place(), new Sheet.Stated(figure.value(), figure.stood(), at.of(figure)));
        }
        EngineDesign design =
                new EngineDesign("one", 1, "", new Length(85_200_000), null, null, null, null, null, null, "", null);
        return Checks.of(new Sheet(design, figures, List.of(), null)).stream()
                .filter(answer -> answer.kind() == MeasureKind.PISTON_TO_WALL)
                .flatMap(answer -> answer.checks().stream())
                .findFirst()
                .orElseThrow();
    }

    /** An iron block and aluminium pistons on a hot day: 0.080 mm as read at 27 °C is 0.006 mm more at 20. */
    @Test
    void a_clearance_between_two_metals_is_that_at_twenty_and_its_column_says_so() {
        Check check = wall(made(Metal.CAST_IRON, Metal.STEEL, Metal.ALUMINIUM), "27", "27");
        double bore = 85.211 * (1 + 11.5e-6 * 7) / (1 + 10.8e-6 * 7);
        double piston = 85.131 * (1 + 11.5e-6 * 7) / (1 + 21.5e-6 * 7);
        assertThat(Objects.requireNonNull(check.value()) / 1e6).isCloseTo(bore - piston, within(0.001));
        assertThat(check.value()).isEqualTo(86_000);
        assertThat(check.addsUp()).isTrue();
        assertThat(check.margin())
                .isGreaterThan(wall(made(Metal.CAST_IRON, null, Metal.STEEL), "27", "27")
                        .margin());
    }

    @Test
    void two_parts_of_one_metal_equally_warm_differ_as_they_were_read() {
        Check check = wall(made(Metal.ALUMINIUM, Metal.STEEL, Metal.ALUMINIUM), "31", "31");
        assertThat(check.value()).isEqualTo(80_000);
        assertThat(check.terms()).noneMatch(term -> term.given().toTwenty() != null);
    }

    @ParameterizedTest
    @CsvSource({", 27", "27,", ","})
    void where_it_is_not_said_how_warm_a_part_was_all_stay_as_read(@Nullable String bore, @Nullable String piston) {
        Check check = wall(made(Metal.ALUMINIUM, Metal.STEEL, Metal.ALUMINIUM), bore, piston);
        assertThat(check.value()).isEqualTo(80_000);
        assertThat(check.terms())
                .anyMatch(term -> term.given().toTwenty() != null
                        && term.given().toTwenty().lacks()
                        && term.given().toTwenty().at() == null);
    }

    @Test
    void where_it_is_not_said_what_a_part_is_made_of_it_is_asked_for_only_where_it_would_matter() {
        AtTwenty at = new AtTwenty(null);
        assertThat(at.of(read(MeasureKind.HEAD_THICKNESS, Spot.FRONT_EXHAUST, "117.71", "20.5")))
                .isNull();
        ToTwenty warm = at.of(read(MeasureKind.HEAD_THICKNESS, Spot.FRONT_EXHAUST, "117.71", "35"));
        assertThat(warm).isNotNull();
        assertThat(warm.lacks()).isTrue();
        assertThat(warm.by()).isZero();
    }
}
