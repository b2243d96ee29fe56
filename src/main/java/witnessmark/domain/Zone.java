package witnessmark.domain;

/** What a build opened. Opening one zone may open another: a depth includes another when its zones do. */
public enum Zone implements Coded {
    COVERS("covers"),
    HEAD("head"),
    SUMP("sump"),
    FRONT("front"),
    BOTTOM_END("bottom end"),
    OUT_OF_CAR("out of the car");

    private final String code;

    Zone(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
