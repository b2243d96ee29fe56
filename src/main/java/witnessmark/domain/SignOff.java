package witnessmark.domain;

import witnessmark.quantity.Moment;

/**
 * A build sheet signed. What stood then is kept with it, so that a limit set later changes nothing of what was signed.
 *
 * @param build which build
 * @param at when
 * @param by by whom
 * @param second the second pair of eyes on the critical fasteners; empty when there was none
 * @param words what they had to say
 */
public record SignOff(Id<Build> build, Moment at, String by, String second, String words) implements Fact {
    public SignOff {
        if (by.isBlank()) {
            throw new IllegalArgumentException("a sheet is signed by somebody");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }

    /** Whether the second pair of eyes is somebody else. */
    public boolean seenByTwo() {
        return !second.isBlank() && !second.equals(by);
    }
}
