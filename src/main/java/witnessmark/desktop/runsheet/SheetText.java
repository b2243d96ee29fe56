package witnessmark.desktop.runsheet;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import witnessmark.logbook.run.RunField;

/** The text of the sheet: what stands in each field, what the program put there, and what a person typed or left. */
final class SheetText {
    private final Map<RunField, String> text = new EnumMap<>(RunField.class);
    private final Map<RunField, String> given = new EnumMap<>(RunField.class);
    private final Set<RunField> typed = EnumSet.noneOf(RunField.class);
    private final Set<RunField> left = EnumSet.noneOf(RunField.class);
    private boolean broke;

    String of(RunField field) {
        return text.getOrDefault(field, "");
    }

    Map<RunField, String> all() {
        return text;
    }

    /** A person put this here. */
    void type(RunField field, String now) {
        text.put(field, now);
        typed.add(field);
    }

    /** The program puts this here. */
    void give(RunField field, String now) {
        text.put(field, now);
        given.put(field, now);
        typed.remove(field);
    }

    boolean isTyped(RunField field) {
        return typed.contains(field);
    }

    /** What a person put in no longer stands: the program fills the field again. */
    void forget(RunField field) {
        typed.remove(field);
    }

    /** The focus left the field: from now on its problems are shown. */
    void leave(RunField field) {
        if (typed.contains(field)) {
            left.add(field);
        }
    }

    boolean isLeft(RunField field) {
        return left.contains(field);
    }

    Set<RunField> typed() {
        return typed;
    }

    /** Whether somebody ticked that something broke or stopped the run. */
    boolean broke() {
        return broke;
    }

    void broke(boolean now) {
        broke = now;
    }

    /** Whether there is anything that would be lost. */
    boolean isDirty() {
        return broke || typed.stream().anyMatch(field -> !of(field).equals(given.getOrDefault(field, "")));
    }

    SheetText copy() {
        SheetText copy = new SheetText();
        copy.text.putAll(text);
        copy.given.putAll(given);
        copy.typed.addAll(typed);
        copy.left.addAll(left);
        copy.broke = broke;
        return copy;
    }
}
