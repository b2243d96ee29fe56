package witnessmark.domain;

/** The order in which an engine is measured while it goes together. */
public enum BuildStep implements Coded {
    BLOCK("block"),
    CRANK("crank"),
    RODS("rods"),
    PISTONS("pistons and rings"),
    DECK("deck"),
    HEAD("head"),
    GASKET("head gasket"),
    VALVE_GEAR("valve gear"),
    TIMING("timing"),
    WORKED_OUT("worked out");

    private final String code;

    BuildStep(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
