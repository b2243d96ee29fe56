package witnessmark.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.face.SkimEffect;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Length;
import witnessmark.quantity.Volume;

/**
 * What a skim x of the head does: the ratio by the chambers before and after; valve to piston falls by x·cos θ to x/cos θ,
 * as it was measured and the valve leans; cams turn by x/r, that is 2x/r at the crank, later where the tight run gets
 * shorter, until they are timed again. Squish stays where the pad is the face.
 */
public final class SkimEffects {
    private final Sheet sheet;
    private final TreeSet<MeasureKind> missing = new TreeSet<>();

    private SkimEffects(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * What was measured about it.
     *
     * @param removed what came off, above 0
     * @param before mean chamber volume before, or null: as on the sheet
     * @param after mean chamber volume after, or null: worked out
     * @param valvesBefore least clearances measured before
     * @param valvesAfter least clearances measured after
     */
    public record Measured(
            Length removed,
            @Nullable Volume before,
            @Nullable Volume after,
            Map<MeasureKind, Length> valvesBefore,
            Map<MeasureKind, Length> valvesAfter) {
        public Measured {
            valvesBefore = Map.copyOf(valvesBefore);
            valvesAfter = Map.copyOf(valvesAfter);
        }
    }

    /** @param sheet of the engine the head is on, for all that the skim leaves as it is */
    public static SkimEffect of(Sheet sheet, Measured measured) {
        return new SkimEffects(sheet).effect(measured);
    }

    private SkimEffect effect(Measured measured) {
        double skim = Dimension.LENGTH.number(measured.removed().nanometres());
        Long before = measured.before() == null
                ? mean(MeasureKind.CHAMBER_VOLUME)
                : Long.valueOf(measured.before().microlitres());
        Long after = measured.after() == null
                ? less(before, skim)
                : Long.valueOf(measured.after().microlitres());
        if (before == null) {
            missing.add(MeasureKind.CHAMBER_VOLUME);
        }
        Given sprocket = sheet.given(new MeasurePlace(MeasureKind.SPROCKET_RADIUS, null, null));
        if (sprocket == null || sprocket.value() <= 0) {
            missing.add(MeasureKind.SPROCKET_RADIUS);
        }
        Double cam = sprocket == null || sprocket.value() <= 0
                ? null
                : Double.valueOf(Math.toDegrees(skim / Dimension.LENGTH.number(sprocket.value())));
        Double ratioBefore = ratio(before);
        Double ratioAfter = ratio(after);
        return new SkimEffect(
                measured.removed(),
                ratioBefore,
                ratioAfter,
                measured.after() == null,
                List.of(
                        valve(MeasureKind.VALVE_TO_PISTON_INLET, MeasureKind.VALVE_ANGLE_INLET, skim, measured),
                        valve(MeasureKind.VALVE_TO_PISTON_EXHAUST, MeasureKind.VALVE_ANGLE_EXHAUST, skim, measured)),
                cam,
                cam == null ? null : Double.valueOf(2 * cam),
                List.copyOf(missing));
    }

    private SkimEffect.Valve valve(MeasureKind kind, MeasureKind angle, double skim, Measured measured) {
        Given leans = sheet.given(new MeasurePlace(angle, null, null));
        double cosine = leans == null ? 1 : Math.cos(Math.toRadians(Dimension.ANGLE.number(leans.value())));
        if (leans == null && measured.valvesAfter().get(kind) == null) {
            missing.add(angle);
        }
        return new SkimEffect.Valve(
                kind,
                measured.valvesBefore().get(kind),
                length(skim * cosine),
                leans == null ? null : length(skim / cosine),
                measured.valvesAfter().get(kind));
    }

    private static Length length(double millimetres) {
        return new Length(Math.round(millimetres * 1_000_000));
    }

    /** By the opening area, measured or as designed. */
    private @Nullable Long less(@Nullable Long before, double skim) {
        Long area = mean(MeasureKind.OPENING_AREA);
        if (area == null) {
            missing.add(MeasureKind.OPENING_AREA);
        }
        return before == null || area == null
                ? null
                : Long.valueOf(before - Math.round(Dimension.AREA.number(area) * skim));
    }

    private @Nullable Long mean(MeasureKind kind) {
        List<Long> figures = new ArrayList<>();
        for (MeasurePlace place : sheet.places(kind)) {
            Given figure = sheet.given(place);
            if (figure != null) {
                figures.add(figure.value());
            }
        }
        OptionalDouble mean = figures.stream().mapToLong(Long::longValue).average();
        return mean.isPresent() ? Long.valueOf(Math.round(mean.getAsDouble())) : null;
    }

    /** The mean ratio with every chamber of that volume. */
    private @Nullable Double ratio(@Nullable Long chamber) {
        if (chamber == null) {
            return null;
        }
        Map<MeasurePlace, Long> chambers = new HashMap<>();
        sheet.places(MeasureKind.CHAMBER_VOLUME).forEach(place -> chambers.put(place, chamber));
        List<Check> ratios = new RatioChecks(sheet.with(chambers))
                .all().stream()
                        .filter(answer -> answer.kind() == MeasureKind.COMPRESSION_RATIO)
                        .map(Answer::checks)
                        .findFirst()
                        .orElse(List.of());
        double sum = 0;
        for (Check check : ratios) {
            if (check.value() == null) {
                check.missing().forEach(place -> missing.add(place.kind()));
                return null;
            }
            sum += Dimension.RATIO.number(check.value());
        }
        return ratios.isEmpty() ? null : Double.valueOf(sum / ratios.size());
    }
}
