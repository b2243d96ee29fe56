package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Fact;
import witnessmark.domain.Grade;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.PartKind;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.TimeUnit;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedTime;

/** Sets what holds an engine or its parts whatever their hours, until somebody signs it clear. */
public final class SetTrigger implements LogSheet {
    public static final SheetField KIND = choice("trigger_kind", 1);
    public static final SheetField DESIGN = choice("limit_design", 1);
    public static final SheetField NAME = text("trigger_name", 2);
    public static final SheetField FIGURE = text("trigger_figure", 1);
    public static final SheetField LASTING = text("lasting", 1);
    public static final SheetField READING = choice("reading_kind", 1);
    public static final SheetField GRADE = choice("trigger_grade", 1);
    public static final SheetField HOLDS = text("holds", 4);
    public static final SheetField ASKS = text("held_asks", 4);
    public static final SheetField RANK = choice("rank", 1);
    public static final SheetField SOURCE = text("source", 2);
    public static final SheetField FROM = of("limit_from", FieldKind.DAY);

    @Override
    public String key() {
        return "set_trigger";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of(
                        "trigger", List.of(KIND, DESIGN, NAME), List.of(FIGURE, LASTING), List.of(READING, GRADE)),
                SheetGroup.of("trigger_holds", List.of(HOLDS), List.of(ASKS)),
                SheetGroup.of("rule_source", List.of(RANK, SOURCE, FROM)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, TriggerKind.SPEED_ABOVE.code());
        out.put(DESIGN, EngineScope.fresh(sight));
        out.put(READING, ReadingKind.FILTER.code());
        out.put(RANK, LimitRank.OWN.code());
        out.put(FROM, sight.today().toString());
        return out;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        TriggerKind kind = Coded.find(TriggerKind.class, typed.text(KIND)).orElse(null);
        boolean byFigure = kind != null && kind.figure() != null;
        return switch (field.key()) {
            case "trigger_figure" -> byFigure;
            case "lasting" -> kind == TriggerKind.SPEED_ABOVE;
            case "reading_kind" -> !byFigure;
            case "trigger_grade" -> kind == TriggerKind.GRADED;
            default -> true;
        };
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "trigger_kind" -> Choice.words(TriggerKind.values());
            case "limit_design" -> EngineScope.choices(sight, false);
            case "reading_kind" ->
                Arrays.stream(ReadingKind.values())
                        .filter(ReadingKind::graded)
                        .map(kind -> Choice.of(kind.code(), kind))
                        .toList();
            case "trigger_grade" -> {
                ReadingKind kind =
                        Coded.find(ReadingKind.class, typed.text(READING)).orElse(null);
                yield Arrays.stream(Grade.values())
                        .filter(grade -> kind != null && grade.of(kind))
                        .map(grade -> Choice.of(grade.code(), grade))
                        .toList();
            }
            case "rank" -> Choice.words(LimitRank.values());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        TriggerKind kind = in.word(KIND, TriggerKind.class);
        EngineScope scope = EngineScope.read(in, DESIGN);
        String name = in.needed(NAME);
        in.note(NAME, SheetNote.of("trigger_name"));
        boolean byFigure = kind != null && kind.figure() != null;
        @Nullable Long figure = kind != null && byFigure ? figure(in, kind, scope) : null;
        @Nullable RunningTime lasting = kind == TriggerKind.SPEED_ABOVE ? lasting(in) : null;
        @Nullable ReadingKind reading = byFigure ? null : in.word(READING, ReadingKind.class);
        @Nullable Grade grade = kind == TriggerKind.GRADED ? in.word(GRADE, Grade.class) : null;
        if (grade != null && reading != null && !grade.of(reading)) {
            in.wrong(GRADE, ProblemKind.NEEDED, GRADE);
        }
        Set<PartKind> holds = holds(in);
        in.blame(HOLDS, ProblemKind.TRIGGER_WITHOUT_PARTS);
        String asks = in.needed(ASKS);
        in.note(ASKS, SheetNote.of("held_asks_example"));
        LimitRank rank = in.word(RANK, LimitRank.class);
        String source = in.needed(SOURCE);
        in.note(SOURCE, SheetNote.of("source_example"));
        LocalDate from = new ReadValues(in).firstDay(FROM);
        if (!in.fine() || kind == null || rank == null || from == null) {
            return;
        }
        in.make(
                NAME,
                new Trigger(
                        name,
                        kind,
                        scope.designId(),
                        figure,
                        lasting,
                        reading,
                        grade,
                        holds,
                        asks,
                        rank,
                        source,
                        from,
                        null));
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof Trigger trigger)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, trigger.kind().code());
        out.put(DESIGN, EngineScope.key(trigger.design(), null));
        out.put(NAME, trigger.name());
        out.put(FIGURE, figure(trigger, sight.units()));
        out.put(LASTING, AsText.seconds(trigger.lasting()));
        out.put(READING, AsText.code(trigger.readingKind()));
        out.put(GRADE, AsText.code(trigger.grade()));
        out.put(HOLDS, AsText.codes(List.copyOf(trigger.holds())));
        out.put(ASKS, trigger.asks());
        out.put(RANK, trigger.rank().code());
        out.put(SOURCE, trigger.source());
        out.put(FROM, trigger.validFrom().toString());
        return Optional.of(out);
    }

    private static String figure(Trigger trigger, SheetUnits units) {
        Long figure = trigger.figure();
        TriggerKind.Figure unit = trigger.kind().figure();
        if (figure == null || unit == null) {
            return "";
        }
        return switch (unit) {
            case RPM -> Long.toString(figure);
            case MILLIKELVIN -> AsText.figure(units.temperature(), new Temperature(figure));
            case PASCAL -> AsText.figure(units.pressure(), new Pressure(figure));
        };
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NAME));
    }

    /** The figure in the unit of its kind, or null and noted. */
    private static @Nullable Long figure(ReadSheet in, TriggerKind kind, EngineScope scope) {
        in.needed(FIGURE);
        ReadValues values = new ReadValues(in);
        TriggerKind.Figure unit = java.util.Objects.requireNonNull(kind.figure());
        SheetUnits units = in.sight().units();
        in.note(
                FIGURE,
                switch (unit) {
                    case RPM -> SheetNote.of("in_rpm");
                    case MILLIKELVIN -> SheetNote.of("in_unit", units.temperature());
                    case PASCAL -> SheetNote.of("in_unit", units.pressure());
                });
        Long figure = switch (unit) {
            case RPM -> {
                EngineSpeed speed = values.speed(FIGURE, limiter(in, scope));
                yield speed == null ? null : Long.valueOf(speed.rpm());
            }
            case MILLIKELVIN -> {
                Temperature hot =
                        values.<Temperature>echoed(FIGURE, text -> TypedFigure.read(text, units.temperature()));
                yield hot == null ? null : hot.millikelvin();
            }
            case PASCAL -> {
                Pressure pressure = values.<Pressure>echoed(FIGURE, text -> TypedFigure.read(text, units.pressure()));
                yield pressure == null ? null : pressure.pascals();
            }
        };
        if (figure != null && figure <= 0) {
            in.wrong(
                    FIGURE,
                    ProblemKind.CANNOT_READ,
                    FIGURE,
                    in.text(FIGURE),
                    units.pressure().example());
            return null;
        }
        return figure;
    }

    private static @Nullable EngineSpeed limiter(ReadSheet in, EngineScope scope) {
        Id<EngineDesign> design = scope.designId();
        return design == null
                ? null
                : in.sight().facts().of(EngineDesign.class).get(design).redLine();
    }

    private static @Nullable RunningTime lasting(ReadSheet in) {
        in.note(LASTING, SheetNote.of("lasting"));
        RunningTime lasting = new ReadValues(in).read(LASTING, text -> TypedTime.read(text, TimeUnit.SECOND));
        if (lasting != null) {
            in.note(LASTING, SheetNote.echo("understood_seconds", seconds(lasting)));
        }
        return lasting;
    }

    private static BigDecimal seconds(RunningTime time) {
        return BigDecimal.valueOf(time.millis(), 3).stripTrailingZeros();
    }

    /** The kinds of part named, with commas between; each may be cut short where it stays clear. */
    private static Set<PartKind> holds(ReadSheet in) {
        String text = in.text(HOLDS);
        in.note(HOLDS, SheetNote.of("holds_form"));
        Set<PartKind> kinds = EnumSet.noneOf(PartKind.class);
        for (String word : text.split("\\s*[,;]\\s*")) {
            if (word.isBlank()) {
                continue;
            }
            PartKind kind = partKind(word);
            if (kind == null) {
                in.wrong(HOLDS, ProblemKind.CANNOT_READ, HOLDS, word, "rods, rod bolts");
                return Set.of();
            }
            kinds.add(kind);
        }
        if (!kinds.isEmpty()) {
            in.note(HOLDS, new SheetNote("line", List.copyOf(kinds), true));
        }
        return kinds;
    }

    private static @Nullable PartKind partKind(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT);
        PartKind found = null;
        for (PartKind kind : PartKind.values()) {
            if (kind.code().equals(plain)) {
                return kind;
            }
            if (kind.code().startsWith(plain)) {
                if (found != null) {
                    return null;
                }
                found = kind;
            }
        }
        return found;
    }
}
