package witnessmark.domain;

/** How a face was looked at. */
public enum FaceMethod implements Coded {
    STRAIGHTEDGE("straightedge and feelers"),
    /** A surface plate or a granite block, and a dial. */
    PLATE_AND_DIAL("plate and dial"),
    MACHINE("measuring machine"),
    BLUE("blue on a plate"),
    EYE("by eye");

    private final String code;

    FaceMethod(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
