package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Fastener;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Length;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedMeasure;

/** What bolts or studs of a design are, for what they pull with; a field left empty stays as it was written before. */
public final class WriteFastener implements LogSheet {
    public static final SheetField OF = choice("fastener_of", 2);
    public static final SheetField COUNT = text("fastener_count", 1);
    public static final SheetField CHOSEN_FOR = of("chosen_for", FieldKind.PRESSURE);
    public static final SheetField DIAMETER = of("diameter", FieldKind.LENGTH);
    public static final SheetField NUT_FACTOR = text("nut_factor", 1);
    public static final SheetField LUBRICANT = text("lubricant", 1);
    public static final SheetField MAKERS_PULL = of("makers_pull", FieldKind.FORCE);
    public static final SheetField SHANK = of("stretched_diameter", FieldKind.LENGTH);
    public static final SheetField LENGTH = of("stretched_length", FieldKind.LENGTH);
    public static final SheetField MODULUS = text("modulus", 1);
    public static final SheetField PROOF = of("proof_load", FieldKind.FORCE);
    public static final SheetField SOURCE = text("source", 2);

    private static final Set<PartKind> KINDS = EnumSet.of(PartKind.HEAD_STUDS, PartKind.ROD_BOLTS, PartKind.OTHER);
    private static final int FACTOR_DECIMALS = 3;
    private static final int MOST_GIGAPASCALS = 1_000;

    @Override
    public String key() {
        return "write_fastener";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("fastener", List.of(OF), List.of(COUNT, CHOSEN_FOR)),
                SheetGroup.of("fastener_torque", List.of(DIAMETER, NUT_FACTOR, LUBRICANT, MAKERS_PULL)),
                SheetGroup.of("fastener_shank", List.of(SHANK, LENGTH, MODULUS, PROOF)),
                SheetGroup.of("fastener_source", List.of(SOURCE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Choice> choices = designs(sight);
        return choices.size() == 1 ? Map.of(OF, choices.get(0).key()) : Map.of();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(OF) ? designs(sight) : List.of();
    }

    private static List<Choice> designs(SheetSight sight) {
        return sight.facts().of(PartDesign.class).where(design -> KINDS.contains(design.kind())).stream()
                .sorted(Comparator.comparing(
                                (Entry<PartDesign> design) -> design.fact().kind())
                        .thenComparing(design -> design.fact().name()))
                .map(design -> Choice.of(
                        design.id().text(), design.fact().name(), design.fact().kind()))
                .toList();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<PartDesign> design = in.chosen(OF, PartDesign.class);
        Optional<Entry<Fastener>> before = design == null ? Optional.empty() : before(in.sight(), design);
        before.ifPresent(old -> in.note(OF, SheetNote.of("fastener_before")));
        ReadValues values = new ReadValues(in);
        Fastener old = before.map(Entry::fact).orElse(null);
        Integer count = ReadValues.orBefore(atLeastOne(values, in, COUNT), old, Fastener::count);
        Pressure chosenFor = ReadValues.orBefore(pressure(values, in), old, Fastener::chosenFor);
        Length diameter = ReadValues.orBefore(above0(values, in, DIAMETER), old, Fastener::diameter);
        BigDecimal nutFactor = ReadValues.orBefore(nutFactor(values, in), old, Fastener::nutFactor);
        String lubricant = in.text(LUBRICANT).isEmpty() && old != null ? old.lubricant() : in.text(LUBRICANT);
        Integer makersPull = ReadValues.orBefore(newtons(values, in, MAKERS_PULL), old, Fastener::makersPullNewtons);
        Length shank = ReadValues.orBefore(above0(values, in, SHANK), old, Fastener::stretchedDiameter);
        Length length = ReadValues.orBefore(above0(values, in, LENGTH), old, Fastener::stretchedLength);
        Integer modulus = ReadValues.orBefore(modulus(values, in), old, Fastener::modulusGigapascals);
        Integer proof = ReadValues.orBefore(newtons(values, in, PROOF), old, Fastener::proofNewtons);
        String source = in.text(SOURCE).isEmpty() && old != null ? old.source() : in.needed(SOURCE);
        in.note(SOURCE, SheetNote.of("source_example"));
        if (diameter == null) {
            in.needed(DIAMETER);
        }
        if (nutFactor != null && lubricant.isBlank()) {
            in.wrong(LUBRICANT, ProblemKind.NEEDED, LUBRICANT);
        }
        if (in.fine() && design != null && diameter != null) {
            Fastener now = new Fastener(
                    design.id(),
                    count,
                    diameter,
                    nutFactor,
                    lubricant,
                    shank,
                    length,
                    modulus,
                    proof,
                    makersPull,
                    chosenFor,
                    source);
            before.ifPresentOrElse(entry -> in.change(OF, entry, now), () -> in.make(OF, now));
        }
    }

    private static Optional<Entry<Fastener>> before(SheetSight sight, Entry<PartDesign> design) {
        return sight
                .facts()
                .of(Fastener.class)
                .where(fastener -> fastener.design().equals(design.id()))
                .stream()
                .reduce((one, other) -> other);
    }

    private static @Nullable Integer atLeastOne(ReadValues values, ReadSheet in, SheetField field) {
        Integer count = values.count(field);
        return count != null && outside(in, field, count, 1, MOST_GIGAPASCALS) ? null : count;
    }

    private static @Nullable Integer modulus(ReadValues values, ReadSheet in) {
        in.note(MODULUS, SheetNote.of("modulus"));
        return atLeastOne(values, in, MODULUS);
    }

    private static @Nullable Pressure pressure(ReadValues values, ReadSheet in) {
        in.note(CHOSEN_FOR, SheetNote.of("chosen_for"));
        Pressure pressure = values.pressure(CHOSEN_FOR);
        if (pressure != null && pressure.pascals() <= 0) {
            in.wrong(CHOSEN_FOR, ProblemKind.NEEDED, CHOSEN_FOR);
            return null;
        }
        return pressure;
    }

    private static @Nullable Length above0(ReadValues values, ReadSheet in, SheetField field) {
        Length length = values.length(field);
        if (length != null && length.nanometres() <= 0) {
            in.wrong(field, ProblemKind.NEEDED, field);
            return null;
        }
        return length;
    }

    private static @Nullable BigDecimal nutFactor(ReadValues values, ReadSheet in) {
        in.note(NUT_FACTOR, SheetNote.of("nut_factor"));
        Long parts = values.read(NUT_FACTOR, text -> TypedFigure.parts(text, FACTOR_DECIMALS, "0.16"));
        if (parts == null || outside(in, NUT_FACTOR, parts, 1, 1_000)) {
            return null;
        }
        return BigDecimal.valueOf(parts, FACTOR_DECIMALS);
    }

    /** Bare figures are kilonewtons. */
    private static @Nullable Integer newtons(ReadValues values, ReadSheet in, SheetField field) {
        TypedMeasure typed = values.read(field, text -> TypedMeasure.read(text, MeasureUnit.KILONEWTON, false));
        if (typed == null) {
            return null;
        }
        long newtons = Math.round(Dimension.FORCE.number(typed.parts()));
        return outside(in, field, newtons, 1, Integer.MAX_VALUE) ? null : (int) newtons;
    }

    private static boolean outside(ReadSheet in, SheetField field, long figure, long least, long most) {
        if (figure < least || figure > most) {
            in.wrong(field, ProblemKind.OUT_OF_RANGE, field, figure, least, most);
            return true;
        }
        return false;
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof Fastener fastener)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(OF, fastener.design().text());
        put(out, COUNT, fastener.count());
        put(out, NUT_FACTOR, fastener.nutFactor());
        put(out, MODULUS, fastener.modulusGigapascals());
        out.put(DIAMETER, length(fastener.diameter()));
        out.put(SHANK, length(fastener.stretchedDiameter()));
        out.put(LENGTH, length(fastener.stretchedLength()));
        out.put(PROOF, force(fastener.proofNewtons()));
        out.put(MAKERS_PULL, force(fastener.makersPullNewtons()));
        out.put(
                CHOSEN_FOR,
                fastener.chosenFor() == null ? "" : fastener.chosenFor().text() + " bar");
        out.put(LUBRICANT, fastener.lubricant());
        out.put(SOURCE, fastener.source());
        return Optional.of(out);
    }

    private static void put(Map<SheetField, String> out, SheetField field, @Nullable Object figure) {
        out.put(field, figure == null ? "" : figure.toString());
    }

    private static String length(@Nullable Length length) {
        return length == null ? "" : length.text() + " mm";
    }

    private static String force(@Nullable Integer newtons) {
        return newtons == null ? "" : newtons + " N";
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(PartDesign.class, typed.text(OF))
                .map(design -> design.fact().name())
                .orElse(""));
    }
}
