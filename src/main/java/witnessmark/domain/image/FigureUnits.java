package witnessmark.domain.image;

import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Calibration;
import witnessmark.domain.Cause;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Lesson;
import witnessmark.domain.Limit;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.MissedShare;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.domain.SignedCheck;
import witnessmark.domain.SizeLimit;
import witnessmark.quantity.Counter;

/** Which components are in a unit that the rest of their entry says, and in which. */
public final class FigureUnits {
    private static final Map<Class<? extends Fact>, Set<String>> AMOUNTS = Map.of(
            Limit.class, Set.of("amount"),
            PriorLife.class, Set.of("amount", "lowest", "highest"),
            RunOn.class, Set.of("upTo"));
    private static final Map<Class<? extends Fact>, Set<String>> READ =
            Map.of(Reading.class, Set.of("value"), ReadingLimit.class, Set.of("atLeast", "atMost", "changeAtMost"));
    private static final Map<Class<? extends Fact>, Set<String>> MEASURED = Map.of(
            Measurement.class, Set.of("value"),
            SizeLimit.class, Set.of("atLeast", "atMost", "aimLeast", "aimMost"),
            Lesson.class, Set.of("atLeast", "atMost"),
            SignedCheck.class, Set.of("value", "atLeast", "atMost"));
    private static final Map<Class<? extends Fact>, Set<String>> SHARES = Map.of(
            ReadingLimit.class, Set.of("fallAtMost"),
            Calibration.class, Set.of("asFound"),
            Cause.class, Set.of("share"),
            MissedShare.class, Set.of("share"));

    private FigureUnits() {}

    /** Whether the unit of a component is said elsewhere in its entry. */
    public static boolean has(Class<? extends Fact> kind, Component component) {
        return in(AMOUNTS, kind, component)
                || in(READ, kind, component)
                || in(MEASURED, kind, component)
                || in(SHARES, kind, component);
    }

    /**
     * What such a component is in.
     *
     * @param type of the entry
     * @param component for which {@link #has} holds
     * @param values the entry's value of each of its components
     * @param facts where a limit that the entry names is looked up
     * @return null while the entry does not say
     */
    public static Figure.@Nullable In of(
            RecordType<?> type, Component component, Function<Component, @Nullable Object> values, Facts facts) {
        if (in(SHARES, type.kind(), component)) {
            return new Figure.Read(ReadingKind.Unit.HUNDREDTH_OF_PERCENT);
        }
        for (Component each : type.components()) {
            Object value = values.apply(each);
            if (value instanceof ReadingKind kind) {
                return new Figure.Read(kind.unit());
            }
            if (value instanceof MeasureKind kind) {
                return new Figure.Measured(kind.dimension());
            }
            if (value instanceof Counter counter) {
                return type.kind() == PriorLife.class ? new Figure.Counted(counter) : limited(counter);
            }
            if (each.refersTo() == Limit.class) {
                return past(value, facts);
            }
        }
        return null;
    }

    /** A value with its unit where the rest of its entry says it; any other value as it is. */
    public static @Nullable Object withUnit(
            RecordType<?> type, Component component, Function<Component, @Nullable Object> values, Facts facts) {
        Object value = values.apply(component);
        if (value instanceof Number figure && has(type.kind(), component)) {
            Figure.In unit = of(type, component, values, facts);
            return unit == null ? value : new Figure(unit, figure.longValue());
        }
        return value;
    }

    /** What runs on past a limit counts as that limit does; running time where no limit is named. */
    private static Figure.@Nullable In past(@Nullable Object limit, Facts facts) {
        if (!(limit instanceof Id<?> id)) {
            return new Figure.Counted(Counter.RUNNING);
        }
        return facts.of(Limit.class)
                .find(new Id<>(id.value()))
                .map(found -> limited(found.fact().counter()))
                .orElse(null);
    }

    private static Figure.In limited(Counter counter) {
        return counter == Counter.AGE ? new Figure.Months() : new Figure.Counted(counter);
    }

    private static boolean in(
            Map<Class<? extends Fact>, Set<String>> which, Class<? extends Fact> kind, Component component) {
        return which.getOrDefault(kind, Set.of()).contains(component.name());
    }
}
