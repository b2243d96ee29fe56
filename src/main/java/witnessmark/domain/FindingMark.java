package witnessmark.domain;

/** What a mark is called on the bench. */
public enum FindingMark implements Coded {
    /** Looked at, and no mark on it: that counts as evidence too. */
    NO_MARK("no mark"),
    AS_NEW("as new"),
    EVEN_WEAR("even wear"),
    WIPED("wiped"),
    CRAZED("crazed"),
    DIRT_EMBEDDED("dirt embedded"),
    SCORED("scored"),
    EDGE_WORN("worn at the edges"),
    FRETTED("fretted"),
    SPUN("spun"),
    HEAT_COLOUR("heat colour"),
    LINING_TORN("lining torn off"),
    ETCHED("etched"),
    ERODED("eroded"),
    PITTED("pitted"),
    HOLED("holed or melted"),
    SCUFFED("scuffed"),
    SEIZED("seized"),
    /** A polished arc, where squish bands met. */
    POLISHED_ARC("polished arc"),
    /** A half-moon, where a valve struck. */
    HALF_MOON("half-moon"),
    CRACKED("cracked"),
    BROKEN("broken"),
    BENT("bent"),
    STRETCHED("stretched"),
    OUT_OF_ROUND("out of round"),
    WORN("worn"),
    RECESSED("recessed"),
    BURNT("burnt"),
    CARBON_TRACK("carbon track"),
    BEATEN("beaten thin"),
    CRUSHED("crushed"),
    SPLIT("split"),
    SOFT("soft"),
    DISTORTED("distorted"),
    LOOSE("loose"),
    LEAKING("leaking"),
    CHAFED("chafed"),
    GLAZED("glazed"),
    RUSTY("rusty"),
    DEPOSITS("deposits"),
    SPECKS("specks"),
    FLAKES("flakes"),
    BLOCKED("blocked"),
    WET("wet"),
    MISSING("missing"),
    OTHER("something else");

    private final String code;

    FindingMark(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
