package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseState;
import witnessmark.domain.Entry;
import witnessmark.domain.HowSure;
import witnessmark.quantity.Moment;

/** Says how a cause stands from a day on. What was made of it before stays to be seen. */
public final class CallCause implements LogSheet {
    public static final SheetField CAUSE = choice("called_cause", 4);
    public static final SheetField STATE = choice("cause_state", 1);
    public static final SheetField SURE = choice("cause_sure", 1);
    public static final SheetField WHEN = of("called_on", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("called_time", FieldKind.CLOCK);
    public static final SheetField BECAUSE = text("called_because", 3);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "cause_call";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "cause_call", List.of(CAUSE), List.of(STATE, SURE, WHEN, WHEN_TIME), List.of(BECAUSE, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(WHEN, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(CAUSE, WHEN, BY); // the next one is among those beside it
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "called_cause" -> Causes.choices(sight, incident -> true);
            case "cause_state" -> Choice.words(CauseState.values());
            case "cause_sure" -> Choice.words(HowSure.values());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Cause> cause = in.chosen(CAUSE, Cause.class);
        CauseState state = in.word(STATE, CauseState.class);
        HowSure sure = in.word(SURE, HowSure.class);
        Moment at = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.note(BECAUSE, SheetNote.of("called_example"));
        String because = in.needed(BECAUSE);
        String by = in.needed(BY);
        if (cause != null && state != null && sure != null && at != null && in.fine()) {
            in.make(BECAUSE, new CauseCall(cause.id(), at, state, sure, because, by));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Causes.name(sight, typed.text(CAUSE)));
    }
}
