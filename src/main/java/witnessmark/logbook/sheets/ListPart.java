package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.ListedPart;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.outcome.ProblemKind;

/** Says what the parts list names for a position: of a design, of one engine where it differs, or of a car. */
public final class ListPart implements LogSheet {
    public static final SheetField FOR = choice("listed_for", 2);
    public static final SheetField POSITION = choice("position", 1);
    public static final SheetField FROM = of("listed_from", FieldKind.DAY);
    public static final SheetField TO = of("listed_to", FieldKind.DAY);
    private static final String DESIGN = "design:";

    @Override
    public String key() {
        return "list_part";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "list_part",
                List.of(FOR, POSITION, FROM),
                NewDesign.first(TO),
                List.of(NewDesign.NAME, NewDesign.MAKER)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        NewDesign.fresh(out, sight);
        out.put(FROM, sight.today().toString());
        return out;
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(FOR, FROM, TO);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !NewDesign.has(field) || NewDesign.asks(field, typed);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(FOR)) {
            List<Choice> choices = new ArrayList<>();
            sight.facts()
                    .of(EngineDesign.class)
                    .where(design -> true)
                    .forEach(design -> choices.add(
                            Choice.of(DESIGN + design.id().text(), SheetNote.of("every_engine", design.fact()))));
            choices.addAll(Places.choices(sight));
            return choices;
        }
        if (field.equals(POSITION)) {
            return positions(sight, typed.text(FOR)).stream()
                    .sorted(Comparator.comparingInt(position -> position.fact().ordinal()))
                    .map(position -> Choice.of(position.id().text(), position.fact()))
                    .toList();
        }
        PartKind kind = sight.find(Position.class, typed.text(POSITION))
                .map(position -> position.fact().kind())
                .orElse(null);
        return NewDesign.choices(field, sight, design -> design.kind() == kind);
    }

    private static List<Entry<Position>> positions(SheetSight sight, String key) {
        if (key.startsWith(DESIGN)) {
            String design = key.substring(DESIGN.length());
            return sight.facts()
                    .of(Position.class)
                    .where(position -> position.design() != null
                            && position.design().text().equals(design));
        }
        return Places.place(sight, key)
                .map(place -> sight.facts().of(Position.class).where(place::has))
                .orElse(List.of());
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        in.needed(FOR);
        @Nullable Entry<Position> position = in.chosen(POSITION, Position.class);
        boolean there = position != null
                && positions(in.sight(), in.text(FOR)).stream()
                        .anyMatch(each -> each.id().equals(position.id()));
        if (position != null && !there) {
            in.wrong(POSITION, ProblemKind.NEEDED, POSITION);
        }
        @Nullable
        NewDesign design =
                NewDesign.read(in, position == null ? null : position.fact().kind());
        LocalDate from = values.firstDay(FROM);
        LocalDate to = values.dayAhead(TO);
        if (in.text(TO).isEmpty()) {
            in.note(TO, SheetNote.of("until_changed"));
        }
        if (from != null && to != null && to.isBefore(from)) {
            in.wrong(TO, ProblemKind.EARLIER_THAN, TO, to, from);
        }
        if (position == null || from == null || !there) {
            return;
        }
        @Nullable
        Id<Engine> engine = Places.place(in.sight(), in.text(FOR))
                .map(Places.Place::engineId)
                .orElse(null);
        @Nullable Entry<ListedPart> before = before(in.sight(), position.id(), engine);
        if (before != null) {
            ends(in, before, from);
        }
        if (!in.fine() || design == null) {
            return;
        }
        if (before != null) {
            ListedPart fact = before.fact();
            in.change(
                    FROM,
                    before,
                    new ListedPart(fact.position(), fact.engine(), fact.design(), fact.validFrom(), from.minusDays(1)));
        }
        in.make(POSITION, new ListedPart(position.id(), engine, design.make(in), from, to));
    }

    /** What is named there without an end: this takes its place. */
    private static @Nullable Entry<ListedPart> before(
            SheetSight sight, Id<Position> position, @Nullable Id<Engine> engine) {
        return sight
                .facts()
                .of(ListedPart.class)
                .where(listed -> listed.position().equals(position)
                        && Objects.equals(listed.engine(), engine)
                        && listed.validTo() == null)
                .stream()
                .findFirst()
                .orElse(null);
    }

    private static void ends(ReadSheet in, Entry<ListedPart> before, LocalDate from) {
        in.note(
                POSITION,
                SheetNote.of(
                        "takes_place_of",
                        in.sight().name(PartDesign.class, before.fact().design())));
        LocalDate first = before.fact().validFrom().plusDays(1);
        if (from.isBefore(first)) {
            in.wrong(FROM, ProblemKind.EARLIER_THAN, FROM, from, first);
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                NewDesign.name(typed, sight),
                sight.find(Position.class, typed.text(POSITION))
                        .map(position -> String.valueOf(position.fact().knownAs()))
                        .orElse(""));
    }
}
