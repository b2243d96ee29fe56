package witnessmark.domain;

/** What a part is made of, as far as it grows and stretches. */
public enum Metal implements Coded {
    CAST_IRON("cast iron"),
    STEEL("steel"),
    ALUMINIUM("aluminium"),
    TITANIUM("titanium");

    private final String code;

    Metal(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
