package witnessmark.domain;

/** Whether money has gone, will go, or stands for work of our own. */
public enum CostBasis implements Coded {
    CASH("cash"),
    COMMITTED("committed"),
    VALUED("valued");

    private final String code;

    CostBasis(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
