package witnessmark.desktop.runsheet;

import witnessmark.logbook.run.RunField;

/** What a person does on the run sheet, for tests of pages that lead to it. */
public final class RunSheetHand {
    private RunSheetHand() {}

    public static void type(RunSheetPlace place, RunField field, String text) {
        place.model().type(field, text);
        place.model().leave(field);
    }

    public static String text(RunSheetPlace place, RunField field) {
        return place.model().text(field);
    }

    /** What is said beside the title. */
    public static String heading(RunSheetPlace place) {
        return place.heading();
    }

    /** Presses the main button of the sheet of a new run. */
    public static void save(RunSheetPlace place) {
        place.saveNew();
    }
}
