package witnessmark.domain;

/** To which standard power is corrected to its reference day. */
public enum CorrectionKind implements Coded {
    SAE_J1349("SAE J1349"),
    ISO_1585("ISO 1585"),
    DIN_70020("DIN 70020"),
    /** Left as observed. */
    NONE("none");

    private final String code;

    CorrectionKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
