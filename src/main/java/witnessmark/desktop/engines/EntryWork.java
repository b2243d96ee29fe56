package witnessmark.desktop.engines;

/** What can be done to an entry behind a figure. */
interface EntryWork {
    /** Takes it out, with a reason. */
    void strikeOut(BehindLine line, String because);

    /** Puts it back in force. */
    void restore(BehindLine line);

    /** Settles that it is the same run as another. */
    void same(BehindLine line);

    /** Settles that it is a run of its own. */
    void another(BehindLine line);

    /** Opens it on its sheet, where it can be corrected. */
    void open(BehindLine line);

    /** Shows who changed it, when and why. */
    void history(BehindLine line);
}
