package witnessmark.study.result;

/** In what incidents may be alike, in the order a crew asks. */
public enum Aspect {
    ENGINE,
    CAR,
    /** The very same part. */
    PART,
    DESIGN,
    BATCH,
    /** Where the findings are: a cylinder, rod or main bearing. */
    NUMBER,
    MARK,
    TOOL,
    /** Who tightened, or signed the build. */
    HAND,
    LUBRICANT,
    CIRCUIT,
    DRIVER
}
