package witnessmark.domain;

/** What money came from. */
public enum IncomeKind implements Coded {
    PRIZE("prize"),
    START_MONEY("start money"),
    SPONSOR("sponsor"),
    CUSTOMER("customer"),
    SALE("sale"),
    INSURANCE("insurance"),
    OTHER("other");

    private final String code;

    IncomeKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
