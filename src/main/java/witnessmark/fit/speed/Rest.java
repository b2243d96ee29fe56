package witnessmark.fit.speed;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.SpeedFigures;
import witnessmark.fit.Checks;
import witnessmark.fit.Sheet;
import witnessmark.fit.Usual;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.SpeedAnswer.Lack;
import witnessmark.fit.result.SpeedAnswer.Taken;
import witnessmark.mechanics.FirstOrder;
import witnessmark.mechanics.SliderCrank;
import witnessmark.quantity.Dimension;

/** The engine at rest as what closes at speed needs it, in millimetres and kilograms; remembers what it lacks. */
final class Rest {
    private final Sheet sheet;
    private final List<Answer> answers;
    private final @Nullable SpeedFigures figures;
    private final Set<Lack> lacks = EnumSet.noneOf(Lack.class);
    private final Set<Taken> taken = EnumSet.noneOf(Taken.class);

    Rest(Sheet sheet, @Nullable SpeedFigures figures) {
        this.sheet = sheet;
        this.figures = figures;
        this.answers = Checks.of(sheet);
    }

    Sheet sheet() {
        return sheet;
    }

    @Nullable
    SpeedFigures figures() {
        return figures;
    }

    void lacks(Lack lack) {
        lacks.add(lack);
    }

    Set<Lack> lacks() {
        return lacks;
    }

    void taken(Taken usual) {
        taken.add(usual);
    }

    Set<Taken> taken() {
        return taken;
    }

    /** Throw and rod in metres; null where either is not known or they cannot turn. */
    @Nullable
    SliderCrank crank() {
        Given rod = sheet.given(new MeasurePlace(MeasureKind.ROD_LENGTH, 1, null));
        if (sheet.stroke() == null) {
            lacks(Lack.STROKE);
        }
        if (rod == null) {
            lacks(Lack.ROD_LENGTH);
        }
        if (sheet.stroke() == null || rod == null) {
            return null;
        }
        double radius = millimetres(sheet.stroke().nanometres()) / 2000;
        double length = millimetres(rod.value()) / 1000;
        return length > radius && radius > 0 ? new SliderCrank(radius, length) : null;
    }

    List<Check> checks(MeasureKind kind) {
        return answers.stream()
                .filter(answer -> answer.kind() == kind)
                .flatMap(answer -> answer.checks().stream())
                .toList();
    }

    /** What is worked out at rest for a number, in millimetres. */
    Optional<Double> worked(MeasureKind kind, int number) {
        return checks(kind).stream()
                .filter(check -> Objects.equals(check.place().number(), number) && check.value() != null)
                .map(check -> millimetres(Objects.requireNonNull(check.value())))
                .findFirst();
    }

    /** Piston, pin, rings and locks, in kilograms. */
    @Nullable
    Double pinEnd(int cylinder) {
        Double piston = kilograms(MeasureKind.PISTON_MASS, cylinder);
        Double pin = kilograms(MeasureKind.PIN_MASS, cylinder);
        Double rings = kilograms(MeasureKind.RINGS_MASS, cylinder);
        if (piston == null || pin == null || rings == null) {
            lacks(Lack.MASSES);
            return null;
        }
        return piston + pin + rings;
    }

    @Nullable
    Double kilograms(MeasureKind kind, int cylinder) {
        Given given = sheet.given(new MeasurePlace(kind, cylinder, null));
        return given == null ? null : Dimension.MASS.number(given.value()) / 1000;
    }

    /** How many throws lie between two main bearings. */
    int throwsInBay() {
        return Math.max(1, Math.round((float) sheet.cylinders() / Math.max(1, sheet.mains() - 1)));
    }

    /** Standard uncertainty of a figure measured in good hands, in millimetres. */
    static double standard(MeasureKind kind) {
        Long halfWidth = Usual.halfWidth(kind);
        return halfWidth == null ? 0 : FirstOrder.withinHalfWidth(millimetres(halfWidth));
    }

    static double millimetres(long nanometres) {
        return Dimension.LENGTH.number(nanometres);
    }
}
