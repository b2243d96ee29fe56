package witnessmark.domain;

/** How a group of fasteners is brought to its load. */
public enum JointMethod implements Coded {
    TORQUE("torque"),
    ANGLE("angle"),
    TORQUE_AND_ANGLE("torque and angle"),
    STRETCH("stretch");

    private final String code;

    JointMethod(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
