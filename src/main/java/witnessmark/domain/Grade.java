package witnessmark.domain;

import java.util.Set;

/** How something looked, in the words of the bench, each with how bad it is from 0 up within its kind of reading. */
public enum Grade implements Coded {
    CLEAN("clean", 0, Set.of(ReadingKind.FILTER, ReadingKind.PLUG, ReadingKind.BORESCOPE)),
    /** What a fresh engine sheds while it runs in; no worse than clean. */
    RUN_IN_GREY("run-in grey", 0, Set.of(ReadingKind.FILTER)),
    FEW_SPECKS("few specks", 1, Set.of(ReadingKind.FILTER, ReadingKind.PLUG)),
    FLAKES("flakes", 2, Set.of(ReadingKind.FILTER)),
    /** Copper or lead of a shell. */
    BEARING_COLOUR("bearing colour", 3, Set.of(ReadingKind.FILTER)),
    LIGHT_MARKS("light marks", 1, Set.of(ReadingKind.BORESCOPE)),
    DAMAGED("damaged", 2, Set.of(ReadingKind.PLUG, ReadingKind.BORESCOPE));

    private final String code;
    private final int badness;
    private final Set<ReadingKind> kinds;

    Grade(String code, int badness, Set<ReadingKind> kinds) {
        this.code = code;
        this.badness = badness;
        this.kinds = kinds;
    }

    @Override
    public String code() {
        return code;
    }

    /** How bad, 0 for as it should be. */
    public int badness() {
        return badness;
    }

    /** Whether readings of this kind are graded by this word. */
    public boolean of(ReadingKind kind) {
        return kinds.contains(kind);
    }
}
