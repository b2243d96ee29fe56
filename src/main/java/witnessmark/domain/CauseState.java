package witnessmark.domain;

/** How a cause stands in an investigation. */
public enum CauseState implements Coded {
    OPEN("open"),
    RULED_OUT("ruled out"),
    CONTRIBUTING("contributing"),
    MAIN("main");

    private final String code;

    CauseState(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }

    /** Whether it is held to have brought the incident about. */
    public boolean blamed() {
        return this == CONTRIBUTING || this == MAIN;
    }
}
