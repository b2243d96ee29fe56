package witnessmark.cost.result;

/** By what failures are put together. */
public enum BarsBy {
    INCIDENT,
    CAUSE_AREA,
    PART_KIND,
    EVENT,
    CAR,
    ENGINE
}
