package witnessmark.ledger.result;

/**
 * What a run does to one limit.
 *
 * @param before how much is used without it
 * @param after how much is used with it
 */
public record Effect(LimitUse before, LimitUse after) {
    public Effect {
        if (!before.limit().id().equals(after.limit().id())) {
            throw new IllegalArgumentException("an effect is on one limit");
        }
    }

    /** Whether the run takes it from inside the limit, or from not known, to over. */
    public boolean goesOver() {
        return before.state() != MarkState.OVER && after.state() == MarkState.OVER;
    }
}
