package witnessmark.domain;

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

    /** From 2 for strongly for to -2 for strongly against. */
    public int weight() {
        return weight;
    }
}
