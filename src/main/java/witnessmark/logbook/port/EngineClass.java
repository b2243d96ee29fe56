package witnessmark.logbook.port;

import witnessmark.domain.Coded;

/** What an engine is built for, as far as it says from which figures its limits usually start. */
public enum EngineClass implements Coded {
    /** On production block and crank, in modest tune. */
    CLUB("club"),
    /** Iron block, pushrods, older castings. */
    HISTORIC("historic"),
    /** Four-stroke with racing internals, for sports racers and formula cars. */
    FORMULA("formula"),
    /** From a motorcycle, at ten thousand revolutions and more. */
    MOTORCYCLE("motorcycle"),
    /** Detuned, for races of hours. */
    ENDURANCE("endurance");

    private final String code;

    EngineClass(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
