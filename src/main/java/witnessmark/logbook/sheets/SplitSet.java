package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.SetMember;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Splits members off a set: each becomes a part of its own, with the set's life to that moment. */
public final class SplitSet implements LogSheet {
    public static final SheetField SET = choice("set", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField MEMBERS = text("members", 3);
    public static final SheetField MARK = text("mark", 1);

    @Override
    public String key() {
        return "split_set";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("split_set", List.of(SET, WHEN, WHEN_TIME), List.of(MEMBERS, MARK)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(SET)
                ? PartsNow.choices(
                        sight,
                        where -> PartsNow.inUse(where)
                                && PartsNow.hasMembers(sight, where.part().id().text()))
                : List.of();
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(MARK) || named(typed.text(MEMBERS)).size() == 1;
    }

    @Override
    public void read(ReadSheet in) {
        in.note(SET, SheetNote.of("sets_with_members"));
        @Nullable Entry<Part> set = in.chosen(SET, Part.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        if (set == null || when == null) {
            return;
        }
        Map<String, String> members = members(in, set);
        for (String mark : members.values()) {
            SplitOff.free(in, members.size() == 1 ? MARK : MEMBERS, mark);
        }
        Moment first = set.fact().splitAt();
        if (first != null && !first.isBefore(when)) {
            in.wrong(WHEN, ProblemKind.EARLIER_THAN, WHEN, when, first);
        }
        if (in.fine()) {
            members.forEach((member, mark) -> in.make(MEMBERS, SplitOff.part(set, member, mark, when)));
        }
    }

    /** The members that are meant, each with the mark it gets. */
    private static Map<String, String> members(ReadSheet in, Entry<Part> set) {
        Map<String, String> there = new LinkedHashMap<>();
        PartsNow.members(in.sight(), set.id())
                .forEach(member -> there.put(
                        Words.place(member.fact().mark()), member.fact().mark()));
        List<String> asked = named(in.text(MEMBERS));
        Map<String, String> out = new LinkedHashMap<>();
        for (String each : asked.isEmpty() ? List.copyOf(there.values()) : asked) {
            String member = there.get(Words.place(each));
            if (member == null) {
                in.wrong(MEMBERS, ProblemKind.NOT_FOUND, RecordTypes.of(SetMember.class), each);
                return Map.of();
            }
            out.put(member, SplitOff.offered(set.fact(), member));
        }
        in.note(
                MEMBERS,
                asked.isEmpty()
                        ? SheetNote.of("every_member", String.join("; ", there.values()))
                        : SheetNote.echo("understood", String.join("; ", out.keySet())));
        if (asked.size() == 1) {
            String own = in.text(MARK);
            String offered = out.values().iterator().next();
            in.note(MARK, SheetNote.of("mark_empty", offered));
            out.replaceAll((member, mark) -> own.isEmpty() ? mark : own);
        }
        return out;
    }

    private static List<String> named(String text) {
        return Words.listed(text);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Part.class, typed.text(SET))
                .map(set -> set.fact().mark())
                .orElse(""));
    }
}
