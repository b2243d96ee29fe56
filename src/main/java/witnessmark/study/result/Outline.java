package witnessmark.study.result;

/** What is drawn of a part, so that a place on it can be shown: angles from where they are counted, and how far out or along it. */
public enum Outline {
    NONE,
    /** Seen from above: round from the front end over the exhaust side, out from the middle to the edge. */
    DISC,
    /** Half a bearing laid flat: round from the parting line on the inlet side, out from the front edge. */
    HALF,
    /** A cylinder that stands, laid flat: round from the front end over the exhaust side, out from its upper edge. */
    ROUND,
    /**
     * One that lies along the crank, laid flat: round from the top over the exhaust side, out from its front edge. What turns is
     * taken with cylinder 1 at top dead centre.
     */
    TUNNEL,
    /** Seen from the front end: round from the top over the exhaust side, out from the middle to the edge; the same for what turns. */
    WHEEL;

    /** Whether it is drawn as a disc; else laid flat. */
    public boolean disc() {
        return this == DISC || this == WHEEL;
    }

    /** How far round it goes, in degrees: 360, or 180 for a half. */
    public int degrees() {
        return this == HALF ? 180 : 360;
    }
}
