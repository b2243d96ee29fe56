package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.PartKind;
import witnessmark.logbook.port.EngineClass;
import witnessmark.logbook.port.StartingValue;
import witnessmark.logbook.port.StartingValues;
import witnessmark.outcome.ProblemKind;

/**
 * Everything that usually has a limit, as one list with empty figures, and beside each figure what its class of engine
 * usually starts from. No figure is ever filled in: what is typed is set, each as on {@link SetLimit}, and what stands
 * there before, of the same rank and for the same engines, ends the day before.
 */
public final class ListLimits implements LogSheet {
    public static final SheetField CLASS = choice("engine_class", 2);
    public static final SheetField DESIGN = choice("limit_design", 1);
    public static final SheetField FROM = of("limit_from", FieldKind.DAY);
    public static final SheetField RANK = choice("rank", 1);
    public static final SheetField SOURCE = text("source", 3);

    private static final int COLUMNS = 4;
    private static final Map<String, List<PartKind>> SUBJECTS = subjects();

    private final StartingValues values;
    private final List<ListedLimit> listed;
    private final List<SheetGroup> groups;

    /** @param values what is shown beside the figures; the list has a line for each thing they name */
    public ListLimits(StartingValues values) {
        List<PartKind> order = SUBJECTS.values().stream().flatMap(List::stream).toList();
        this.values = values;
        this.listed = values.all().stream()
                .map(value -> ListedLimit.of(value.part(), value.action(), value.counter()))
                .distinct()
                .sorted(Comparator.comparing(line -> order.indexOf(line.kind())))
                .toList();
        List<SheetGroup> all = new ArrayList<>();
        all.add(SheetGroup.of("list_for", List.of(CLASS, DESIGN, FROM), List.of(RANK, SOURCE)));
        SUBJECTS.forEach((subject, kinds) -> all.add(new SheetGroup(subject, rows(kinds))));
        this.groups = List.copyOf(all);
    }

    private static Map<String, List<PartKind>> subjects() {
        Map<String, List<PartKind>> subjects = new LinkedHashMap<>();
        subjects.put(
                "list_bottom_end",
                List.of(
                        PartKind.CRANK,
                        PartKind.RODS,
                        PartKind.ROD_BOLTS,
                        PartKind.PISTONS,
                        PartKind.RINGS,
                        PartKind.BIG_END_SHELLS,
                        PartKind.MAIN_SHELLS,
                        PartKind.BLOCK));
        subjects.put(
                "list_head",
                List.of(
                        PartKind.HEAD,
                        PartKind.EXHAUST_VALVES,
                        PartKind.INLET_VALVES,
                        PartKind.VALVE_SPRINGS,
                        PartKind.CAMSHAFTS,
                        PartKind.FOLLOWERS));
        subjects.put("list_gasket", List.of(PartKind.HEAD_GASKET, PartKind.HEAD_STUDS));
        subjects.put("list_drive", List.of(PartKind.TIMING_CHAIN, PartKind.DAMPER));
        subjects.put("list_oil_water", List.of(PartKind.OIL_PUMP, PartKind.OIL_AND_FILTER, PartKind.WATER_PUMP));
        subjects.put("list_clutch", List.of(PartKind.CLUTCH, PartKind.FLYWHEEL));
        return subjects;
    }

    /** The lines of some kinds of part, four to a row; what belongs to one kind is not torn apart where it fits in. */
    private List<List<SheetField>> rows(List<PartKind> kinds) {
        List<List<SheetField>> rows = new ArrayList<>(List.of(new ArrayList<>()));
        for (PartKind kind : kinds) {
            List<SheetField> fields = listed.stream()
                    .filter(line -> line.kind() == kind)
                    .map(ListedLimit::field)
                    .toList();
            if (rows.get(rows.size() - 1).size() + fields.size() > COLUMNS) {
                rows.add(new ArrayList<>());
            }
            rows.get(rows.size() - 1).addAll(fields);
        }
        return rows;
    }

    @Override
    public String key() {
        return "list_limits";
    }

    @Override
    public List<SheetGroup> groups() {
        return groups;
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(DESIGN, EngineScope.fresh(sight));
        out.put(RANK, LimitRank.OWN.code());
        out.put(FROM, sight.today().toString());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return sight.facts()
                .of(Engine.class)
                .find(engine)
                .map(found -> Map.of(DESIGN, found.fact().design().text()))
                .orElse(Map.of());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(CLASS)) {
            return Arrays.stream(EngineClass.values())
                    .map(of -> Choice.of(of.code(), SheetNote.of("class_" + of.code())))
                    .toList();
        }
        if (field.equals(DESIGN)) {
            return EngineScope.choices(sight, false);
        }
        return field.equals(RANK) ? Choice.words(LimitRank.values()) : List.of();
    }

    /** A figure that is typed stays in sight, whatever class is picked after it. */
    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.label() == null
                || !typed.text(field).isEmpty()
                || listed.stream()
                        .filter(line -> line.field().equals(field))
                        .anyMatch(line -> !starts(line, typed.text(CLASS)).isEmpty());
    }

    private List<StartingValue> starts(ListedLimit line, String engineClass) {
        Optional<EngineClass> of = Coded.find(EngineClass.class, engineClass);
        return values.all().stream()
                .filter(value -> of.isPresent() && value.of() == of.get() && line.starts(value))
                .toList();
    }

    @Override
    public void read(ReadSheet in) {
        in.needed(CLASS);
        EngineScope scope = EngineScope.read(in, DESIGN);
        LimitRank rank = in.word(RANK, LimitRank.class);
        String source = rank == LimitRank.OWN ? in.text(SOURCE) : in.needed(SOURCE); // our own habit is written nowhere
        in.note(SOURCE, SheetNote.of(rank == LimitRank.OWN ? "own_limit" : "source_example"));
        LocalDate from = new ReadValues(in).firstDay(FROM);
        List<NewFigure> figures = new ArrayList<>();
        for (ListedLimit line : listed) {
            if (asks(line.field(), in.typed(), in.sight())) {
                LocalDate on = from == null ? in.sight().today() : from;
                StandingLimit standing = StandingLimit.of(in.sight(), line, scope.designId(), rank, on);
                NewFigure.read(in, line, starts(line, in.text(CLASS)), standing).ifPresent(figures::add);
            }
        }
        if (in.fine() && figures.isEmpty()) {
            in.wrong(firstEmpty(in), ProblemKind.NO_NEW_FIGURE);
        }
        if (in.fine() && rank != null && from != null) {
            figures.forEach(figure -> figure.write(in, scope.designId(), rank, source, from));
        }
    }

    private SheetField firstEmpty(ReadSheet in) {
        return listed.stream()
                .map(ListedLimit::field)
                .filter(field -> in.text(field).isEmpty() && asks(field, in.typed(), in.sight()))
                .findFirst()
                .orElse(FROM);
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(CLASS, RANK, SOURCE, FROM);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        long filled = listed.stream()
                .filter(line -> !typed.text(line.field()).isEmpty())
                .count();
        return List.of(Long.toString(filled));
    }
}
