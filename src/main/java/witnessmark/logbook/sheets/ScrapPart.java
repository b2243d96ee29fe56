package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Takes a part, or one member of a set, out of use for good. */
public final class ScrapPart implements LogSheet {
    public static final SheetField PART = choice("part", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField MEMBER = choice("member", 1);
    public static final SheetField WHY = text("why", 4);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "scrap";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("scrap", List.of(PART, WHEN, WHEN_TIME), List.of(MEMBER), List.of(WHY), List.of(BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(MEMBER) || PartsNow.hasMembers(sight, typed.text(PART));
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "part" -> PartsNow.choices(sight, PartsNow::inUse);
            case "member" -> PartsNow.memberChoices(sight, typed.text(PART));
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        PartsNow.@Nullable Picked picked = PartsNow.read(in, PART, MEMBER);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.blame(PART, ProblemKind.PART_STILL_FITTED);
        in.note(WHY, SheetNote.of("scrap_why_example"));
        String why = in.needed(WHY);
        String by = in.needed(BY);
        if (!in.fine() || picked == null || when == null) {
            return;
        }
        endQuarantine(in, picked, when, why, by);
        in.make(PART, new Scrapping(picked.id(), picked.member(), when, why, by));
    }

    /** What was to be decided about it is decided with that. */
    private static void endQuarantine(ReadSheet in, PartsNow.Picked picked, Moment when, String why, String by) {
        in.sight()
                .facts()
                .of(Quarantine.class)
                .where(aside -> aside.part().equals(picked.id())
                        && aside.to() == null
                        && aside.from().isBefore(when)
                        && (picked.member().isEmpty() || aside.member().equals(picked.member())))
                .forEach(entry -> {
                    Quarantine aside = entry.fact();
                    in.change(
                            PART,
                            entry,
                            new Quarantine(
                                    aside.part(),
                                    aside.member(),
                                    aside.from(),
                                    aside.why(),
                                    aside.by(),
                                    when,
                                    why,
                                    by));
                });
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(PartsNow.name(sight, typed.text(PART), typed.text(MEMBER)));
    }
}
