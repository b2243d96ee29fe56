package witnessmark.logbook.run;

import java.util.Locale;
import java.util.Optional;
import witnessmark.domain.Coded;

/** The fields of the run sheet, in the order a person goes through them. */
public enum RunField implements Coded {
    /** Which car, or which engine on the dyno: a key of {@link Choice}. */
    CAR,
    EVENT,
    PLANNED,
    DRIVER,
    DATE,
    OUT_AT,
    RUNNING,
    LAPS,
    HIGHEST,
    OVER_REVS,
    WATER,
    OIL,
    OIL_PRESSURE,
    OIL_ADDED,
    WARM_UP,
    TRACK,
    LOADED,
    KNOWN,
    DISTANCE,
    HEAT_CYCLES,
    RACE_STARTS,
    AMBIENT,
    DRIVER_ASKED,
    REMARKS;

    @Override
    public String code() {
        return key();
    }

    /** The name drafts and the record of what was typed keep this field under. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<RunField> of(String key) {
        for (RunField field : values()) {
            if (field.key().equals(key)) {
                return Optional.of(field);
            }
        }
        return Optional.empty();
    }

    /** Whether it is picked from {@link RunSheet#choices}, not typed. */
    public boolean chosen() {
        return switch (this) {
            case CAR, EVENT, PLANNED, DRIVER, KNOWN, DRIVER_ASKED -> true;
            default -> false;
        };
    }

    /** Whether it was measured on the run, and so is never carried over from another. */
    public boolean measured() {
        return switch (this) {
            case CAR, EVENT, PLANNED, DRIVER, DATE, OUT_AT, KNOWN, HEAT_CYCLES, RACE_STARTS, DRIVER_ASKED -> false;
            default -> true;
        };
    }
}
