package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/** For or against a cause. */
public enum Speaks implements Coded {
    STRONGLY_FOR("strongly for", 2),
    FOR("for", 1),
    NEITHER("neither", 0),
    AGAINST("against", -1),
    STRONGLY_AGAINST("strongly against", -2);

    private final String code;
    private final int weight;

    Speaks(String code, int weight) {
        this.code = code;
        this.weight = weight;
    }

    @Override
    public String code() {
        return code;
    }

    /** Said once more: for becomes strongly for, against strongly against; anything else begins again there. */
    public Speaks onceMore(@Nullable Speaks was) {
        if (was != this) {
            return this;
        }
        return switch (this) {
            case FOR -> STRONGLY_FOR;
            case AGAINST -> STRONGLY_AGAINST;
            default -> this;
        };
    }

    /** From 2 for strongly for to -2 for strongly against. */
    public int weight() {
        return weight;
    }
}
