package witnessmark.desktop.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.sheets.Choice;
import witnessmark.logbook.sheets.FieldKind;
import witnessmark.logbook.sheets.FoundProblem;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetReading;
import witnessmark.logbook.sheets.SheetTyped;
import witnessmark.logbook.sheets.WriteSheet;
import witnessmark.outcome.Problem;
import witnessmark.quantity.typed.TypedDate;

/** What a sheet does, without a widget. What is typed stays until it is saved or cleared. */
final class SheetModel {
    private final WriteSheet writing;
    private final LogSheet sheet;
    private final Function<LocalDate, String> dates;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<SheetField, String> text = new HashMap<>();
    private final Set<SheetField> left = new HashSet<>();
    private SheetReading reading;
    private List<FoundProblem> found = List.of();
    private boolean asked;
    private boolean dirty;

    /** @param dates a day as people read it */
    SheetModel(WriteSheet writing, LogSheet sheet, Function<LocalDate, String> dates) {
        this.writing = writing;
        this.sheet = sheet;
        this.dates = dates;
        text.putAll(fresh());
        reading = writing.read(sheet, text);
    }

    LogSheet sheet() {
        return sheet;
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    String text(SheetField field) {
        return text.getOrDefault(field, "");
    }

    Map<SheetField, String> texts() {
        return Map.copyOf(text);
    }

    SheetReading reading() {
        return reading;
    }

    boolean isDirty() {
        return dirty;
    }

    boolean asks(SheetField field) {
        return reading.asked().contains(field);
    }

    List<Choice> choices(SheetField field) {
        return sheet.choices(field, new SheetTyped(text), writing.sight());
    }

    List<String> about() {
        return sheet.about(new SheetTyped(text), writing.sight());
    }

    SheetLine line(SheetField field) {
        Problem problem = reading.of(field).problem();
        if (problem == null) {
            problem = found(field);
        }
        boolean now = asked || left.contains(field);
        return new SheetLine(reading.of(field).note(), now ? problem : null);
    }

    /** The first field in which nothing stands, or else the first. */
    SheetField firstEmpty() {
        List<SheetField> fields = List.copyOf(reading.asked());
        return fields.stream()
                .filter(field -> text(field).isBlank())
                .findFirst()
                .orElse(fields.get(0));
    }

    /** The fields that keep the sheet from being saved, once somebody tried. */
    List<SheetField> stopped() {
        if (!asked) {
            return List.of();
        }
        Set<SheetField> stopped = new LinkedHashSet<>(reading.stopped());
        for (FoundProblem each : found) {
            SheetField field = each.field();
            if (field != null && each.problem().stops()) {
                stopped.add(field);
            }
        }
        return List.copyOf(stopped);
    }

    void type(SheetField field, String now) {
        if (!text(field).equals(now)) {
            text.put(field, now);
            dirty = true;
            if (field.kind() == FieldKind.CHOICE && !now.isBlank()) {
                left.add(field); // what was picked is whole
            }
            reread();
        }
    }

    /** The focus left a field: it is checked from now on, unless it is empty. */
    void leave(SheetField field) {
        if (!text(field).isBlank()) {
            left.add(field);
        }
        reread();
    }

    /** Somebody wants to save: everything is checked. */
    boolean ask() {
        asked = true;
        reread();
        return !reading.stops();
    }

    /** Takes what contradicts the logbook; an answer about another reading is dropped. */
    void found(SheetReading of, List<FoundProblem> problems) {
        if (of == reading) {
            found = List.copyOf(problems);
            found.forEach(each -> {
                SheetField field = each.field();
                if (field != null) {
                    left.add(field);
                }
            });
            tell();
        }
    }

    /** Whether something found contradicts the logbook beyond saving. */
    boolean contradicts() {
        return found.stream().anyMatch(each -> each.problem().stops());
    }

    List<FoundProblem> found() {
        return found;
    }

    /** Everything as it was at first. */
    void clear() {
        begin(Map.of());
    }

    /** The next sheet of the same kind: what is the same for several stays. */
    void next() {
        Map<SheetField, String> kept = new HashMap<>();
        sheet.kept().forEach(field -> kept.put(field, text(field)));
        begin(kept);
    }

    /** Looks again at what the logbook says now. */
    void reread() {
        SheetReading before = reading;
        reading = writing.read(sheet, text);
        if (!before.equals(reading)) {
            found = List.of();
        }
        tell();
    }

    /** Begins afresh when nothing was typed, and looks at the logbook again. */
    void open() {
        if (dirty) {
            reread();
        } else {
            clear();
        }
    }

    /** What is typed, to be kept. */
    Map<String, String> draft() {
        Map<String, String> kept = new HashMap<>();
        text.forEach((field, now) -> kept.put(field.key(), now));
        return kept;
    }

    /** Puts a draft on the sheet, and checks what stands in it. */
    void restore(Map<String, String> kept) {
        for (SheetField field : sheet.fields()) {
            String now = kept.get(field.key());
            if (now != null) {
                text.put(field, now);
                if (!now.isBlank()) {
                    left.add(field);
                }
            }
        }
        dirty = true;
        reread();
    }

    private void begin(Map<SheetField, String> kept) {
        text.clear();
        text.putAll(fresh());
        text.putAll(kept);
        left.clear();
        asked = false;
        dirty = false;
        found = List.of();
        reread();
    }

    /** Days as people read them, where they read back to the same day. */
    private Map<SheetField, String> fresh() {
        Map<SheetField, String> out = new HashMap<>();
        sheet.fresh(writing.sight()).forEach((field, now) -> out.put(field, shown(field, now)));
        return out;
    }

    private String shown(SheetField field, String now) {
        if (field.kind() != FieldKind.DAY) {
            return now;
        }
        LocalDate day = LocalDate.parse(now);
        String words = dates.apply(day);
        return TypedDate.read(words, writing.sight().today(), writing.sight().days())
                        .only()
                        .filter(day::equals)
                        .isPresent()
                ? words
                : now;
    }

    private @Nullable Problem found(SheetField field) {
        return found.stream()
                .filter(each -> field.equals(each.field()))
                .map(FoundProblem::problem)
                .findFirst()
                .orElse(null);
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
