package witnessmark.logbook.sheets;

/** What a field of a sheet takes. */
public enum FieldKind {
    /** Words, a name, a figure: one line of text. */
    TEXT,
    /** One of a list. */
    CHOICE,
    /** A day. */
    DAY,
    /** A time of day. */
    CLOCK,
    /** A time that ran, in hours when bare. */
    HOURS,
    /** A speed of the engine. */
    SPEED,
    /** A length, in millimetres when bare. */
    LENGTH,
    /** A pressure, in bar when bare. */
    PRESSURE,
    /** A temperature, in degrees Celsius when bare. */
    TEMPERATURE,
    /** A force, in kilonewtons when bare. */
    FORCE,
    /** Several lines of text. */
    LINES
}
