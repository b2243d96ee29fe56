package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Quarantine;
import witnessmark.ledger.result.PutAside;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Puts a part, or one member of a set, in quarantine until somebody decides. */
public final class PutPartAside implements LogSheet {
    public static final SheetField PART = choice("part", 2);
    public static final SheetField SINCE = of("since", FieldKind.DAY);
    public static final SheetField SINCE_TIME = of("since_time", FieldKind.CLOCK);
    public static final SheetField MEMBER = choice("member", 1);
    public static final SheetField SPLIT = choice("split_off", 1);
    public static final SheetField WHY = text("why", 4);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "put_aside";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "put_aside", List.of(PART, SINCE, SINCE_TIME), List.of(MEMBER, SPLIT), List.of(WHY), List.of(BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(SINCE, sight.today().toString(), SPLIT, SheetWord.NO.key(), BY, sight.who());
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(MEMBER)) {
            return PartsNow.hasMembers(sight, typed.text(PART));
        }
        return !field.equals(SPLIT)
                || (PartsNow.hasMembers(sight, typed.text(PART))
                        && !typed.text(MEMBER).isEmpty());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "part" -> PartsNow.choices(sight, PartsNow::inUse);
            case "member" -> PartsNow.memberChoices(sight, typed.text(PART));
            case "split_off" -> List.of(SheetWord.NO.choice(), SheetWord.YES.choice());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        PartsNow.@Nullable Picked picked = PartsNow.read(in, PART, MEMBER);
        Moment since = new ReadValues(in).moment(SINCE, SINCE_TIME);
        in.blame(PART, ProblemKind.PART_STILL_FITTED);
        in.note(WHY, SheetNote.of("aside_why_example"));
        String why = in.needed(WHY);
        String by = in.needed(BY);
        if (picked == null) {
            return;
        }
        alreadyAside(in, picked);
        boolean split = !picked.member().isEmpty() && in.is(SPLIT, SheetWord.YES);
        String mark = split ? SplitOff.offered(picked.part(), picked.member()) : "";
        if (split) {
            in.note(SPLIT, SheetNote.of("becomes", mark));
            SplitOff.free(in, SPLIT, mark);
        }
        if (!in.fine() || since == null) {
            return;
        }
        Id<Part> part = split
                ? in.make(SPLIT, SplitOff.part(picked.where().part(), picked.member(), mark, since))
                : picked.id();
        in.make(PART, new Quarantine(part, split ? "" : picked.member(), since, why, by, null, "", ""));
    }

    private static void alreadyAside(ReadSheet in, PartsNow.Picked picked) {
        PartsNow.aside(picked.where(), PutAside.Kind.QUARANTINE).stream()
                .filter(aside -> aside.whole() || aside.member().equals(picked.member()))
                .findFirst()
                .ifPresent(aside ->
                        in.wrong(PART, ProblemKind.PART_IN_QUARANTINE, picked.name(), aside.from(), aside.words()));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(PartsNow.name(sight, typed.text(PART), typed.text(MEMBER)));
    }
}
