package witnessmark.desktop.runsheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.logbook.run.Choice;
import witnessmark.logbook.run.FieldReading;
import witnessmark.logbook.run.RunDoes;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunReading;
import witnessmark.logbook.run.TypedRun;
import witnessmark.logbook.run.WrittenRun;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * What the run sheet does, without a widget: what stands in each field and under it, what follows when something is
 * picked, when a problem is shown, what a draft holds, and what saving and clearing leave behind. One thread only.
 */
public final class RunSheetModel {
    private static final String TYPED = "typed by hand";
    private static final String BROKE = "something broke";
    private static final Set<RunField> LEADING = Set.of(RunField.CAR, RunField.EVENT, RunField.PLANNED);

    private final List<Runnable> listeners = new ArrayList<>();
    private TypedRun sheet;
    private @Nullable WrittenRun written;
    private SheetText text = new SheetText();
    private @Nullable SheetText cleared;
    private RunReading reading;
    private boolean asked;
    private boolean open;
    private String dateFollowed = "";
    private Optional<RunDoes> does = Optional.empty();

    /** @param sheet what a new run is read with */
    RunSheetModel(TypedRun sheet) {
        this.sheet = sheet;
        this.reading = sheet.read(text.all());
    }

    /** @param written the run to correct */
    RunSheetModel(WrittenRun written) {
        this.sheet = written;
        this.written = written;
        start(new SheetText(), written.texts());
        this.reading = sheet.read(text.all());
    }

    /** Told after every change. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    // What stands on the sheet

    String text(RunField field) {
        return text.of(field);
    }

    /** Every field as it stands now; later typing does not change it. */
    Map<RunField, String> texts() {
        return new EnumMap<>(text.all());
    }

    /** What the fields are read with. */
    TypedRun sheet() {
        return sheet;
    }

    List<Choice> choices(RunField field) {
        return sheet.choices(field, text.all());
    }

    RunReading reading() {
        return reading;
    }

    /** The line under a field. */
    FieldLine line(RunField field) {
        FieldLine line = lineNow(field);
        if (isChanged(field)) {
            return line.was(was(field));
        }
        return written == null ? line : line.quieter();
    }

    private FieldLine lineNow(RunField field) {
        FieldReading read = reading.of(field);
        Problem problem = read.problem();
        if (problem == null || !isTimeToSay(field, problem)) {
            return overlap(field)
                    .map(other -> FieldLine.loud(read, other, true))
                    .orElseGet(() -> FieldLine.quiet(read, text.isTyped(field)));
        }
        boolean question = problem.kind() == ProblemKind.BEFORE_OR_AFTER_CHANGE && !asked;
        return FieldLine.loud(read, problem, problem.stops() && !question);
    }

    /** Another run at that time is told as a whole, and marked where it is put right. */
    private Optional<Problem> overlap(RunField field) {
        return field != RunField.OUT_AT
                ? Optional.empty()
                : wholeRun().stream()
                        .filter(problem -> problem.kind() == ProblemKind.RUNS_OVERLAP
                                || problem.kind() == ProblemKind.RUNS_OVERLAP_ABOUT)
                        .findFirst();
    }

    /** Whether something else stands in a field of a written run than is written. */
    private boolean isChanged(RunField field) {
        WrittenRun run = written;
        return run != null && run.changed(text.all()).contains(field);
    }

    /** What stands in a field as the run is written: a text, or what was picked. */
    private Object was(RunField field) {
        Map<RunField, String> before = written == null ? Map.of() : written.texts();
        String then = before.getOrDefault(field, "");
        return sheet.choices(field, before).stream()
                .filter(choice -> choice.key().equals(then))
                .<Object>map(choice -> choice)
                .findFirst()
                .orElse(then);
    }

    /** What is wrong with the run as a whole, or to be asked. */
    List<Problem> wholeRun() {
        return isDirty() ? reading.problems() : List.of();
    }

    /** The fields that kept the run from being saved and still would; empty before anybody saved. */
    List<RunField> stopped() {
        return asked ? reading.stopped() : List.of();
    }

    /** What the run would do, as last worked out; empty while it cannot be told. */
    Optional<RunDoes> does() {
        return does;
    }

    /** Takes the answer for a reading; an answer to another reading is dropped. */
    void does(RunReading asked, Optional<RunDoes> answer) {
        if (asked == reading) {
            does = answer;
            tell();
        }
    }

    /** Whether something was typed that is not in the logbook. */
    boolean isDirty() {
        WrittenRun run = written;
        return run == null ? text.isDirty() : !run.changed(text.all()).isEmpty();
    }

    /** Where the typing goes on: the first measured field that is empty. */
    RunField firstEmpty() {
        for (RunField field : RunField.values()) {
            if (field.measured() && text.of(field).isBlank()) {
                return field;
            }
        }
        return RunField.RUNNING;
    }

    // What a person does

    /** Somebody typed into a field or picked in it. */
    void type(RunField field, String now) {
        if (text.of(field).equals(now)) {
            return;
        }
        text.type(field, now);
        if (LEADING.contains(field)) {
            follow(field);
        }
        reread();
    }

    /** Whether something broke or stopped the run, so that an incident is reported once it is saved. */
    boolean broke() {
        return text.broke();
    }

    /** Somebody ticked that something broke or stopped the run, or took the tick away. */
    void broke(boolean now) {
        if (text.broke() != now) {
            text.broke(now);
            tell();
        }
    }

    /** The focus left a field: it is checked from now on. */
    void leave(RunField field) {
        text.leave(field);
        if (field == RunField.DATE && !text.of(field).equals(dateFollowed)) {
            follow(field);
        }
        reread();
    }

    /** The arrow keys in date and time out. */
    void step(RunField field, int by) {
        String next = sheet.stepped(field, text.all(), by);
        if (!next.equals(text.of(field))) {
            text.type(field, next);
            leave(field);
        }
    }

    /** Puts the time of day into the time out: only a person may say that a run went out now. */
    void outNow() {
        text.type(RunField.OUT_AT, sheet.clockNow(text.all()));
        leave(RunField.OUT_AT);
    }

    /**
     * Takes what was perhaps meant.
     *
     * @return whether there was such a thing
     */
    boolean take(RunField field) {
        leave(field); // taken before the field was left: it is checked now
        String meant = line(field).problem() == null ? null : reading.of(field).meant();
        if (meant == null) {
            return false;
        }
        text.type(field, meant);
        leave(field);
        return true;
    }

    /**
     * Somebody wants to save: everything is checked, empty fields too.
     *
     * @return whether it can be saved as it stands
     */
    boolean ask() {
        asked = true;
        if (!text.of(RunField.DATE).equals(dateFollowed)) {
            follow(RunField.DATE);
        }
        reread();
        return !reading.stops();
    }

    // Filling, saving, clearing

    /** Fills the fields nobody typed in. */
    void fill(Map<RunField, String> fresh) {
        open = true;
        fresh.forEach((field, value) -> {
            if (!text.isTyped(field)) {
                text.give(field, value);
            }
        });
        dateFollowed = text.of(RunField.DATE);
        reread();
    }

    /** Whether it was filled once. */
    boolean isOpen() {
        return open;
    }

    /**
     * The run was saved: the sheet moves on. What was typed after that moment goes with it.
     *
     * @param saved the fields as they were saved
     * @param fresh what the next run starts with
     */
    void moveOn(Map<RunField, String> saved, Map<RunField, String> fresh) {
        Map<RunField, String> meanwhile = new EnumMap<>(RunField.class);
        text.all().forEach((field, now) -> {
            if (field.measured() && !now.equals(saved.getOrDefault(field, ""))) {
                meanwhile.put(field, now);
            }
        });
        start(new SheetText(), fresh);
        meanwhile.forEach(text::type);
        cleared = null;
        reread();
    }

    /** Empties the sheet; {@link #putBack} undoes it once. */
    void clear(Map<RunField, String> fresh) {
        SheetText before = text.copy();
        start(new SheetText(), fresh);
        cleared = before;
        reread();
    }

    // A written run

    /**
     * The correction is saved. What was typed after that moment stays.
     *
     * @param saved the fields as they were saved
     * @param now the run as it is written now
     */
    void corrected(Map<RunField, String> saved, WrittenRun now) {
        reopen(now, field -> !text.of(field).equals(saved.getOrDefault(field, "")));
    }

    /** The run is written differently by now. Fields nobody changed follow; what was typed into others stays. */
    void reopen(WrittenRun now) {
        reopen(now, this::isChanged);
    }

    private void reopen(WrittenRun now, Predicate<RunField> stays) {
        Map<RunField, String> typed = new EnumMap<>(RunField.class);
        text.all().forEach((field, texts) -> {
            if (stays.test(field)) {
                typed.put(field, texts);
            }
        });
        sheet = now;
        written = now;
        start(new SheetText(), now.texts());
        typed.forEach((field, texts) -> {
            text.type(field, texts);
            text.leave(field);
        });
        cleared = null;
        reread();
    }

    /** Puts every field back to what is written; {@link #putBack} undoes it once. */
    void asWritten() {
        WrittenRun run = written;
        if (run != null) {
            clear(run.texts());
        }
    }

    boolean canPutBack() {
        return cleared != null;
    }

    /** Puts back what stood on the sheet before it was cleared; what was typed since can be put back in its turn. */
    void putBack() {
        SheetText before = cleared;
        if (before != null) {
            cleared = isDirty() ? text.copy() : null;
            text = before;
            dateFollowed = text.of(RunField.DATE);
            reread();
        }
    }

    // Drafts

    /**
     * What a draft keeps: every text as typed, which of them a person typed, and where the caret was.
     *
     * @param caret the field in focus, or null
     */
    Map<String, String> draft(@Nullable RunField caret) {
        Map<String, String> kept = new HashMap<>();
        text.all().forEach((field, now) -> kept.put(field.key(), now));
        StringJoiner typed = new StringJoiner(" ");
        text.typed().forEach(field -> typed.add(field.key()));
        kept.put(TYPED, typed.toString());
        if (text.broke()) {
            kept.put(BROKE, BROKE);
        }
        if (caret != null) {
            kept.put(KeptDraft.CARET, caret.key());
        }
        return kept;
    }

    /**
     * Puts a draft on the sheet. What was typed on the sheet meanwhile stays.
     *
     * @param fresh what the sheet would start with
     * @return the field the caret was in
     */
    Optional<RunField> restore(Map<String, String> kept, Map<RunField, String> fresh) {
        Map<RunField, String> meanwhile = new EnumMap<>(RunField.class);
        text.typed().forEach(field -> meanwhile.put(field, text.of(field)));
        boolean broke = text.broke() || kept.containsKey(BROKE);
        start(new SheetText(), fresh);
        text.broke(broke);
        Set<String> typed = Set.of(kept.getOrDefault(TYPED, "").split(" "));
        kept.forEach((key, now) -> RunField.of(key).ifPresent(field -> {
            if (typed.contains(key)) {
                text.type(field, now);
                text.leave(field);
            } else if (written == null) {
                text.give(field, now);
            }
        }));
        meanwhile.forEach(text::type);
        for (RunField field : RunField.values()) {
            if (field.chosen() && !isThere(field)) {
                text.give(field, fresh.getOrDefault(field, ""));
            }
        }
        dateFollowed = text.of(RunField.DATE);
        reread();
        return RunField.of(kept.getOrDefault(KeptDraft.CARET, ""));
    }

    // How it works

    private void start(SheetText empty, Map<RunField, String> fresh) {
        text = empty;
        asked = false;
        open = true;
        fresh.forEach(text::give);
        dateFollowed = text.of(RunField.DATE);
    }

    /** Whether what is picked can still be picked: it may have been taken back since the draft was kept. */
    private boolean isThere(RunField field) {
        return choices(field).stream().anyMatch(choice -> choice.key().equals(text.of(field)));
    }

    private void follow(RunField changed) {
        RunField leading = changed == RunField.DATE && text.isTyped(RunField.EVENT) ? RunField.EVENT : changed;
        Map<RunField, String> follows = new EnumMap<>(RunField.class);
        follows.putAll(sheet.follows(leading, text.all()));
        if (written == null && changed != RunField.PLANNED && text.isTyped(RunField.PLANNED)) {
            keepPlanned(follows);
        }
        follows.forEach((field, value) -> {
            if (field != changed && written != null) {
                text.type(field, value);
            } else if (field != changed && !text.isTyped(field)) {
                text.give(field, value);
            }
        });
        dateFollowed = text.of(RunField.DATE);
    }

    /** A run somebody picked stays picked while it can be, and so does what hangs on it. */
    private void keepPlanned(Map<RunField, String> follows) {
        String event = text.isTyped(RunField.EVENT)
                ? text.of(RunField.EVENT)
                : follows.getOrDefault(RunField.EVENT, text.of(RunField.EVENT));
        Map<RunField, String> then = new EnumMap<>(text.all());
        then.put(RunField.EVENT, event);
        boolean possible = sheet.choices(RunField.PLANNED, then).stream()
                .anyMatch(choice -> choice.key().equals(text.of(RunField.PLANNED)));
        if (possible) {
            follows.keySet().removeAll(Set.of(RunField.PLANNED, RunField.OUT_AT, RunField.RACE_STARTS, RunField.DATE));
        } else {
            text.forget(RunField.PLANNED);
        }
    }

    /** A problem waits until the focus has left its field once; that a field is empty waits until somebody saves. */
    private boolean isTimeToSay(RunField field, Problem problem) {
        return asked
                || text.isLeft(field)
                || field.chosen() && problem.kind() != ProblemKind.NEEDED
                || problem.kind() == ProblemKind.BEFORE_OR_AFTER_CHANGE && open
                || !text.isTyped(field) && !text.of(field).isBlank();
    }

    private void reread() {
        reading = sheet.read(text.all());
        tell();
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
