package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Metal;
import witnessmark.domain.SpeedFigures;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Length;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.TypedFigure;

/**
 * What an engine design is made of and how hot it gets, for its fit at speed; a field left empty stays as it was written
 * before.
 */
public final class WriteSpeedFigures implements LogSheet {
    public static final SheetField OF = choice("speed_of", 2);
    public static final SheetField BLOCK = choice("metal_block", 1);
    public static final SheetField CRANK = choice("metal_crank", 1);
    public static final SheetField RODS = choice("metal_rods", 1);
    public static final SheetField PISTONS = choice("metal_pistons", 1);
    public static final SheetField BLOCK_HOT = of("block_hot", FieldKind.TEMPERATURE);
    public static final SheetField CRANK_HOT = of("crank_hot", FieldKind.TEMPERATURE);
    public static final SheetField RODS_HOT = of("rods_hot", FieldKind.TEMPERATURE);
    public static final SheetField PISTONS_HOT = of("pistons_hot", FieldKind.TEMPERATURE);
    public static final SheetField BLOCK_COLD = of("block_cold", FieldKind.TEMPERATURE);
    public static final SheetField PISTONS_COLD = of("pistons_cold", FieldKind.TEMPERATURE);
    public static final SheetField MAIN_SPACING = of("main_spacing", FieldKind.LENGTH);
    public static final SheetField MARGIN = of("speed_margin", FieldKind.LENGTH);
    public static final SheetField SOURCE = text("source", 2);

    @Override
    public String key() {
        return "write_speed_figures";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("speed_design", List.of(OF, MAIN_SPACING, MARGIN)),
                SheetGroup.of("speed_metals", List.of(BLOCK, CRANK, RODS, PISTONS)),
                SheetGroup.of(
                        "speed_heat",
                        List.of(BLOCK_HOT, CRANK_HOT, RODS_HOT, PISTONS_HOT),
                        List.of(BLOCK_COLD, PISTONS_COLD)),
                SheetGroup.of("speed_source", List.of(SOURCE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<EngineDesign>> designs = sight.facts().of(EngineDesign.class).where(design -> true);
        Map<SheetField, String> out = new HashMap<>();
        out.put(OF, designs.size() == 1 ? designs.get(0).id().text() : "");
        List.of(BLOCK, CRANK, RODS, PISTONS).forEach(metal -> out.put(metal, ""));
        if (designs.size() == 1) { // "not known" must not stand where something is
            before(sight, designs.get(0))
                    .flatMap(old -> written(old.fact(), sight))
                    .ifPresent(out::putAll);
        }
        return out;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(OF)) {
            return sight.all(EngineDesign.class, design -> true);
        }
        if (!List.of(BLOCK, CRANK, RODS, PISTONS).contains(field)) {
            return List.of();
        }
        List<Choice> metals = new ArrayList<>(List.of(Choice.of("", SheetWord.NOT_KNOWN)));
        metals.addAll(Choice.words(Metal.values()));
        return metals;
    }

    @Override
    public void read(ReadSheet in) {
        Entry<EngineDesign> design = in.chosen(OF, EngineDesign.class);
        Optional<Entry<SpeedFigures>> before = design == null ? Optional.empty() : before(in.sight(), design);
        before.ifPresent(old -> in.note(OF, SheetNote.of("fastener_before")));
        SpeedFigures old = before.map(Entry::fact).orElse(null);
        ReadValues values = new ReadValues(in);
        in.note(MARGIN, SheetNote.of("speed_margin"));
        in.note(MAIN_SPACING, SheetNote.of("main_spacing"));
        Length spacing = ReadValues.orBefore(length(values, in, MAIN_SPACING, 1), old, SpeedFigures::mainSpacing);
        Length margin = ReadValues.orBefore(length(values, in, MARGIN, 0), old, SpeedFigures::margin);
        Metal block = ReadValues.orBefore(metal(in, BLOCK), old, SpeedFigures::block);
        Metal crank = ReadValues.orBefore(metal(in, CRANK), old, SpeedFigures::crank);
        Metal rods = ReadValues.orBefore(metal(in, RODS), old, SpeedFigures::rods);
        Metal pistons = ReadValues.orBefore(metal(in, PISTONS), old, SpeedFigures::pistons);
        Temperature blockHot = ReadValues.orBefore(heat(values, in, BLOCK_HOT), old, SpeedFigures::blockHot);
        Temperature crankHot = ReadValues.orBefore(heat(values, in, CRANK_HOT), old, SpeedFigures::crankHot);
        Temperature rodsHot = ReadValues.orBefore(heat(values, in, RODS_HOT), old, SpeedFigures::rodsHot);
        Temperature pistonsHot = ReadValues.orBefore(heat(values, in, PISTONS_HOT), old, SpeedFigures::pistonsHot);
        Temperature blockCold = ReadValues.orBefore(heat(values, in, BLOCK_COLD), old, SpeedFigures::blockCold);
        Temperature pistonsCold = ReadValues.orBefore(heat(values, in, PISTONS_COLD), old, SpeedFigures::pistonsCold);
        String source = in.text(SOURCE).isEmpty() && old != null ? old.source() : in.needed(SOURCE);
        in.note(SOURCE, SheetNote.of("source_example"));
        if (in.fine() && design != null) {
            SpeedFigures now = new SpeedFigures(
                    design.id(),
                    block,
                    crank,
                    rods,
                    pistons,
                    blockHot,
                    crankHot,
                    rodsHot,
                    pistonsHot,
                    blockCold,
                    pistonsCold,
                    spacing,
                    margin,
                    source);
            before.ifPresentOrElse(entry -> in.change(OF, entry, now), () -> in.make(OF, now));
        }
    }

    private static Optional<Entry<SpeedFigures>> before(SheetSight sight, Entry<EngineDesign> design) {
        return sight
                .facts()
                .of(SpeedFigures.class)
                .where(figures -> figures.design().equals(design.id()))
                .stream()
                .reduce((one, other) -> other);
    }

    private static @Nullable Metal metal(ReadSheet in, SheetField field) {
        return in.text(field).isEmpty() ? null : in.word(field, Metal.class);
    }

    private static @Nullable Length length(ReadValues values, ReadSheet in, SheetField field, long least) {
        Length length = values.length(field);
        if (length != null && length.nanometres() < least) {
            in.wrong(field, ProblemKind.NEEDED, field);
            return null;
        }
        return length;
    }

    private static @Nullable Temperature heat(ReadValues values, ReadSheet in, SheetField field) {
        return values.echoed(
                field, text -> TypedFigure.read(text, in.sight().units().temperature()));
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof SpeedFigures figures)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(OF, figures.design().text());
        out.put(BLOCK, code(figures.block()));
        out.put(CRANK, code(figures.crank()));
        out.put(RODS, code(figures.rods()));
        out.put(PISTONS, code(figures.pistons()));
        out.put(BLOCK_HOT, celsius(figures.blockHot()));
        out.put(CRANK_HOT, celsius(figures.crankHot()));
        out.put(RODS_HOT, celsius(figures.rodsHot()));
        out.put(PISTONS_HOT, celsius(figures.pistonsHot()));
        out.put(BLOCK_COLD, celsius(figures.blockCold()));
        out.put(PISTONS_COLD, celsius(figures.pistonsCold()));
        out.put(MAIN_SPACING, millimetres(figures.mainSpacing()));
        out.put(MARGIN, millimetres(figures.margin()));
        out.put(SOURCE, figures.source());
        return Optional.of(out);
    }

    private static String code(@Nullable Metal metal) {
        return metal == null ? "" : metal.code();
    }

    private static String celsius(@Nullable Temperature temperature) {
        return temperature == null ? "" : temperature.text() + " °C";
    }

    private static String millimetres(@Nullable Length length) {
        return length == null ? "" : length.text() + " mm";
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(EngineDesign.class, typed.text(OF))
                .map(design -> design.fact().name())
                .orElse(""));
    }
}
