package witnessmark.ledger.result;

/**
 * A life without a run and with it.
 *
 * @param before without it
 * @param after with it
 */
public record LifeChange(Life before, Life after) {
    public LifeChange {
        if (before.counter() != after.counter()) {
            throw new IllegalArgumentException("one life is counted in one counter");
        }
    }
}
