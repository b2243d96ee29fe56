package witnessmark.domain;

/** A side of an engine, seen from its front end towards the rear. */
public enum FrontSide implements Coded {
    LEFT("left"),
    RIGHT("right");

    private final String code;

    FrontSide(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
