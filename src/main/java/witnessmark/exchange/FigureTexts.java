package witnessmark.exchange;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Calibration;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.domain.image.Component;
import witnessmark.quantity.Counter;

/** Which figures name their unit in a file, and how: by what the row counts or reads. */
final class FigureTexts {
    private static final Map<Class<? extends Fact>, Set<String>> AMOUNTS = Map.of(
            Limit.class, Set.of("amount"),
            PriorLife.class, Set.of("amount", "lowest", "highest"),
            RunOn.class, Set.of("upTo"));
    private static final Map<Class<? extends Fact>, Set<String>> READ = Map.of(
            Reading.class, Set.of("value"), ReadingLimit.class, Set.of("atLeast", "atMost", "changeAtMost"));
    private static final Map<Class<? extends Fact>, Set<String>> SHARES =
            Map.of(ReadingLimit.class, Set.of("fallAtMost"), Calibration.class, Set.of("asFound"));

    /** A grade has no figure; one that is there all the same is read, so that the row is refused for it. */
    private static final FigureText PLAIN = new FigureText() {
        @Override
        public String of(long figure) {
            return Long.toString(figure);
        }

        @Override
        public long read(String text) {
            return Long.parseLong(text);
        }

        @Override
        public String form() {
            return "";
        }
    };

    private FigureTexts() {}

    /** Whether a part of a kind of entry names its unit. */
    static boolean has(Class<? extends Fact> kind, Component component) {
        return in(AMOUNTS, kind, component) || in(READ, kind, component) || in(SHARES, kind, component);
    }

    /**
     * How a part of a row that names its unit is written.
     *
     * @param components those of the row
     * @param values those of the row, in the order of its components
     * @return null while it is not known what the row counts or reads
     */
    static @Nullable FigureText of(
            Class<? extends Fact> kind,
            Component component,
            List<Component> components,
            @Nullable Object[] values,
            Facts facts) {
        if (in(SHARES, kind, component)) {
            return ReadingText.PERCENT;
        }
        if (in(READ, kind, component)) {
            return read(values);
        }
        Counter counter = counter(components, values, facts);
        return counter == null ? null : new AmountText(kind, counter);
    }

    private static @Nullable FigureText read(@Nullable Object[] values) {
        for (Object value : values) {
            if (value instanceof ReadingKind kind) {
                return kind.graded() ? PLAIN : ReadingText.of(kind);
            }
        }
        return null;
    }

    /** What a row counts in: what it says itself, else what the limit it goes past is in, else running time. */
    private static @Nullable Counter counter(List<Component> components, @Nullable Object[] values, Facts facts) {
        boolean past = false;
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof Counter counter) {
                return counter;
            }
            boolean limit = components.get(i).refersTo() == Limit.class;
            if (limit && values[i] instanceof Id<?> id) {
                return facts.of(Limit.class)
                        .find(new Id<>(id.value()))
                        .map(found -> found.fact().counter())
                        .orElse(null);
            }
            past |= limit;
        }
        return past ? Counter.RUNNING : null;
    }

    private static boolean in(
            Map<Class<? extends Fact>, Set<String>> which, Class<? extends Fact> kind, Component component) {
        return which.getOrDefault(kind, Set.of()).contains(component.name());
    }
}
