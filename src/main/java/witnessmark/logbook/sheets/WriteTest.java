package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.quantity.Moment;

/** Writes a test that decides on a cause: to be made, or made and what it found. */
public final class WriteTest implements LogSheet {
    public static final SheetField CAUSE = choice("tested_cause", 4);
    public static final SheetField WHAT = text("test_what", 4);
    public static final SheetField WHO = text("test_who", 1);
    public static final SheetField DUE = of("test_due", FieldKind.DAY);
    public static final SheetField DONE = of("test_done", FieldKind.DAY);
    public static final SheetField DONE_TIME = of("test_done_time", FieldKind.CLOCK);
    public static final SheetField FOUND = text("test_found", 4);

    @Override
    public String key() {
        return "cause_test";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "cause_test", List.of(CAUSE), List.of(WHAT), List.of(WHO, DUE, DONE, DONE_TIME), List.of(FOUND)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(WHO, sight.who());
        return out;
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(CAUSE, WHO);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(CAUSE) ? Causes.choices(sight, incident -> true) : List.of();
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(FOUND) || !typed.text(DONE).isBlank();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<Cause> cause = in.chosen(CAUSE, Cause.class);
        in.note(WHAT, SheetNote.of("test_example"));
        String what = in.needed(WHAT);
        LocalDate due = values.dayAhead(DUE);
        boolean made = !in.text(DONE).isBlank();
        Moment done = made ? values.moment(DONE, DONE_TIME) : null;
        in.note(FOUND, SheetNote.of("test_found_example"));
        String found = made ? in.needed(FOUND) : "";
        if (cause != null && in.fine()) {
            in.make(WHAT, new CauseTest(cause.id(), what, in.text(WHO), due, done, found));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        return fact instanceof CauseTest test
                ? Optional.of(Map.of(
                        CAUSE, test.cause().text(),
                        WHAT, test.what(),
                        WHO, test.who(),
                        DUE, test.due() == null ? "" : test.due().toString(),
                        DONE, AsText.day(test.done()),
                        DONE_TIME, AsText.clock(test.done()),
                        FOUND, test.found()))
                : Optional.empty();
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Causes.name(sight, typed.text(CAUSE)), typed.text(WHAT));
    }
}
