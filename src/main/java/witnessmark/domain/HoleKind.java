package witnessmark.domain;

/** What a hole in a face is for. */
public enum HoleKind implements Coded {
    /** Numbered by its cylinder. */
    BORE("bore"),
    STUD("stud"),
    DOWEL("dowel"),
    WATER("water"),
    OIL("oil"),
    OTHER("other");

    private final String code;

    HoleKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
