package witnessmark.domain;

/** What a person made of a trial. */
public enum TrialVerdict implements Coded {
    BETTER("better"),
    AS_GOOD("as good"),
    WORSE("worse"),
    NOT_TOLD("cannot be told");

    private final String code;

    TrialVerdict(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
