package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Units of running time, the largest first. */
public enum TimeUnit {
    HOUR(3_600_000, List.of("12.5 h", "12h30"), "h", "hr", "hrs", "hour", "hours"),
    MINUTE(60_000, List.of("1h20", "80 min"), "m", "min", "mins", "minute", "minutes", "'", "′", "’"),
    SECOND(1_000, List.of("95 s", "1 min 35 s"), "s", "sec", "secs", "second", "seconds", "\"", "″", "”");

    private final BigDecimal millis;
    private final List<String> examples;
    private final List<String> words;

    TimeUnit(long millis, List<String> examples, String... words) {
        this.millis = BigDecimal.valueOf(millis);
        this.examples = examples;
        this.words = List.of(words);
    }

    /** Milliseconds in one. */
    BigDecimal millis() {
        return millis;
    }

    /** Texts that can be read in a field whose own unit this is. */
    List<String> examples() {
        return examples;
    }

    /** The unit next smaller, or null. */
    @Nullable
    TimeUnit finer() {
        return this == SECOND ? null : values()[ordinal() + 1];
    }

    /** The unit a word names, or null. */
    static @Nullable TimeUnit named(String word) {
        for (TimeUnit unit : values()) {
            if (unit.words.contains(word)) {
                return unit;
            }
        }
        return null;
    }
}
