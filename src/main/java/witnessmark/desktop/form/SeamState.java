package witnessmark.desktop.form;

import witnessmark.ledger.result.MarkState;

/** The eight states a witness mark can show, worst first: the order in which lists sort them. */
public enum SeamState {
    /** A trigger without clearance: do not start. */
    HELD("held", Palette.OVER, "over"),
    /** At or past its limit now. */
    OVER("over", Palette.OVER, "over"),
    /** Past its limit, signed up to a new figure. */
    RUN_ON("runOn", Palette.OVER, "over"),
    /** Crosses its limit within the next event, or within one event's running after it. */
    DUE("due", Palette.DUE, "due"),
    /** No limit, no reading, or one too old. */
    NOT_KNOWN("notKnown", Palette.NOT_KNOWN, "notKnown"),
    /** Inside its recorded limits after the next event and one more like it. */
    WITHIN("within", Palette.WITHIN, "within"),
    /** Off the engine, on the bench, or away. */
    APART("apart", Palette.WITHIN, "within"),
    /** Out of use, kept for its history. */
    SCRAP("scrap", Palette.NOT_KNOWN, "notKnown");

    private final String name;
    private final Palette ink;
    private final String style;

    SeamState(String name, Palette ink, String style) {
        this.name = name;
        this.ink = ink;
        this.style = style;
    }

    /** The mark under which a part, an engine or a car stands. */
    public static SeamState of(MarkState state) {
        return switch (state) {
            case HELD -> HELD;
            case OVER -> OVER;
            case RUN_ON -> RUN_ON;
            case DUE -> DUE;
            case NOT_KNOWN -> NOT_KNOWN;
            case WITHIN -> WITHIN;
        };
    }

    /** The key of its word: {@code form.state.over}. */
    public String key() {
        return "form.state." + name;
    }

    /** The colour of its words and outlines. */
    public Palette ink() {
        return ink;
    }

    /** The style class of words that say this state: semibold, in its colour. */
    public String style() {
        return style;
    }
}
