package witnessmark.domain.image;

import witnessmark.domain.ReadingKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Dimension;

/**
 * A whole number of an entry whose component does not say what it is in.
 *
 * @param unit what it is in
 * @param value how many of them
 */
public record Figure(In unit, long value) {
    /** What a figure is in. */
    public sealed interface In {}

    /** A counter's own unit. */
    public record Counted(Counter counter) implements In {}

    /** Months of the calendar, in which ages are limited; as an age carried in they are counted by days. */
    public record Months() implements In {}

    /** Whole parts of what a figure of a build sheet measures. */
    public record Measured(Dimension dimension) implements In {}

    /** The unit of a kind of reading. */
    public record Read(ReadingKind.Unit unit) implements In {}
}
