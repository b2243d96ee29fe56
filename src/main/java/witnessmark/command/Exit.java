package witnessmark.command;

/** How a command ends, as the shell sees it. */
final class Exit {
    static final int WORKED = 0;
    /** It did not work; nothing was changed. */
    static final int DID_NOT = 1;
    /** The arguments make no sense. */
    static final int USAGE = 2;
    /** It worked except for what was printed on standard error. */
    static final int WORKED_EXCEPT = 3;

    private Exit() {}
}
