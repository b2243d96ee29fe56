package witnessmark.domain;

/** What money went on. */
public enum CostCategory implements Coded {
    ENTRY("entry"),
    TEST_DAY("test day"),
    TRAVEL("travel"),
    TRANSPORT("transport"),
    ACCOMMODATION("accommodation"),
    CREW("crew"),
    CREW_FOOD("crew food"),
    HELPER("helper"),
    TYRES("tyres"),
    FUEL("fuel"),
    CONSUMABLES("consumables"),
    HIRE("hire"),
    ENGINE_HIRE("engine hire"),
    PARTS("parts"),
    MACHINING("machining"),
    INSPECTION("inspection"),
    LABOUR("labour"),
    DYNO("dyno"),
    FREIGHT("freight"),
    TOOLS("tools"),
    REPAIRS("repairs"),
    RECOVERY("recovery"),
    OTHER("other");

    private final String code;

    CostCategory(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
