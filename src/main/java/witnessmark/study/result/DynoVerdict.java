package witnessmark.study.result;

/** What a dyno sheet says beside its baseline. */
public enum DynoVerdict {
    /** It is a baseline. */
    BASELINE,
    /** The engine has none before it. */
    NO_BASELINE,
    /** The baseline is of another dyno, or corrected to another day: never compared. */
    OTHER_DYNO,
    OTHER_CORRECTION,
    /** One of the two is not corrected, or their curves do not meet. */
    NOT_TO_COMPARE,
    /** No further off than the dyno repeats. */
    ALIKE,
    /** More than the dyno repeats, upwards. */
    MORE,
    /** Less by more than the dyno repeats, and not yet what is worth a look. */
    LESS,
    /** 2 % less at the highest power, or 3 % anywhere: worth a look. */
    LOOK,
    /** More than 4 % less at the highest power: worth a strip once leak-down says so too. */
    STRIP
}
