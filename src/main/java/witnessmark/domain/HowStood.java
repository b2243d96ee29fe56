package witnessmark.domain;

/** How a part stood while it was measured. */
public enum HowStood implements Coded {
    NOT_SAID("not said"),
    /** The piston pressed towards the crank. */
    PUSHED_DOWN("pushed down"),
    /** The piston with nothing but its own weight on it. */
    HANGING("hanging"),
    /** The piston drawn away from the crank. */
    PULLED_UP("pulled up"),
    BARE("bare"),
    /** A torque plate bolted on as the head is. */
    PLATE_ON("plate on"),
    /** Caps or head tightened as in use. */
    TIGHTENED("tightened"),
    HOT("hot");

    private final String code;

    HowStood(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
