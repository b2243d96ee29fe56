package witnessmark.study.result;

/** Where what is read at one place is going. */
public enum Trend {
    /** It rises by more than two readings differ by, and the order of the readings is not to be put down to chance. */
    RISING,
    /** It falls in the same way. */
    FALLING,
    /** There are enough readings, and they show neither. */
    NONE,
    /** Fewer readings since it began anew than could show anything. */
    TOO_FEW;

    /** Three readings are in order one time in three by chance alone; four one time in twelve. */
    public static final int FEWEST = 4;
}
