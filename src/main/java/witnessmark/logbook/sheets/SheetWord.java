package witnessmark.logbook.sheets;

import java.util.Locale;

/** Words of choices that no entry and no closed list has. */
public enum SheetWord {
    NONE,
    NEW_DESIGN,
    NEW_PART,
    ALL_DESIGNS,
    PART_NEW,
    KNOWN,
    ABOUT,
    NOT_KNOWN,
    YES,
    NO,
    KIND_IN_DESIGN,
    ONE_PART,
    CAR,
    ENGINE,
    WHOLE_SET,
    ENGINE_OPEN,
    WHOLE_EVENT,
    WHOLE_ENGINE,
    SOMEBODY_ASKED,
    NOBODY_ASKED,
    LET_OUT,
    SCRAP_IT,
    NEW_PARTS,
    NEW_BATCH,
    NOT_ON_SHELF,
    AT_TIME,
    OIL_FRESH,
    OIL_KEPT,
    COOLER_CLEANED,
    COOLER_AS_IT_WAS,
    NOT_SAID,
    OUT_OF_USE,
    BACK_IN_USE,
    NOTHING,
    SHARED,
    PAID,
    STILL_TO_PAY,
    OWN_LABOUR,
    ALL_PLACES,
    EVERY_OTHER;

    /** What a field holds when this is picked, and the name in the bundles. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    Choice choice() {
        return this == NONE ? Choice.of("", this) : Choice.of(key(), this);
    }
}
