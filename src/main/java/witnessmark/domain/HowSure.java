package witnessmark.domain;

/** How sure somebody is of what he says. */
public enum HowSure implements Coded {
    GUESS("guess"),
    LIKELY("likely"),
    SEEN("seen");

    private final String code;

    HowSure(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
