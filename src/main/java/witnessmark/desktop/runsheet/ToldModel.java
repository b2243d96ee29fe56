package witnessmark.desktop.runsheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.ledger.result.LifeChange;
import witnessmark.logbook.run.FieldReading;
import witnessmark.logbook.run.Note;
import witnessmark.logbook.told.TellRunning;
import witnessmark.logbook.told.ToldField;
import witnessmark.logbook.told.ToldReading;
import witnessmark.outcome.Problem;

/** What the form for running told by others does, without a widget. It behaves as the run sheet does. */
public final class ToldModel {

    private final TellRunning telling;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<ToldField, String> text = new EnumMap<>(ToldField.class);
    private final Set<ToldField> left = EnumSet.noneOf(ToldField.class);
    private ToldReading reading;
    private boolean asked;
    private Optional<LifeChange> life = Optional.empty();
    private Map<ToldField, String> cleared = Map.of();

    public ToldModel(TellRunning telling) {
        this.telling = telling;
        this.reading = telling.read(text);
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    String text(ToldField field) {
        return text.getOrDefault(field, "");
    }

    Map<ToldField, String> texts() {
        return new EnumMap<>(text);
    }

    List<Entry<Engine>> engines() {
        return telling.engines();
    }

    ToldReading reading() {
        return reading;
    }

    /** The engine's life without what is told and with it, as last worked out. */
    Optional<LifeChange> life() {
        return life;
    }

    /** Takes the answer for a reading; an answer to another reading is dropped. */
    void life(ToldReading of, Optional<LifeChange> answer) {
        if (of == reading) {
            life = answer;
            tell();
        }
    }

    FieldLine line(ToldField field) {
        FieldReading read = reading.fields().getOrDefault(field, FieldReading.fine(Note.of(Note.Kind.NONE)));
        Problem problem = read.problem();
        boolean now = asked || left.contains(field);
        return problem == null || !now ? FieldLine.quiet(read, true) : FieldLine.loud(read, problem, problem.stops());
    }

    boolean isDirty() {
        return text.values().stream().anyMatch(now -> !now.isBlank());
    }

    ToldField firstEmpty() {
        for (ToldField field : ToldField.values()) {
            if (text(field).isBlank()) {
                return field;
            }
        }
        return ToldField.ENGINE;
    }

    List<ToldField> stopped() {
        return asked ? reading.stopped() : List.of();
    }

    void type(ToldField field, String now) {
        if (!text(field).equals(now)) {
            text.put(field, now);
            reread();
        }
    }

    /** The focus left a field: it is checked from now on, unless nothing was ever typed in it. */
    void leave(ToldField field) {
        if (text.containsKey(field)) {
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

    /** Empties the form; {@link #putBack} undoes it, if something was typed. */
    void clear() {
        Map<ToldField, String> before = isDirty() ? texts() : cleared;
        empty();
        cleared = before;
    }

    boolean canPutBack() {
        return !cleared.isEmpty();
    }

    /** Puts back what stood there before it was cleared; what was typed since can be put back in its turn. */
    void putBack() {
        Map<ToldField, String> before = cleared;
        Map<ToldField, String> since = isDirty() ? texts() : Map.of();
        empty();
        cleared = since;
        text.putAll(before);
        left.addAll(before.keySet());
        reread();
    }

    /** It is saved: empty, for good. */
    void saved() {
        empty();
    }

    private void empty() {
        cleared = Map.of();
        text.clear();
        left.clear();
        asked = false;
        life = Optional.empty();
        reread();
    }

    /** @param caret the field in focus, or null */
    Map<String, String> draft(@Nullable ToldField caret) {
        Map<String, String> kept = new HashMap<>();
        text.forEach((field, now) -> kept.put(field.key(), now));
        if (caret != null) {
            kept.put(KeptDraft.CARET, caret.key());
        }
        return kept;
    }

    /** Puts a draft on the form; what was typed meanwhile stays. */
    void restore(Map<String, String> kept) {
        kept.forEach((key, now) -> ToldField.of(key).ifPresent(field -> {
            if (text(field).isEmpty()) {
                text.put(field, now);
                left.add(field);
            }
        }));
        reread();
    }

    /** Looks again at what the logbook says now. */
    void reread() {
        reading = telling.read(text);
        if (reading.told() == null) {
            life = Optional.empty();
        }
        tell();
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
