package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.SetMember;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Holds an engine or a part until somebody looked at it and signs it clear. */
public final class WriteHold implements LogSheet {
    public static final SheetField ON = choice("held_what", 1);
    public static final SheetField MEMBER = choice("held_member", 1);
    public static final SheetField SINCE = of("held_since", FieldKind.DAY);
    public static final SheetField SINCE_TIME = of("held_time", FieldKind.CLOCK);
    public static final SheetField WHY = text("held_why", 4);
    public static final SheetField ASKS = text("held_asks", 4);
    public static final SheetField BY = text("held_by", 1);

    @Override
    public String key() {
        return "write_hold";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "hold", List.of(ON, SINCE, SINCE_TIME, MEMBER), List.of(WHY), List.of(ASKS), List.of(BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(SINCE, sight.today().toString(), BY, sight.who());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ON, EngineOrPart.key(engine, null));
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(MEMBER) || !members(typed, sight).isEmpty();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(ON)) {
            return EngineOrPart.choices(sight);
        }
        if (!field.equals(MEMBER)) {
            return List.of();
        }
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of("", SheetWord.WHOLE_SET));
        members(typed, sight)
                .forEach(member -> choices.add(Choice.of(member.id().text(), member.fact())));
        return choices;
    }

    @Override
    public void read(ReadSheet in) {
        EngineOrPart on = EngineOrPart.read(in, ON);
        Moment since = new ReadValues(in).moment(SINCE, SINCE_TIME);
        String member = member(in);
        in.note(WHY, SheetNote.of("held_why_example"));
        String why = in.needed(WHY);
        in.note(ASKS, SheetNote.of("held_asks_example"));
        String asks = in.needed(ASKS);
        String by = in.needed(BY);
        if (in.fine() && on != null && since != null) {
            in.make(ON, new Hold(on.engineId(), on.partId(), member, since, why, asks, by));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof Hold hold)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(ON, EngineOrPart.key(hold.engine(), hold.part()));
        out.put(SINCE, AsText.day(hold.at()));
        out.put(SINCE_TIME, AsText.clock(hold.at()));
        out.put(MEMBER, member(hold, sight));
        out.put(WHY, hold.why());
        out.put(ASKS, hold.asks());
        out.put(BY, hold.by());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                EngineOrPart.of(sight, typed.text(ON)).map(EngineOrPart::name).orElse(""));
    }

    /** The mark of the member picked; empty for the whole. A member of another set cannot be meant. */
    private static String member(ReadSheet in) {
        String key = in.text(MEMBER);
        List<Entry<SetMember>> members = members(in.typed(), in.sight());
        if (key.isEmpty() || members.isEmpty()) {
            return "";
        }
        for (Entry<SetMember> member : members) {
            if (member.id().text().equals(key)) {
                return member.fact().mark();
            }
        }
        in.wrong(MEMBER, ProblemKind.NEEDED, MEMBER);
        return "";
    }

    private static String member(Hold hold, SheetSight sight) {
        return sight
                .facts()
                .of(SetMember.class)
                .where(member ->
                        member.set().equals(hold.part()) && member.mark().equals(hold.member()))
                .stream()
                .findFirst()
                .map(member -> member.id().text())
                .orElse("");
    }

    private static List<Entry<SetMember>> members(SheetTyped typed, SheetSight sight) {
        Id<Part> set =
                EngineOrPart.of(sight, typed.text(ON)).map(EngineOrPart::partId).orElse(null);
        return set == null
                ? List.of()
                : sight.facts().of(SetMember.class).where(member -> member.set().equals(set)).stream()
                        .sorted(Comparator.comparingInt(member -> member.fact().ordinal()))
                        .toList();
    }
}
