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
final class Bench {
    private final EngineDesign design;
    private final Map<MeasurePlace, Sheet.Stated> figures = new HashMap<>();
    private final List<SizeLimit> limits = new ArrayList<>();
    private @Nullable GasketClass gasket;

    Bench(int cylinders, String bore, String stroke, String rod) {
        design = new EngineDesign(
                "four", cylinders, "", length(bore), length(stroke), length(rod), null, null, null, null, "", null);
    }

    private static Length length(String mm) {
        return Length.ofMillimetres(new BigDecimal(mm));
    }

    Bench put(MeasureKind kind, @Nullable Integer number, @Nullable Spot spot, String shown) {
        figures.put(new MeasurePlace(kind, number, spot), new Sheet.Stated(parts(kind, shown), HowStood.NOT_SAID));
        return this;
    }

    /** Thrust and anti-thrust side. */
    Bench deck(int cylinder, String thrust, String other) {
        return put(MeasureKind.DECK_CLEARANCE, cylinder, Spot.THRUST, thrust)
                .put(MeasureKind.DECK_CLEARANCE, cylinder, Spot.ANTI_THRUST, other);
    }

    Bench limit(MeasureKind kind, @Nullable String least, @Nullable String most) {
        return limit(kind, null, least, most, null, LimitRank.BUILDER);
    }

    Bench designed(MeasureKind kind, @Nullable Spot spot, String figure) {
        return limit(kind, spot, null, null, figure, LimitRank.MAKER);
    }

    Bench limit(
            MeasureKind kind,
            @Nullable Spot spot,
            @Nullable String least,
            @Nullable String most,
            @Nullable String aim,
            LimitRank rank) {
        limits.add(of(kind, spot, least, most, aim, rank));
        return this;
    }

    static SizeLimit of(
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

    Bench gasket(GasketClass made) {
        gasket = made;
        return this;
    }

    Sheet sheet() {
        return new Sheet(design, figures, limits, gasket);
    }

    Answer answer(MeasureKind kind) {
        return answer(sheet(), kind);
    }

    static Answer answer(Sheet sheet, MeasureKind kind) {
        return Checks.of(sheet).stream()
                .filter(answer -> answer.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no answer of " + kind));
    }

    /** The figure of a check as shown. */
    static BigDecimal shown(@Nullable Check check) {
        Objects.requireNonNull(check);
        return check.place().kind().dimension().shown(Objects.requireNonNull(check.value()));
    }

    static long parts(MeasureKind kind, String shown) {
        return kind.dimension().parts(new BigDecimal(shown));
    }
}
