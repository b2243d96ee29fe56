package witnessmark.domain;

/** What is marked at a place of a face. */
public enum FaceMarkKind implements Coded {
    LOW("low area"),
    PROUD("proud area"),
    /** Where the cutter did not reach. */
    SHADOW("shadow"),
    /** Where blue on a plate left nothing. */
    NO_BLUE("no blue"),
    GAS_TRACK("gas track"),
    SPLIT_RING("split ring"),
    UNSEALED("unsealed patch"),
    /** By water or gas. */
    EATEN("eaten away"),
    CRACK("crack"),
    WELD("weld"),
    SOFT("soft"),
    /** A polished arc, where a piston met it. */
    PISTON_CONTACT("piston contact");

    private final String code;

    FaceMarkKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
