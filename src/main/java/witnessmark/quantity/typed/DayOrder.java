package witnessmark.quantity.typed;

/** What stands first in a date of figures, {@code 5/12}. */
public enum DayOrder {
    DAY_FIRST,
    MONTH_FIRST
}
