package witnessmark.fit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;
import witnessmark.mechanics.ChamberStack;
import witnessmark.mechanics.FirstOrder;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Length;

/**
 * Volumes and compression ratios of a row of cylinders. Each volume is rounded to a thousandth of a cubic centimetre and
 * then summed, so that the column adds by hand to the volume the ratio is worked out of.
 */
final class RatioChecks {
    private final Sheet sheet;
    private final DeckChecks deck;

    RatioChecks(Sheet sheet) {
        this.sheet = sheet;
        this.deck = new DeckChecks(sheet);
    }

    List<Answer> all() {
        List<Check> clearances = sheet.numbers(MeasureKind.CLEARANCE_VOLUME).stream()
                .map(this::clearance)
                .toList();
        List<Check> ratios = clearances.stream().map(this::ratio).toList();
        List<MeasurePlace> chambers = sheet.places(MeasureKind.CHAMBER_VOLUME);
        Check chamberSpread =
                Spread.measured(sheet, new MeasurePlace(MeasureKind.CHAMBER_SPREAD, null, null), chambers);
        return List.of(
                Answers.of(MeasureKind.CLEARANCE_VOLUME, clearances, null),
                Answers.of(MeasureKind.COMPRESSION_RATIO, ratios, null),
                Answers.of(MeasureKind.RATIO_SPREAD, List.of(Spread.of(sheet, MeasureKind.RATIO_SPREAD, ratios)), null),
                Answers.of(MeasureKind.CHAMBER_SPREAD, List.of(chamberSpread), null));
    }

    /** What is left above one piston. */
    private Check clearance(int cylinder) {
        Given bore = nominalBore();
        Sum sum = new Sum(sheet).add(new MeasurePlace(MeasureKind.CHAMBER_VOLUME, cylinder, null), Term.Part.PLUS);
        gasket(cylinder, sum);
        Check mean = deck.mean(cylinder);
        if (bore == null || mean.value() == null) {
            sum.add(mean, Term.Part.AS_VOLUME);
            lacksBore(bore, sum);
        } else {
            double perLength = perLength(bore.value());
            disc(sum, new Given(mean.place(), mean.value(), Basis.WORKED_OUT, ""), perLength, mean.margin());
        }
        sum.add(new MeasurePlace(MeasureKind.CROWN_VOLUME, cylinder, null), Term.Part.PLUS);
        crevice(cylinder, bore, sum);
        return sum.check(new MeasurePlace(MeasureKind.CLEARANCE_VOLUME, cylinder, null));
    }

    private void gasket(int cylinder, Sum sum) {
        Given thickness = DeckChecks.gasket(sheet);
        Given bore = clampedBore(sheet, cylinder);
        if (thickness == null || bore == null) {
            sum.add(DeckChecks.GASKET, thickness, Term.Part.AS_VOLUME);
            sum.add(clampedPlace(cylinder), bore, Term.Part.AS_VOLUME);
        } else {
            disc(sum, thickness, perLength(bore.value()), null);
        }
    }

    /** Between top land and bore, only where both were measured: a share few count. */
    private void crevice(int cylinder, @Nullable Given bore, Sum sum) {
        Given land = sheet.given(new MeasurePlace(MeasureKind.TOP_LAND, cylinder, null));
        Given height = sheet.given(new MeasurePlace(MeasureKind.TOP_LAND_HEIGHT, cylinder, null));
        if (bore != null && land != null && height != null) {
            disc(sum, height, perLength(bore.value()) - perLength(land.value()), null);
        }
    }

    /** A height as the volume of a disc; what the height is uncertain by, the volume is in proportion. */
    private static void disc(Sum sum, Given height, double perLength, @Nullable Long margin) {
        long volume = Math.round(perLength * height.value());
        sum.add(new Term(height, Term.Part.AS_VOLUME, volume), perLength);
        if (margin != null) {
            sum.spread(margin / 2.0 * perLength);
        }
    }

    private Check ratio(Check clearance) {
        MeasurePlace place = new MeasurePlace(
                MeasureKind.COMPRESSION_RATIO, clearance.place().number(), null);
        Given swept = swept(Objects.requireNonNull(clearance.place().number()));
        Sum sum = new Sum(sheet)
                .add(swept.place(), swept.value() > 0 ? swept : null, Term.Part.OF_RATIO)
                .add(clearance, Term.Part.OF_RATIO);
        if (!sum.complete() || clearance.value() == null) {
            return sum.check(place);
        }
        if (clearance.value() <= 0) {
            return sum.lacking(clearance.place()).check(place);
        }
        double vs = swept.value();
        double vc = clearance.value();
        Long margin = clearance.margin() == null
                ? null
                : Long.valueOf(parts(2
                        * FirstOrder.of(f -> ChamberStack.ratio(vs, f[0]), new double[] {vc}, new double[] {
                                    clearance.margin() / 2.0
                                })
                                .standard()));
        return sum.check(place, parts(ChamberStack.ratio(vs, vc)), margin);
    }

    private static long parts(double ratio) {
        return Dimension.RATIO.parts(BigDecimal.valueOf(ratio));
    }

    /** What the piston sweeps, by the nominal bore; 0 where bore or stroke is not written down. */
    private Given swept(int cylinder) {
        Length stroke = sheet.stroke();
        Given bore = nominalBore();
        long volume = stroke == null || bore == null ? 0 : Math.round(perLength(bore.value()) * stroke.nanometres());
        return new Given(new MeasurePlace(MeasureKind.SWEPT_VOLUME, cylinder, null), volume, Basis.AS_DESIGNED, "");
    }

    private @Nullable Given nominalBore() {
        Length bore = sheet.bore();
        return bore == null
                ? null
                : new Given(
                        new MeasurePlace(MeasureKind.BORE, 1, Spot.TOP_ACROSS),
                        bore.nanometres(),
                        Basis.AS_DESIGNED,
                        "");
    }

    private static void lacksBore(@Nullable Given bore, Sum sum) {
        if (bore == null) {
            sum.lacking(new MeasurePlace(MeasureKind.SWEPT_VOLUME, 1, null));
        }
    }

    /** Microlitres of a disc of that diameter for each nanometre of its height. */
    private static double perLength(long diameter) {
        return ChamberStack.disc(Dimension.LENGTH.number(diameter), 1) * 1000 / 1_000_000;
    }

    /** The bore of the gasket as clamped: as run, else as tried, else as designed. */
    static @Nullable Given clampedBore(Sheet sheet, int cylinder) {
        Given run = sheet.measured(new MeasurePlace(MeasureKind.GASKET_BORE, cylinder, Spot.AFTER_RUN));
        return run == null ? sheet.given(clampedPlace(cylinder)) : run;
    }

    private static MeasurePlace clampedPlace(int cylinder) {
        return new MeasurePlace(MeasureKind.GASKET_BORE, cylinder, Spot.TRIAL_CLAMPED);
    }
}
