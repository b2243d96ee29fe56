package witnessmark.logbook.building;

import witnessmark.domain.Coded;

/** Where a part goes that comes out in a build. */
public enum Goes implements Coded {
    /** Back on the shelf, free to be fitted. */
    SHELF("shelf"),
    /** Aside until somebody decides, the whole of it or one member of a set. */
    QUARANTINE("quarantine"),
    /** To a machinist, a maker, another team. */
    AWAY("away"),
    /** Out of use for good. */
    SCRAP("scrap");

    private final String code;

    Goes(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
