package witnessmark.desktop.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.sheets.Choice;
import witnessmark.logbook.sheets.CorrectSheet;
import witnessmark.logbook.sheets.FieldKind;
import witnessmark.logbook.sheets.FoundProblem;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetNote;
import witnessmark.logbook.sheets.SheetReading;
import witnessmark.logbook.sheets.SheetTyped;
import witnessmark.logbook.sheets.TypedSheet;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What a sheet does, without a widget. What is typed stays until it is saved or cleared. */
final class SheetModel {
    private final TypedSheet typed;
    private final LogSheet sheet;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<SheetField, String> text = new HashMap<>();
    private final Set<SheetField> left = new HashSet<>();
    private Map<SheetField, String> picks = Map.of();
    private SheetReading reading;
    private List<FoundProblem> found = List.of();
    private Map<SheetField, String> meant = Map.of();
    private boolean asked;
    private boolean waits;
    private Runnable slow = this::readNow;
    private final Map<SheetField, String> followed = new HashMap<>();
    private Map<SheetField, String> begun = Map.of();
    private @Nullable Cleared cleared;

    /** What stood on the sheet, and how it came there. */
    private record Cleared(
            Map<SheetField, String> text,
            Set<SheetField> left,
            Map<SheetField, String> followed,
            Map<SheetField, String> begun) {}

    SheetModel(TypedSheet typed) {
        this.typed = typed;
        this.sheet = typed.sheet();
        text.putAll(typed.texts());
        begun = Map.copyOf(text);
        reading = typed.read(text);
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

    /** Whether something else stands on the sheet than what it began with. */
    boolean isDirty() {
        return sheet.fields().stream().anyMatch(field -> !text(field).equals(begun.getOrDefault(field, "")));
    }

    boolean asks(SheetField field) {
        return reading.asked().contains(field);
    }

    List<Choice> choices(SheetField field) {
        return sheet.choices(field, new SheetTyped(text), typed.sight());
    }

    Map<Choice, SheetNote> notOffered(SheetField field) {
        return sheet.notOffered(field, new SheetTyped(text), typed.sight());
    }

    List<String> about() {
        return sheet.about(new SheetTyped(text), typed.sight());
    }

    SheetLine line(SheetField field) {
        Problem problem = reading.of(field).problem();
        if (problem == null) {
            problem = found(field);
        }
        boolean now = asked || left.contains(field);
        return new SheetLine(reading.of(field).note(), now ? problem : null);
    }

    /** The field that what is written has to be settled in. */
    void needs(SheetField field) {
        found(reading, List.of(new FoundProblem(field, Problem.of(ProblemKind.NEEDED, field))));
    }

    /** The first field in which nothing stands, or else the first; the first of what is written. */
    SheetField firstEmpty() {
        List<SheetField> fields = List.copyOf(reading.asked());
        if (sheet instanceof CorrectSheet) {
            return fields.get(0);
        }
        return fields.stream()
                .filter(field -> text(field).isBlank())
                .findFirst()
                .orElse(fields.get(0));
    }

    /** The first field in which something stands that cannot be saved so; empty when there is none. */
    Optional<SheetField> firstAtFault() {
        return reading.stopped().stream()
                .filter(field -> !text(field).isBlank())
                .findFirst();
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
            if (field.kind() == FieldKind.CHOICE && !now.isBlank()) {
                left.add(field); // what was picked is whole
            }
            follow(field);
            reread();
        }
    }

    /** Fields in which nobody typed follow what was picked. */
    private void follow(SheetField picked) {
        sheet.follows(picked, new SheetTyped(text), typed.sight()).forEach((field, next) -> {
            String came = followed.getOrDefault(field, begun.getOrDefault(field, ""));
            if (text(field).equals(came)) {
                text.put(field, next);
                followed.put(field, next);
            }
        });
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

    /** What is picked at first from now on, besides what always stands there; seen when the sheet begins afresh. */
    void picks(Map<SheetField, String> first) {
        picks = Map.copyOf(first);
    }

    /** Everything as it was at first; {@link #putBack} undoes it, if something was typed. */
    void clear() {
        Cleared before = isDirty() ? here() : cleared;
        begin(Map.of());
        cleared = before;
    }

    boolean canPutBack() {
        return cleared != null;
    }

    /**
     * Puts back what stood on the sheet before it was cleared, of what it was about then: what the sheet is meant for now is not
     * what those words were typed of. What was typed since can be put back in its turn.
     */
    void putBack() {
        Cleared before = cleared;
        if (before == null) {
            return;
        }
        cleared = isDirty() ? here() : null;
        text.clear();
        text.putAll(before.text());
        left.clear();
        left.addAll(before.left());
        followed.clear();
        followed.putAll(before.followed());
        begun = before.begun();
        found = List.of();
        reread();
    }

    private Cleared here() {
        return new Cleared(texts(), Set.copyOf(left), Map.copyOf(followed), begun);
    }

    /** It is saved: everything as it was at first, for good. */
    void saved() {
        cleared = null;
        begin(Map.of());
    }

    /** The next sheet of the same kind: what is the same for several stays. */
    void next() {
        cleared = null;
        Map<SheetField, String> kept = new HashMap<>();
        sheet.kept().forEach(field -> kept.put(field, text(field)));
        begin(kept);
    }

    /** Looks again at what the logbook says now. */
    void reread() {
        Optional<SheetReading> quick = typed.glance(text);
        waits = quick.isEmpty();
        quick.ifPresentOrElse(this::take, slow);
        tell();
    }

    /** Says what reads the sheet where that takes a while, and hands {@link #read} what it came to. */
    void onSlow(Runnable read) {
        slow = read;
    }

    /** Whether what is typed has not been read yet. */
    boolean waits() {
        return waits;
    }

    /** What a reading came to; one of what is not on the sheet any more is dropped. */
    void read(Map<SheetField, String> of, SheetReading now) {
        if (of.equals(text)) {
            take(now);
            tell();
        }
    }

    private void readNow() {
        take(typed.read(text));
    }

    private void take(SheetReading now) {
        waits = false;
        if (!reading.equals(now)) {
            found = List.of();
        }
        reading = now;
    }

    /** Begins afresh when nothing was typed, and looks at the logbook again. */
    void open() {
        if (isDirty()) {
            reread();
        } else {
            begin(Map.of());
        }
    }

    /** The sheet is meant for something chosen already; what else was typed stays. To be called after {@link #open}. */
    void mean(Map<SheetField, String> chosen) {
        meant = chosen;
        begun = with(begun, chosen);
        text.putAll(chosen);
        left.addAll(chosen.keySet());
        Map<SheetField, String> before = texts();
        chosen.keySet().forEach(this::follow);
        Map<SheetField, String> came = new HashMap<>(text);
        came.entrySet().removeIf(each -> each.getValue().equals(before.get(each.getKey())));
        begun = with(begun, came); // nobody typed what came with it
        reread();
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
        text.putAll(meant);
        reread();
    }

    private void begin(Map<SheetField, String> kept) {
        meant = Map.of();
        followed.clear();
        text.clear();
        text.putAll(typed.texts());
        text.putAll(picks);
        text.putAll(kept);
        left.clear();
        asked = false;
        begun = Map.copyOf(text);
        kept.keySet().forEach(this::follow);
        found = List.of();
        reread();
    }

    private static Map<SheetField, String> with(Map<SheetField, String> all, Map<SheetField, String> more) {
        Map<SheetField, String> both = new HashMap<>(all);
        both.putAll(more);
        return both;
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
