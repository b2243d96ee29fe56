package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.logbook.port.EngineClass;
import witnessmark.logbook.port.StartingValue;
import witnessmark.quantity.Counter;
import witnessmark.sample.SampleBooks;

/**
 * The starting values against the tables they are from, which are kept beside the tests as they stand there and read here
 * in another way. Source of the figures: common practice, no source.
 */
class StartingValuesTest {
    private static final String HEAD = "class,part,action,counter,low,high,note,source\n";
    private static final Pattern FIGURE =
            Pattern.compile("(?:each )?(\\d+)(?:–(\\d+))?(?: (h|torque cycles|starts|months|years))?");
    private static final Pattern RANGE = Pattern.compile("(\\d+)–(\\d+)");

    private static final Map<String, PartKind> KINDS = Map.ofEntries(
            Map.entry("Pistons (forged)", PartKind.PISTONS),
            Map.entry("Piston rings", PartKind.RINGS),
            Map.entry("Con-rods (steel, race)", PartKind.RODS),
            Map.entry("Con-rods (aluminium)", PartKind.RODS),
            Map.entry("Rod bolts", PartKind.ROD_BOLTS),
            Map.entry("Big-end shells", PartKind.BIG_END_SHELLS),
            Map.entry("Main shells", PartKind.MAIN_SHELLS),
            Map.entry("Crank (steel/billet)", PartKind.CRANK),
            Map.entry("Block", PartKind.BLOCK),
            Map.entry("Cylinder head (aluminium)", PartKind.HEAD),
            Map.entry("Exhaust valves", PartKind.EXHAUST_VALVES),
            Map.entry("Inlet valves", PartKind.INLET_VALVES),
            Map.entry("Valve springs", PartKind.VALVE_SPRINGS),
            Map.entry("Camshaft", PartKind.CAMSHAFTS),
            Map.entry("Followers/buckets/tappets", PartKind.FOLLOWERS),
            Map.entry("Timing chain", PartKind.TIMING_CHAIN),
            Map.entry("Timing belt", PartKind.TIMING_CHAIN),
            Map.entry("Head gasket", PartKind.HEAD_GASKET),
            Map.entry("Head studs", PartKind.HEAD_STUDS),
            Map.entry("Oil pump", PartKind.OIL_PUMP),
            Map.entry("Oil + filter", PartKind.OIL_AND_FILTER),
            Map.entry("Water pump", PartKind.WATER_PUMP),
            Map.entry("Clutch plates", PartKind.CLUTCH),
            Map.entry("Damper (elastomer)", PartKind.DAMPER),
            Map.entry("Flywheel", PartKind.FLYWHEEL));

    /** No kind of part of ours: what they are belongs to another part, or is fitted in sets nobody lists. */
    private static final Set<String> NO_KIND = Set.of(
            "Gudgeon pins, circlips",
            "Retainers, collets",
            "Valve guides",
            "Rockers / rocker shaft",
            "Chain tensioner, guides",
            "Plugs");

    /** Rows that are a variant of another: their hours stand in its note. */
    private static final Set<String> VARIANTS = Set.of("Con-rods (aluminium)", "Timing belt");

    private static final Map<String, List<PartKind>> INSPECTED = Map.ofEntries(
            Map.entry("Pistons", List.of(PartKind.PISTONS)),
            Map.entry("Rings", List.of(PartKind.RINGS)),
            Map.entry("Con-rods", List.of(PartKind.RODS)),
            Map.entry("Rod bolts", List.of(PartKind.ROD_BOLTS)),
            Map.entry("Big-end shells", List.of(PartKind.BIG_END_SHELLS)),
            Map.entry("Main shells", List.of(PartKind.MAIN_SHELLS)),
            Map.entry("Crank", List.of(PartKind.CRANK)),
            Map.entry("Block", List.of(PartKind.BLOCK)),
            Map.entry("Head", List.of(PartKind.HEAD)),
            Map.entry("Valves", List.of(PartKind.INLET_VALVES, PartKind.EXHAUST_VALVES)),
            Map.entry("Springs", List.of(PartKind.VALVE_SPRINGS)),
            Map.entry("Cam / followers", List.of(PartKind.CAMSHAFTS, PartKind.FOLLOWERS)),
            Map.entry("Chain / belt", List.of(PartKind.TIMING_CHAIN)),
            Map.entry("Studs", List.of(PartKind.HEAD_STUDS)),
            Map.entry("Oil pump", List.of(PartKind.OIL_PUMP)),
            Map.entry("Oil", List.of(PartKind.OIL_AND_FILTER)),
            Map.entry("Water pump", List.of(PartKind.WATER_PUMP)),
            Map.entry("Clutch", List.of(PartKind.CLUTCH)),
            Map.entry("Damper", List.of(PartKind.DAMPER)),
            Map.entry("Flywheel", List.of(PartKind.FLYWHEEL)));

    @TempDir
    Path folder;

    private final List<StartingValue> all = new CsvStartingValues().all();

    @Test
    void every_figure_of_the_table_is_there_cell_by_cell_and_no_other() throws Exception {
        Set<String> table = new TreeSet<>();
        for (List<String> row : rows("replace-at-by-class.txt")) {
            String name = row.get(0);
            assertThat(KINDS.containsKey(name) != NO_KIND.contains(name))
                    .as(name)
                    .isTrue();
            for (EngineClass of : EngineClass.values()) {
                if (KINDS.containsKey(name)) {
                    cell(name, of, row.get(of.ordinal() + 1), table);
                }
            }
        }
        Set<String> shipped = new TreeSet<>();
        for (StartingValue value : all) {
            if (value.action() == LimitAction.RENEW && value.low() != null) {
                long unit = value.counter().unit() == Counter.Unit.MILLISECOND ? 3_600_000 : 1;
                assertThat(value.low() % unit + Objects.requireNonNull(value.high()) % unit)
                        .isZero();
                shipped.add(line(value.part(), value.of(), value.counter(), value.low() / unit, value.high() / unit));
            }
        }
        assertThat(shipped).isEqualTo(table).hasSizeGreaterThan(110);
    }

    /** Reads one cell: what is a figure goes into the table, a range within words must stand in the note. */
    private void cell(String name, EngineClass of, String cell, Set<String> table) {
        PartKind kind = Objects.requireNonNull(KINDS.get(name));
        String unit = name.equals("Head studs") ? "torque cycles" : "h";
        List<String> words = new ArrayList<>();
        Pattern.compile("\\(([^)]*)\\)").matcher(cell).results().forEach(inside -> words.add(inside.group(1)));
        for (String piece : cell.replaceAll("\\([^)]*\\)", "").split(" or |[;/,]")) {
            String said = piece.strip();
            Matcher figure = FIGURE.matcher(said);
            if (said.equals("every head removal") || said.equals("one use if stretch type")) {
                table.add(line(kind, of, Counter.USES, 1, 1));
            } else if (figure.matches() && !(VARIANTS.contains(name) && figure.group(3) == null)) {
                String in = figure.group(3) == null ? unit : figure.group(3);
                int times = in.equals("years") ? 12 : 1;
                long low = Long.parseLong(figure.group(1)) * times;
                long high = figure.group(2) == null ? low : Long.parseLong(figure.group(2)) * times;
                table.add(line(kind, of, counter(in), low, high));
            } else {
                words.add(said);
            }
            unit = name.equals("Clutch plates") ? "starts" : unit;
        }
        String notes = notes(kind, of);
        for (String said : words) {
            RANGE.matcher(said)
                    .results()
                    .forEach(range -> assertThat(notes)
                            .as("%s, %s: %s", name, of, said)
                            .contains(range.group(1) + " to " + range.group(2)));
        }
        if (cell.contains("on condition")) {
            assertThat(notes).as("%s, %s", name, of).contains("on condition");
        }
    }

    @Test
    void each_part_that_is_inspected_has_a_line_for_it_with_words_and_no_figure() throws Exception {
        for (List<String> row : rows("inspect-at.txt")) {
            for (PartKind kind : INSPECTED.getOrDefault(row.get(0), List.of())) {
                Counter counter = counter(row.get(1).split(",")[0]);
                for (EngineClass of : EngineClass.values()) {
                    List<StartingValue> looks = all.stream()
                            .filter(value -> value.of() == of && value.part() == kind)
                            .filter(value -> value.action() != LimitAction.RENEW)
                            .toList();
                    if (of == EngineClass.MOTORCYCLE
                            && Set.of(PartKind.DAMPER, PartKind.FLYWHEEL).contains(kind)) {
                        assertThat(looks).as("%s: it has none", kind).isEmpty();
                    } else {
                        assertThat(looks).as("%s, %s", kind, of).isNotEmpty().allSatisfy(look -> {
                            assertThat(look.counter()).isEqualTo(counter);
                            assertThat(look.low()).isNull();
                        });
                    }
                }
            }
        }
        assertThat(all.stream()
                        .filter(value -> value.action() == LimitAction.CRACK_TEST)
                        .map(StartingValue::part))
                .containsOnly(PartKind.CRANK, PartKind.RODS, PartKind.FLYWHEEL);
    }

    @Test
    void each_has_a_source_and_is_there_once() {
        assertThat(all).allSatisfy(value -> {
            if (value.low() != null) {
                assertThat(value.source()).isEqualTo("common practice, no source");
            }
        });
        assertThat(all.stream().map(StartingValue::source)).doesNotContain("");
        assertThat(all).doesNotHaveDuplicates();
        assertThat(all.stream().map(StartingValue::of)).containsOnly(EngineClass.values());
    }

    /** What a team really lists: each of its limits on a kind of part stands in the list for every fitting class. */
    @Test
    void the_list_misses_nothing_that_the_sample_season_limits() throws Exception {
        Facts facts = new SampleBooks(folder).open().view().facts();
        List<Entry<Limit>> limits = facts.of(Limit.class).where(limit -> true);
        assertThat(limits).hasSizeGreaterThan(25);
        EnumSet<PartKind> withoutRow = EnumSet.noneOf(PartKind.class);
        for (Entry<Limit> entry : limits) {
            Limit limit = entry.fact();
            if (limit.partKind() == null) {
                PartDesign design = facts.of(PartDesign.class)
                        .get(facts.of(Part.class).get(limit.part()).design());
                withoutRow.add(design.kind());
            } else {
                assertThat(all)
                        .as(limit.name())
                        .anyMatch(value -> value.part() == limit.partKind()
                                && value.action() == limit.action()
                                && value.counter() == limit.counter());
            }
        }
        assertThat(withoutRow).as("the tables have no row for a gearbox").containsExactly(PartKind.GEARBOX);
        assertThat(all.stream().map(StartingValue::part)).doesNotContain(PartKind.GEARBOX);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "boat,crank,renew,running,1 h,2 h,,s",
                "club,keel,renew,running,1 h,2 h,,s",
                "club,crank,paint,running,1 h,2 h,,s",
                "club,crank,renew,tides,1 h,2 h,,s",
                "club,crank,renew,running,1,2,,s",
                "club,crank,renew,running,2 h,1 h,,s",
                "club,crank,renew,running,0 h,1 h,,s",
                "club,crank,renew,running,1 h,,,s",
                "club,crank,renew,running,,,,s",
                "club,crank,renew,running,1 h,2 h,,",
                "club,crank,renew"
            })
    void a_damaged_row_is_named_by_its_line(String row) {
        assertThatThrownBy(() -> CsvStartingValues.read(new StringReader(HEAD + row + "\n")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("starting-values.csv, ")
                .satisfies(thrown ->
                        assertThat(thrown.getMessage() + thrown.getCause()).contains("line "));
    }

    @Test
    void a_row_is_read_in_the_units_of_its_counter() throws Exception {
        assertThat(CsvStartingValues.read(new StringReader(HEAD + "club,crank,renew,running,1 h,2.5 h,cast,s\n")))
                .containsExactly(new StartingValue(
                        EngineClass.CLUB,
                        PartKind.CRANK,
                        LimitAction.RENEW,
                        Counter.RUNNING,
                        3_600_000L,
                        9_000_000L,
                        "cast",
                        "s"));
    }

    private String notes(PartKind kind, EngineClass of) {
        return all.stream()
                .filter(value -> value.part() == kind && value.of() == of)
                .map(StartingValue::note)
                .toList()
                .toString();
    }

    private static String line(PartKind kind, EngineClass of, Counter counter, long low, long high) {
        return "%s, %s: %d to %d %s".formatted(kind.code(), of.code(), low, high, counter.code());
    }

    private static Counter counter(String unit) {
        return switch (unit) {
            case "h", "hours" -> Counter.RUNNING;
            case "starts" -> Counter.RACE_STARTS;
            case "months", "years", "calendar" -> Counter.AGE;
            case "torque cycles" -> Counter.TORQUE_CYCLES;
            case "heat cycles" -> Counter.HEAT_CYCLES;
            default -> throw new IllegalArgumentException(unit);
        };
    }

    private static List<List<String>> rows(String file) throws Exception {
        try (var in = Objects.requireNonNull(StartingValuesTest.class.getResourceAsStream("/limits/" + file))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("| ") && !line.startsWith("| component"))
                    .map(line -> List.of(line.substring(2, line.length() - 2).split(" \\| ")))
                    .toList();
        }
    }
}
