package witnessmark.fit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.GasketClass;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.quantity.Length;

/** An invented engine on a test's bench: figures in shown units. */
public final class Bench {
    private EngineDesign design;
    private final Map<MeasurePlace, Sheet.Stated> figures = new HashMap<>();
    private final List<SizeLimit> limits = new ArrayList<>();
    private @Nullable GasketClass gasket;
    private HowStood stood = HowStood.NOT_SAID;

    public Bench(int cylinders, String bore, String stroke, String rod) {
        design = new EngineDesign(
                "four", cylinders, "", length(bore), length(stroke), length(rod), null, null, null, null, "", null);
    }

    private static Length length(String mm) {
        return Length.ofMillimetres(new BigDecimal(mm));
    }

    public Bench put(MeasureKind kind, @Nullable Integer number, @Nullable Spot spot, String shown) {
        figures.put(new MeasurePlace(kind, number, spot), new Sheet.Stated(parts(kind, shown), stood));
        return this;
    }

    /** How the parts stand that are put down from now on. */
    public Bench stood(HowStood how) {
        stood = how;
        return this;
    }

    /** As many main bearings as that. */
    public Bench mains(int count) {
        design = new EngineDesign(
                design.name(),
                design.cylinders(),
                "",
                design.bore(),
                design.stroke(),
                design.rodLength(),
                null,
                null,
                null,
                null,
                "",
                count);
        return this;
    }

    /** Thrust and anti-thrust side. */
    public Bench deck(int cylinder, String thrust, String other) {
        return put(MeasureKind.DECK_CLEARANCE, cylinder, Spot.THRUST, thrust)
                .put(MeasureKind.DECK_CLEARANCE, cylinder, Spot.ANTI_THRUST, other);
    }

    public Bench limit(MeasureKind kind, @Nullable String least, @Nullable String most) {
        return limit(kind, null, least, most, null, LimitRank.BUILDER);
    }

    public Bench designed(MeasureKind kind, @Nullable Spot spot, String figure) {
        return limit(kind, spot, null, null, figure, LimitRank.MAKER);
    }

    public Bench limit(
            MeasureKind kind,
            @Nullable Spot spot,
            @Nullable String least,
            @Nullable String most,
            @Nullable String aim,
            LimitRank rank) {
        limits.add(of(kind, spot, least, most, aim, rank));
        return this;
    }

    public static SizeLimit of(
            MeasureKind kind,
            @Nullable Spot spot,
            @Nullable String least,
            @Nullable String most,
            @Nullable String aim,
            LimitRank rank) {
        return new SizeLimit(
                kind,
                spot,
                new Id<>(new UUID(1, 1)),
                null,
                least == null ? null : parts(kind, least),
                most == null ? null : parts(kind, most),
                aim == null ? null : parts(kind, aim),
                aim == null ? null : parts(kind, aim),
                rank,
                "sheet of " + rank.code(),
                LocalDate.of(2026, 1, 1),
                null);
    }

    public Bench gasket(GasketClass made) {
        gasket = made;
        return this;
    }

    public Sheet sheet() {
        return new Sheet(design, figures, limits, gasket);
    }

    public Answer answer(MeasureKind kind) {
        return answer(sheet(), kind);
    }

    public static Answer answer(Sheet sheet, MeasureKind kind) {
        return Checks.of(sheet).stream()
                .filter(answer -> answer.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no answer of " + kind));
    }

    /** The figure of a check as shown. */
    public static BigDecimal shown(@Nullable Check check) {
        Objects.requireNonNull(check);
        return check.place().kind().dimension().shown(Objects.requireNonNull(check.value()));
    }

    public static long parts(MeasureKind kind, String shown) {
        return kind.dimension().parts(new BigDecimal(shown));
    }
}
