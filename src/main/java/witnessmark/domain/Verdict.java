package witnessmark.domain;

/** What a decision looks like afterwards. */
public enum Verdict implements Coded {
    RIGHT("right"),
    WRONG("wrong"),
    ACCEPTED("accepted");

    private final String code;

    Verdict(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
