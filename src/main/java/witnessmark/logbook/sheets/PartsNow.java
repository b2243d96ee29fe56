package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.SetMember;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.result.PutAside;
import witnessmark.ledger.result.Where;
import witnessmark.ledger.result.Where.State;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Parts to pick from, each with where it is, and the members of a set. */
final class PartsNow {
    private PartsNow() {}

    /** A part or a set, and the member of it that is meant; empty for the whole. */
    record Picked(Where where, String member) {
        Id<Part> id() {
            return where.part().id();
        }

        Part part() {
            return where.part().fact();
        }

        /** The name people know it by. */
        String name() {
            return (part().mark() + " " + member).strip();
        }
    }

    static List<Choice> choices(SheetSight sight, Predicate<Where> asked) {
        return sight.standing().parts().stream()
                .filter(asked)
                .map(where -> Choice.of(where.part().id().text(), line(sight, where)))
                .toList();
    }

    /** What is not out of use and not split up. */
    static boolean inUse(Where where) {
        return where.state() != State.SCRAPPED && where.state() != State.SPLIT;
    }

    private static SheetNote line(SheetSight sight, Where where) {
        Part part = where.part().fact();
        return SheetNote.of(
                "part_where", part, sight.facts().of(PartDesign.class).get(part.design()), there(sight, where));
    }

    /** The name of what is picked in two fields; empty when nothing is. */
    static String name(SheetSight sight, String key, String memberKey) {
        String member = sight.find(SetMember.class, memberKey)
                .map(each -> each.fact().mark())
                .orElse("");
        return find(sight, key).map(where -> new Picked(where, member).name()).orElse("");
    }

    /** Where it is, as a phrase. */
    static SheetNote there(SheetSight sight, Where where) {
        return switch (where.state()) {
            case FITTED ->
                SheetNote.of(
                        "where_fitted",
                        Places.name(
                                sight, Objects.requireNonNull(where.fitment()).fact()));
            case SPARE -> SheetNote.of("where_spare");
            case QUARANTINE -> SheetNote.of("where_quarantine");
            case AWAY ->
                SheetNote.of(
                        "where_away",
                        Objects.requireNonNull(where.away()).sent().fact().sentTo());
            case SCRAPPED -> SheetNote.of("where_scrapped");
            case SPLIT -> SheetNote.of("where_split");
        };
    }

    static Optional<Where> find(SheetSight sight, String key) {
        return sight.standing().parts().stream()
                .filter(where -> where.part().id().text().equals(key))
                .findFirst();
    }

    /** The part picked, and which member of it; null while something is wrong. What is out of use cannot be meant. */
    static @Nullable Picked read(ReadSheet in, SheetField field, SheetField memberField) {
        Entry<Part> part = in.chosen(field, Part.class);
        Where where = part == null ? null : find(in.sight(), part.id().text()).orElse(null);
        if (where == null) {
            return null;
        }
        if (!inUse(where)) {
            Moment since = where.since();
            String mark = where.part().fact().mark();
            if (where.state() == State.SCRAPPED && since != null) {
                in.wrong(field, ProblemKind.PART_SCRAPPED, mark, since);
            } else {
                in.wrong(field, ProblemKind.NOT_FOUND, RecordTypes.of(Part.class), mark);
            }
            return null;
        }
        String member = member(in, memberField, where.part().id());
        in.note(field, SheetNote.of("now", there(in.sight(), where)));
        return new Picked(where, member);
    }

    private static String member(ReadSheet in, SheetField field, Id<Part> set) {
        String key = in.text(field);
        List<Entry<SetMember>> members = members(in.sight(), set);
        if (key.isEmpty() || members.isEmpty()) {
            return "";
        }
        for (Entry<SetMember> member : members) {
            if (member.id().text().equals(key)) {
                return member.fact().mark();
            }
        }
        in.wrong(field, ProblemKind.NEEDED, field);
        return "";
    }

    /** The members written down of a set that were not split off, in their order. */
    static List<Entry<SetMember>> members(SheetSight sight, Id<Part> set) {
        Set<String> gone = sight.facts().of(Part.class).where(part -> set.equals(part.ofSet())).stream()
                .map(part -> String.valueOf(part.fact().memberMark()))
                .collect(Collectors.toSet());
        return sight
                .facts()
                .of(SetMember.class)
                .where(member -> member.set().equals(set) && !gone.contains(member.mark()))
                .stream()
                .sorted(Comparator.comparingInt(member -> member.fact().ordinal()))
                .toList();
    }

    /** Whether the part picked in a field is a set whose members are written down. */
    static boolean hasMembers(SheetSight sight, String key) {
        return find(sight, key)
                .filter(where -> !members(sight, where.part().id()).isEmpty())
                .isPresent();
    }

    /** The whole set, and each member of it. */
    static List<Choice> memberChoices(SheetSight sight, String key) {
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of("", SheetWord.WHOLE_SET));
        find(sight, key)
                .ifPresent(where -> members(sight, where.part().id())
                        .forEach(member -> choices.add(Choice.of(member.id().text(), member.fact()))));
        return choices;
    }

    /** What puts a part aside as asked, by itself or by one of its members. */
    static List<PutAside> aside(Where where, PutAside.Kind kind) {
        List<PutAside> all = new ArrayList<>(where.asides());
        all.addAll(where.members());
        all.removeIf(aside -> aside.kind() != kind);
        return all;
    }
}
