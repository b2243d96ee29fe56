package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Clearance;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.domain.Run;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Signs clear what holds an engine or a part: what was done, what was found, who says so. */
public final class SignClear implements LogSheet {
    public static final SheetField HELD = choice("held", 4);
    public static final SheetField DONE = text("clear_done", 4);
    public static final SheetField RESULT = text("clear_found", 4);
    public static final SheetField WHEN = of("clear_day", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("clear_time", FieldKind.CLOCK);
    public static final SheetField BY = text("clear_by", 1);
    public static final SheetField WORDS = text("clear_words", 4);

    @Override
    public String key() {
        return "sign_clear";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("held", List.of(HELD), List.of(DONE), List.of(RESULT)),
                SheetGroup.of("signed", List.of(WHEN, WHEN_TIME, BY), List.of(WORDS)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(WHEN, WHEN_TIME, BY);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(HELD) ? new OpenHolds(sight).choices() : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        OpenHolds open = new OpenHolds(in.sight());
        String key = in.needed(HELD);
        OpenHolds.@Nullable Picked picked = open.picked(key).orElse(null);
        if (picked == null && !key.isEmpty()) {
            in.wrong(HELD, ProblemKind.NOT_FOUND, RecordTypes.of(Hold.class), key);
        }
        if (picked != null) {
            in.note(HELD, SheetNote.of("held_asks", picked.asks()));
        } else if (in.sight().standing().open().isEmpty()) {
            in.note(HELD, SheetNote.of("nothing_held"));
        }
        String done = in.needed(DONE);
        String result = in.needed(RESULT);
        if (picked != null && !done.isEmpty()) {
            askOfMissing(in, new LooksAsked(in.sight().facts(), open.held(picked)).missing(done + " " + result));
        }
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.blame(WHEN, ProblemKind.CLEARED_BEFORE);
        String by = in.needed(BY);
        in.blame(BY, ProblemKind.CLEARS_OWN_HOLD);
        if (!in.fine() || picked == null || when == null) {
            return;
        }
        in.make(
                HELD,
                new Clearance(
                        cause(picked, Hold.class),
                        cause(picked, Run.class),
                        cause(picked, Reading.class),
                        picked.by().rule() == null ? null : picked.by().rule().id(),
                        picked.part(),
                        when,
                        done,
                        result,
                        by,
                        in.text(WORDS)));
    }

    /** Who signs with less looked at than was asked says why, and that is kept with the signature. */
    private static void askOfMissing(ReadSheet in, List<String> missing) {
        if (!missing.isEmpty()) {
            String named = String.join(", ", missing);
            in.wrong(DONE, ProblemKind.NOT_LOOKED_AT, named);
            in.note(WORDS, SheetNote.of("clear_without", named));
            if (in.text(WORDS).isEmpty()) {
                in.wrong(WORDS, ProblemKind.SIGNED_WITHOUT, named);
            }
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        OpenHolds open = new OpenHolds(sight);
        return List.of(open.picked(typed.text(HELD)).map(open::name).orElse(""));
    }

    @SuppressWarnings("unchecked") // an entry is of the kind of its fact
    private static <F extends Fact> @Nullable Id<F> cause(OpenHolds.Picked picked, Class<F> kind) {
        Entry<?> cause = picked.by().cause();
        return kind.isInstance(cause.fact()) ? (Id<F>) cause.id() : null;
    }
}
