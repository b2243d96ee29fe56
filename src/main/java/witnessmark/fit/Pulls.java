package witnessmark.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fastener;
import witnessmark.domain.Joint;
import witnessmark.domain.JointMethod;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.PartKind;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Pull;
import witnessmark.fit.result.Pull.Finding;
import witnessmark.fit.result.Pull.Input;
import witnessmark.fit.result.Pull.Lack;
import witnessmark.fit.result.Pull.Range;
import witnessmark.fit.result.Pull.Way;
import witnessmark.mechanics.Preload;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Length;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.TypedRange;

/**
 * The pull of tightened fasteners with the scatter of the way they were tightened, and what head studs hold against:
 * {@code F = T/(K·d)}, {@code F = δ·E·A/l} (Shigley's Mechanical Engineering Design, chapter 8); the gas pushes with
 * {@code p·π/4·G²} on each cylinder, which its share of all studs holds.
 */
public final class Pulls {
    /** Modulus of steel where nobody wrote one down, in gigapascals; a value from memory (Shigley, table 8-8). */
    private static final int STEEL = 207;
    /** Peak pressure of a racing engine that breathes freely, in pascals; common practice, no source. */
    private static final long USUAL_PEAK = 10_000_000;

    private final Sheet sheet;

    public Pulls(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * How far the pull may lie from what is worked out, either way, as a share: by torque 30 %, by angle 15 %, by stretch
     * 5 %, the wide ends of what bolting notes give for hand tools.
     */
    static double scatter(JointMethod method) {
        return switch (method) {
            case TORQUE -> 0.30;
            case ANGLE, TORQUE_AND_ANGLE -> 0.15;
            case STRETCH -> 0.05;
        };
    }

    /**
     * @param joint as tightened, by its last stage
     * @param fastener what the fasteners are, or null when nobody wrote it down
     */
    public Pull of(Joint joint, @Nullable Fastener fastener) {
        List<Lack> lacks = new ArrayList<>();
        List<Input> inputs = new ArrayList<>();
        Way way = null;
        Range each = null;
        if (fastener == null) {
            lacks.add(Lack.FIGURES);
        } else {
            way = way(joint, fastener);
            each = way == null ? null : each(way, joint, fastener, inputs, lacks);
            if (way == null) {
                lacks.add(Lack.MAKERS_PULL);
            }
        }
        Pull.Hold hold = each == null || joint.fasteners() != PartKind.HEAD_STUDS
                ? null
                : hold(Objects.requireNonNull(fastener), each, lacks);
        Integer proof = fastener == null ? null : fastener.proofNewtons();
        return new Pull(
                joint,
                each == null ? null : way,
                each,
                scatter(joint.method()),
                inputs,
                proof,
                hold,
                lacks,
                finding(each, proof, hold));
    }

    /** What its maker says, said for the same way of tightening, comes before what is worked out. */
    private static @Nullable Way way(Joint joint, Fastener fastener) {
        return switch (joint.method()) {
            case STRETCH -> Way.STRETCH;
            case TORQUE -> fastener.makersPullNewtons() == null ? Way.TORQUE : Way.AS_THE_MAKER_SAYS;
            case ANGLE, TORQUE_AND_ANGLE -> fastener.makersPullNewtons() == null ? null : Way.AS_THE_MAKER_SAYS;
        };
    }

    private static @Nullable Range each(Way way, Joint joint, Fastener fastener, List<Input> inputs, List<Lack> lacks) {
        return switch (way) {
            case AS_THE_MAKER_SAYS -> makers(joint, fastener, inputs);
            case TORQUE -> torque(joint, fastener, inputs, lacks);
            case STRETCH -> stretch(joint, fastener, inputs, lacks);
        };
    }

    private static Range makers(Joint joint, Fastener fastener, List<Input> inputs) {
        int pull = Objects.requireNonNull(fastener.makersPullNewtons());
        inputs.add(new Input(Input.What.MAKERS_PULL, pull, false));
        return scattered(joint.method(), pull, pull);
    }

    private static @Nullable Range torque(Joint joint, Fastener fastener, List<Input> inputs, List<Lack> lacks) {
        TypedRange torque = value(joint, MeasureUnit.NEWTON_METRE, lacks);
        if (fastener.nutFactor() == null) {
            lacks.add(Lack.NUT_FACTOR);
        } else if (!sameLubricant(joint, fastener)) {
            lacks.add(Lack.LUBRICANT);
        }
        if (!lacks.isEmpty() || torque == null || fastener.nutFactor() == null) {
            return null;
        }
        double nutFactor = fastener.nutFactor().doubleValue();
        double diameter = millimetres(fastener.diameter());
        inputs.add(new Input(Input.What.TORQUE, middle(torque, Dimension.TORQUE), false));
        inputs.add(new Input(Input.What.NUT_FACTOR, nutFactor, false));
        inputs.add(new Input(Input.What.DIAMETER, diameter, false));
        return scattered(
                joint.method(),
                Preload.fromTorque(Dimension.TORQUE.number(torque.low()), nutFactor, diameter),
                Preload.fromTorque(Dimension.TORQUE.number(torque.high()), nutFactor, diameter));
    }

    /** A lubricant that nobody named is another one: the same torque pulls 20 to 40 % otherwise (common practice). */
    private static boolean sameLubricant(Joint joint, Fastener fastener) {
        return plain(joint.lubricant()).equals(plain(fastener.lubricant()));
    }

    private static String plain(String lubricant) {
        return lubricant.strip().toLowerCase(Locale.ROOT);
    }

    private static @Nullable Range stretch(Joint joint, Fastener fastener, List<Input> inputs, List<Lack> lacks) {
        TypedRange stretch = value(joint, MeasureUnit.MILLIMETRE, lacks);
        Length shank = fastener.stretchedDiameter();
        Length length = fastener.stretchedLength();
        if (shank == null || length == null) {
            lacks.add(Lack.SHANK);
        }
        if (stretch == null || shank == null || length == null) {
            return null;
        }
        Integer written = fastener.modulusGigapascals();
        int modulus = written == null ? STEEL : written;
        double across = millimetres(shank);
        double area = Math.PI / 4 * across * across;
        inputs.add(new Input(Input.What.STRETCH, middle(stretch, Dimension.LENGTH), false));
        inputs.add(new Input(Input.What.MODULUS, modulus, written == null));
        inputs.add(new Input(Input.What.SHANK_DIAMETER, across, false));
        inputs.add(new Input(Input.What.SHANK_LENGTH, millimetres(length), false));
        return scattered(
                joint.method(),
                Preload.fromStretch(
                        Dimension.LENGTH.number(stretch.low()), modulus * 1000.0, area, millimetres(length)),
                Preload.fromStretch(
                        Dimension.LENGTH.number(stretch.high()), modulus * 1000.0, area, millimetres(length)));
    }

    private static @Nullable TypedRange value(Joint joint, MeasureUnit unit, List<Lack> lacks) {
        Optional<TypedRange> value = TypedRange.read(joint.value(), unit).only().filter(range -> range.low() > 0);
        if (value.isEmpty()) {
            lacks.add(Lack.VALUE);
        }
        return value.orElse(null);
    }

    private static Range scattered(JointMethod method, double low, double high) {
        double scatter = scatter(method);
        return new Range(
                Math.round(low * (1 - scatter)), Math.round((low + high) / 2), Math.round(high * (1 + scatter)));
    }

    private static double middle(TypedRange range, Dimension dimension) {
        return (dimension.number(range.low()) + dimension.number(range.high())) / 2;
    }

    private static double millimetres(Length length) {
        return Dimension.LENGTH.number(length.nanometres());
    }

    private Pull.@Nullable Hold hold(Fastener fastener, Range each, List<Lack> lacks) {
        Given bore = widestBore();
        if (bore == null) {
            lacks.add(Lack.BORE);
        }
        if (fastener.count() == null) {
            lacks.add(Lack.COUNT);
        }
        if (bore == null || fastener.count() == null) {
            return null;
        }
        Pressure written = fastener.chosenFor();
        Pressure pressure = written == null ? new Pressure(USUAL_PEAK) : written;
        double across = Dimension.LENGTH.number(bore.value()) / 1000;
        return new Pull.Hold(
                pressure,
                written == null,
                bore,
                Math.round(pressure.pascals() * Math.PI / 4 * across * across),
                fastener.count(),
                sheet.cylinders(),
                each.times((double) fastener.count() / sheet.cylinders()));
    }

    /** The widest gasket bore as clamped; where none is known, the engine's own. */
    private @Nullable Given widestBore() {
        return sheet.numbers(MeasureKind.GASKET_BORE).stream()
                .flatMap(cylinder -> Optional.ofNullable(RatioChecks.clampedBore(sheet, cylinder)).stream())
                .max(Comparator.comparingLong(Given::value))
                .orElseGet(() -> sheet.designed(new MeasurePlace(MeasureKind.BORE, 1, Spot.TOP_ACROSS)));
    }

    private static Finding finding(@Nullable Range each, @Nullable Integer proof, Pull.@Nullable Hold hold) {
        if (each == null) {
            return Finding.NOT_KNOWN;
        }
        if (hold != null && hold.clamp().likely() < hold.gas()) {
            return Finding.OPENS;
        }
        if (proof != null && each.likely() > proof) {
            return Finding.PAST_PROOF;
        }
        if (hold != null && hold.clamp().least() < hold.gas()) {
            return Finding.MAY_OPEN;
        }
        if (proof != null && each.most() > proof) {
            return Finding.MAY_PASS_PROOF;
        }
        return proof == null && hold == null ? Finding.NOTHING_TO_HOLD_AGAINST : Finding.NOTHING_AGAINST;
    }
}
