package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.Run;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * Minutes of parts from times out and times fitted, against a count of every whole minute made elsewhere. There a part
 * changed while its engine ran has what ran after the change, and the day is cut at noon; here a run belongs wholly to
 * what was fitted when it went out, so the runs are written in pieces, each cut where something changes.
 */
class AccrualCasesTest {
    private static final long MINUTE = 60_000;
    private static final String NOON = "2024-03-13T12:00Z";

    /** The thirteenth ends at noon of Greenwich there. */
    private static final AsOf BY_NOON = new AsOf(LocalDate.parse("2024-03-13"), ZoneOffset.ofHours(12));

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Position> here = story.position(design, PartKind.RODS, "rods", 1, false);
    private final Map<String, Id<Engine>> engines = new HashMap<>();
    private final Map<String, Id<Part>> parts = new HashMap<>();
    private final List<String[]> fitments = rows("accrual-fitments.csv");
    private final List<String[]> times = rows("accrual-runs.csv").stream()
            .filter(row -> !row[1].equals(row[2]))
            .toList();

    AccrualCasesTest() {
        for (String name : List.of("E1", "E2", "E3")) {
            engines.put(name, story.engine(name, design));
        }
        for (String[] row : rows("accrual-parts.csv")) {
            Id<Part> part = story.part(row[0], story.partDesign(row[0], PartKind.RODS, false));
            parts.put(row[0], part);
            long initial = Long.parseLong(row[1]) * MINUTE;
            story.prior(
                    part, Counter.RUNNING, PriorKind.KNOWN, initial, initial, initial, Story.at("2024-03-01T00:00Z"));
        }
        for (String[] row : fitments) {
            story.fit(
                    parts.get(row[0]),
                    engines.get(row[1]),
                    here,
                    Story.at(row[2]),
                    row.length < 4 ? null : Story.at(row[3]));
        }
    }

    static Stream<String> parts() {
        return rows("accrual-parts.csv").stream().map(row -> row[0]);
    }

    @ParameterizedTest
    @MethodSource("parts")
    void runs_that_overlap_both_count_until_somebody_says_they_are_one(String part) {
        writePieces(false);
        LifeLedger ledger = LifeLedger.of(story.facts(), BY_NOON);
        assertThat(ledger.life(parts.get(part), Counter.RUNNING).total())
                .isEqualTo(expected(part + "_sum_minutes_incl_initial") * MINUTE);
        assertThat(touched(ledger.account(parts.get(part), Counter.RUNNING)))
                .isEqualTo(expected(part + "_sessions_touched"));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void what_is_set_aside_as_perhaps_the_same_counts_once(String part) {
        writePieces(true);
        LifeLedger ledger = LifeLedger.of(story.facts(), BY_NOON);
        assertThat(ledger.life(parts.get(part), Counter.RUNNING).total())
                .isEqualTo(expected(part + "_union_minutes_incl_initial") * MINUTE);
    }

    @Test
    void every_run_that_overlaps_an_earlier_one_is_flagged() {
        List<Id<?>> overlapping = new ArrayList<>();
        List<Id<?>> all = new ArrayList<>();
        for (int i = 0; i < times.size(); i++) {
            Moment out = Story.at(times.get(i)[1]);
            Id<Run> run = write(i, times.get(i)[0], times.get(i)[1], times.get(i)[2], null);
            all.add(run);
            for (int j = 0; j < i; j++) {
                if (times.get(j)[0].equals(times.get(i)[0])
                        && Story.at(times.get(j)[2]).isAfter(out)) {
                    overlapping.add(run);
                    break;
                }
            }
        }
        assertThat(overlapping).hasSizeGreaterThan(5);
        assertThat(Coherence.clashes(
                                story.facts(),
                                story.entries().stream()
                                        .filter(entry -> all.contains(entry.id()))
                                        .toList(),
                                BY_NOON)
                        .stream()
                        .filter(clash -> clash.problem().kind() == ProblemKind.RUNS_OVERLAP)
                        .map(clash -> (Object) clash.entry().id()))
                .containsExactlyInAnyOrderElementsOf(overlapping);
    }

    @Test
    void a_part_changed_while_its_engine_ran_is_refused_where_the_pieces_are_not_cut() {
        Id<Run> whole = write(0, "E3", "2024-03-01T16:44Z", "2024-03-01T19:44Z", null);
        List<Problem> problems = Coherence.forEntries(
                story.facts(),
                story.entries().stream()
                        .filter(entry -> entry.id().equals(whole))
                        .toList(),
                BY_NOON);
        assertThat(problems)
                .contains(Problem.of(
                        ProblemKind.CHANGE_INSIDE_RUN,
                        "0",
                        Story.at("2024-03-01T16:44Z"),
                        Story.at("2024-03-01T19:44Z"),
                        Story.at("2024-03-01T16:46Z")));
    }

    @Test
    void a_run_out_and_back_in_the_same_minute_is_no_run() {
        assertThatThrownBy(() -> write(0, "E2", "2024-03-06T08:00Z", "2024-03-06T08:00Z", null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("missed run");
    }

    /** Writes each time out in pieces; with once, pieces that cover the same minutes as an earlier one stand aside. */
    private void writePieces(boolean once) {
        Map<String, Id<Run>> written = new HashMap<>();
        for (int i = 0; i < times.size(); i++) {
            String engine = times.get(i)[0];
            List<String> cuts = cuts(engine, times.get(i)[1], times.get(i)[2], once);
            for (int piece = 0; piece + 1 < cuts.size(); piece++) {
                String key = engine + cuts.get(piece) + cuts.get(piece + 1);
                Id<Run> same = once ? written.get(key) : null;
                Id<Run> run = write(i, engine, cuts.get(piece), cuts.get(piece + 1), same);
                written.putIfAbsent(key, run);
            }
        }
    }

    /** Where a time out is cut: its ends, noon, fitments of its engine, and with runs the ends of the other runs. */
    private List<String> cuts(String engine, String out, String in, boolean runs) {
        TreeSet<String> cuts = new TreeSet<>(List.of(out, in, NOON));
        for (String[] fitment : fitments) {
            if (fitment[1].equals(engine)) {
                cuts.addAll(List.of(fitment).subList(2, fitment.length));
            }
        }
        for (String[] time : runs ? times : List.<String[]>of()) {
            if (time[0].equals(engine)) {
                cuts.addAll(List.of(time[1], time[2]));
            }
        }
        return List.copyOf(cuts.subSet(out, true, in, true));
    }

    private Id<Run> write(int number, String engine, String out, String in, Id<Run> same) {
        Moment start = Story.at(out);
        long millis = Story.at(in).epochMillis() - start.epochMillis();
        return story.add(new RunDraft(engines.get(engine), null, start, new RunningTime(millis))
                .named(Integer.toString(number))
                .perhapsSame(same)
                .written());
    }

    private static long touched(Account account) {
        return account.charges().stream()
                .filter(charge -> charge.counted() == Counted.YES)
                .map(Charge::source)
                .flatMap(source -> source.fact() instanceof Run run ? Stream.of(run.name()) : Stream.empty())
                .distinct()
                .count();
    }

    private static long expected(String quantity) {
        return rows("accrual-expected.csv").stream()
                .filter(row -> row[0].equals(quantity))
                .mapToLong(row -> Long.parseLong(row[1]))
                .findFirst()
                .orElseThrow();
    }

    /** The rows of a small table without quotes, its source line and heading left out. */
    static List<String[]> rows(String file) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                AccrualCasesTest.class.getResourceAsStream("/ledger/" + file), StandardCharsets.UTF_8))) {
            return reader.lines().skip(2).map(line -> line.split(",")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
