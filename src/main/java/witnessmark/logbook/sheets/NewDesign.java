package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;

/** A part design picked, or a new one described: its fields on a sheet, and what was read of them. */
record NewDesign(
        @Nullable Entry<PartDesign> known, @Nullable PartDesign made) {
    static final SheetField DESIGN = choice("part_design", 2);
    static final SheetField NAME = text("part_design_name", 2);
    static final SheetField KIND = choice("part_kind", 1);
    static final SheetField MAKER = text("maker", 1);

    /** The row in which it is picked, with another field beside it. */
    static List<SheetField> first(SheetField beside) {
        return List.of(DESIGN, beside);
    }

    /** The row in which a new one is described. */
    static List<SheetField> second() {
        return List.of(NAME, KIND, MAKER);
    }

    /** A new one where none is written down yet. */
    static void fresh(Map<SheetField, String> out, SheetSight sight) {
        boolean none = sight.facts().of(PartDesign.class).where(design -> true).isEmpty();
        out.put(DESIGN, none ? SheetWord.NEW_DESIGN.key() : "");
    }

    static boolean has(SheetField field) {
        return List.of(DESIGN, NAME, KIND, MAKER).contains(field);
    }

    static boolean asks(SheetField field, SheetTyped typed) {
        return field.equals(DESIGN) || typed.is(DESIGN, SheetWord.NEW_DESIGN);
    }

    /** @param asked which designs can be meant */
    static List<Choice> choices(SheetField field, SheetSight sight, Predicate<PartDesign> asked) {
        if (field.equals(KIND)) {
            return Choice.words(PartKind.values());
        }
        if (!field.equals(DESIGN)) {
            return List.of();
        }
        List<Choice> choices = new ArrayList<>(sight.all(PartDesign.class, asked));
        choices.add(SheetWord.NEW_DESIGN.choice());
        return choices;
    }

    /**
     * Null while something is wrong.
     *
     * @param kindKnown the kind of part it has to be, or null when it is asked for
     */
    static @Nullable NewDesign read(ReadSheet in, @Nullable PartKind kindKnown) {
        if (!in.is(DESIGN, SheetWord.NEW_DESIGN)) {
            Entry<PartDesign> known = in.chosen(DESIGN, PartDesign.class);
            return known == null ? null : new NewDesign(known, null);
        }
        String name = in.newName(NAME, PartDesign.class);
        PartKind kind = kindKnown == null ? in.word(KIND, PartKind.class) : kindKnown;
        return name.isEmpty() || kind == null
                ? null
                : new NewDesign(null, new PartDesign(name, kind, in.text(MAKER), "", false, false, "", null));
    }

    static String name(SheetTyped typed, SheetSight sight) {
        return typed.is(DESIGN, SheetWord.NEW_DESIGN)
                ? typed.text(NAME)
                : sight.find(PartDesign.class, typed.text(DESIGN))
                        .map(design -> design.fact().name())
                        .orElse("");
    }

    /** The id of the known one, or of the one made now. */
    Id<PartDesign> make(ReadSheet in) {
        return known != null ? known.id() : in.make(NAME, Objects.requireNonNull(made));
    }
}
