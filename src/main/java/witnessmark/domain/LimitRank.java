package witnessmark.domain;

/** Whose limit it is, strongest first. */
public enum LimitRank implements Coded {
    RULE_BOOK("rule book"),
    MAKER("maker"),
    BUILDER("builder"),
    OWN("own");

    private final String code;

    LimitRank(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
