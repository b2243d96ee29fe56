package witnessmark.domain;

/**
 * How a finding speaks to a cause.
 *
 * @param finding which finding
 * @param cause to which cause
 * @param speaks for or against it
 * @param why in a few words; empty when it is plain
 * @param by who weighed it
 */
public record Weighing(Id<Finding> finding, Id<Cause> cause, Speaks speaks, String why, String by) implements Fact {}
