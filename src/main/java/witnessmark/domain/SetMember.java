package witnessmark.domain;

/**
 * One member of a set: rod 3, spring exhaust 3B. It shares the set's life until it is split off.
 *
 * @param set the set
 * @param mark unique within the set
 * @param ordinal its turn when the set is read out
 */
public record SetMember(Id<Part> set, String mark, int ordinal) implements Fact {
    @Override
    public String knownAs() {
        return mark;
    }

    @Override
    public Id<?> knownWithin() {
        return set;
    }
}
