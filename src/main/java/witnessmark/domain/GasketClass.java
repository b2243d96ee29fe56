package witnessmark.domain;

/** What a head gasket is made like, which says what face it needs; the one that lets go first stands first. */
public enum GasketClass implements Coded {
    /** Fibre or graphite on a steel core. */
    COMPOSITE("composite"),
    /** Solid copper. */
    COPPER("copper"),
    /** Copper over a wire let into a groove. */
    COPPER_WITH_WIRE("copper with wire"),
    MULTI_LAYER_STEEL("multi-layer steel"),
    /** Metal rings for the gas, rubber for the water. */
    GAS_RING("gas ring");

    private final String code;

    GasketClass(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
