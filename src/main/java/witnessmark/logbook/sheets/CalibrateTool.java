package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Calibration;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Tool;
import witnessmark.ledger.Calibrations;
import witnessmark.ledger.result.JointDoubt;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.TypedDate;
import witnessmark.quantity.typed.TypedFigure;

/** A tool was held against a standard: the error as found, and when it is due again. */
public final class CalibrateTool implements LogSheet {
    public static final SheetField TOOL = choice("tool", 2);
    public static final SheetField DAY = of("day", FieldKind.DAY);
    public static final SheetField DUE = of("due", FieldKind.DAY);
    public static final SheetField AS_FOUND = text("as_found", 1);
    public static final SheetField BY = text("by", 1);
    public static final SheetField NOTE = text("note", 2);
    private static final long WHOLE = 10_000;
    private static final BigDecimal PARTS = new BigDecimal(100);

    @Override
    public String key() {
        return "calibrate";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("calibration", List.of(TOOL, DAY, DUE), List.of(AS_FOUND, BY, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(DAY, sight.today().toString());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(DAY, DUE, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(TOOL) ? ToolsNow.choices(sight) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        @Nullable Entry<Tool> tool = in.chosen(TOOL, Tool.class);
        LocalDate day = values.neededDay(DAY);
        LocalDate due = values.dayAhead(DUE);
        if (in.text(DUE).isEmpty()) {
            in.note(DUE, SheetNote.of("due_empty"));
        }
        if (day != null && due != null && due.isBefore(day)) {
            in.wrong(DUE, ProblemKind.EARLIER_THAN, DUE, due, day);
        }
        if (tool != null && day != null) {
            in.note(TOOL, ToolsNow.tightened(in.sight(), tool, day));
        }
        in.note(AS_FOUND, SheetNote.of("as_found"));
        Integer asFound = asFound(in, tool);
        String by = in.needed(BY);
        if (in.fine() && tool != null && day != null) {
            in.make(TOOL, new Calibration(tool.id(), day, by, asFound, due, in.text(NOTE)));
        }
    }

    /** Of a wrench found outside its tolerance, what it tightened since the calibration before, engine by engine. */
    @Override
    public Optional<SheetNote> afterSaving(SheetTyped typed, SheetSight sight) {
        LocalDate day = TypedDate.read(typed.text(DAY), sight.today(), sight.days())
                .only()
                .orElse(sight.today());
        return sight.find(Tool.class, typed.text(TOOL))
                .flatMap(tool -> Calibrations.last(sight.facts(), tool.id(), day)
                        .filter(last ->
                                Calibrations.isOutside(tool.fact(), last.fact().asFound()))
                        .map(last -> answer(sight, tool, last)));
    }

    private static SheetNote answer(SheetSight sight, Entry<Tool> tool, Entry<Calibration> found) {
        Map<Id<Engine>, List<Entry<Joint>>> byEngine =
                Calibrations.tightenedBefore(sight.facts(), found).joints().stream()
                        .collect(Collectors.groupingBy(
                                joint -> joint.fact().engine(), LinkedHashMap::new, Collectors.toList()));
        List<SheetNote> said = byEngine.entrySet().stream()
                .map(each -> SheetNote.of(
                        "joints_of",
                        sight.name(Engine.class, each.getKey()),
                        new JointDoubt(tool, found, each.getKey(), each.getValue())))
                .toList();
        return said.stream()
                .reduce((before, next) -> SheetNote.of("and_joints_of", before, next))
                .map(all -> SheetNote.of("joints_in_doubt", tool.fact().mark(), all))
                .orElseGet(() -> SheetNote.of("no_joints_in_doubt", tool.fact().mark()));
    }

    /** Reading less true value, in hundredths of a percent; null when empty or wrong. */
    private static @Nullable Integer asFound(ReadSheet in, @Nullable Entry<Tool> tool) {
        String text = in.text(AS_FOUND).replace('\u2212', '-');
        if (text.isEmpty()) {
            return null;
        }
        boolean less = text.startsWith("-");
        String figure = (less || text.startsWith("+") ? text.substring(1) : text).strip();
        Long parts =
                TypedFigure.parts(figure, 2, "-1.5 %", "%", "percent").only().orElse(null);
        if (parts == null || parts > WHOLE) {
            in.wrong(AS_FOUND, ProblemKind.CANNOT_READ, AS_FOUND, in.text(AS_FOUND), "-1.5 %");
            return null;
        }
        int found = Math.toIntExact(less ? -parts : parts);
        BigDecimal off = new BigDecimal(Math.abs(found)).divide(PARTS).stripTrailingZeros();
        in.note(
                AS_FOUND,
                tool != null && Calibrations.isOutside(tool.fact(), found)
                        ? SheetNote.echo(found < 0 ? "reads_low_outside" : "reads_high_outside", off)
                        : SheetNote.echo(found < 0 ? "reads_low" : "reads_high", off));
        return found;
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(ToolsNow.name(sight, typed.text(TOOL)));
    }
}
