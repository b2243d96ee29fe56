package witnessmark.domain;

/** What a reading reads. A figure is a whole number of the kind's unit; a graded kind has a {@link Grade} instead. */
public enum ReadingKind implements Coded {
    /** Share of the air lost past rings, valves and gasket. */
    LEAK_DOWN("leak-down", Unit.HUNDREDTH_OF_PERCENT),
    COMPRESSION("compression", Unit.PASCAL),
    /** Force of a valve spring at the height its valve is shut. */
    SPRING_FORCE("spring force", Unit.MILLINEWTON),
    /** Clearance at a valve, cold unless the reading says hot. */
    LASH("lash", Unit.NANOMETRE),
    /** Brinell hardness. */
    HARDNESS("hardness", Unit.TENTH_OF_BRINELL),
    OIL_PRESSURE("oil pressure", Unit.PASCAL),
    /** A wear metal in an oil sample; the place names the metal. */
    OIL_METAL("oil metal", Unit.MILLIGRAM_PER_TONNE),
    /** The oil filter cut open. */
    FILTER("filter", Unit.GRADE),
    PLUG("plug", Unit.GRADE),
    BORESCOPE("borescope", Unit.GRADE);

    /** The unit a reading's whole number is in. */
    public enum Unit {
        HUNDREDTH_OF_PERCENT,
        PASCAL,
        MILLINEWTON,
        NANOMETRE,
        TENTH_OF_BRINELL,
        /** A thousandth of a part per million by mass. */
        MILLIGRAM_PER_TONNE,
        /** No figure: a word from {@link Grade}. */
        GRADE
    }

    private final String code;
    private final Unit unit;

    ReadingKind(String code, Unit unit) {
        this.code = code;
        this.unit = unit;
    }

    @Override
    public String code() {
        return code;
    }

    public Unit unit() {
        return unit;
    }

    public boolean graded() {
        return unit == Unit.GRADE;
    }
}
