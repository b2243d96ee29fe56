package witnessmark.desktop.find;

/** The groups of what can be found, in the order they are shown. */
public enum FindGroup {
    ENGINES("beforewego.find.engines"),
    BUILDS("beforewego.find.builds"),
    PARTS("beforewego.find.parts"),
    DYNO("beforewego.find.dynoSheets"),
    RUNS("beforewego.find.runs"),
    TRACES("beforewego.find.traces"),
    TRIALS("beforewego.find.trials"),
    INCIDENTS("beforewego.find.incidents"),
    EVENTS("beforewego.find.events"),
    JOBS("beforewego.find.jobs");

    private final String key;

    FindGroup(String key) {
        this.key = key;
    }

    /** The key of its heading. */
    String key() {
        return key;
    }

    /** The key of the words that offer to show everything found of it. */
    String allKey() {
        return key + ".all";
    }
}
