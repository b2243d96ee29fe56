package witnessmark.domain;

/** Whether the engine was hot or cold when something was read. */
public enum Warmth implements Coded {
    COLD("cold"),
    HOT("hot"),
    NOT_SAID("not said");

    private final String code;

    Warmth(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
