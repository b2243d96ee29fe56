package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.PartKind;
import witnessmark.exchange.CsvStartingValues;
import witnessmark.logbook.port.EngineClass;
import witnessmark.logbook.port.StartingValue;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;

/** Many limits set at once: as {@link SetLimit} would have set each, and nothing that was not typed. */
class ListLimitsTest extends ByHand {
    private static final String SPRINGS = "list_valve_springs_renew_running";
    private static final String RODS = "list_rods_crack_test_running";
    private static final LocalDate MAR_5 = LocalDate.of(2026, 3, 5);

    private final List<StartingValue> values = new CsvStartingValues().all();
    private final ListLimits list = new ListLimits(() -> values);

    /** Oracle: the sheet for one limit, filled in once for each figure. Any number of figures, of any class. */
    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({"CLUB, 1", "HISTORIC, 2", "FORMULA, 3", "MOTORCYCLE, 4", "ENDURANCE, 5"})
    void what_is_saved_is_what_setting_one_by_one_would_have_written_and_one_undo_takes_it_all_back(
            EngineClass of, long seed) {
        Random random = new Random(seed);
        Map<SheetField, String> typed = filled(of.code(), "rank", "builder", "source", "sheet of March");
        Map<SheetField, ListedLimit> lines = lines();
        for (SheetField field : asked(typed)) {
            if (random.nextInt(3) > 0) {
                typed.put(field, figure(lines.get(field).counter(), random));
            }
        }
        long before = limits().size();
        own.sheets.save(list, typed, "by hand").orThrow();
        Set<Limit> atOnce = limits();
        own.desk.undo().orThrow();
        assertThat(limits()).as("seed %d", seed).hasSize((int) before);
        int filled = 0;
        for (Map.Entry<SheetField, ListedLimit> line : lines.entrySet()) {
            if (typed.containsKey(line.getKey())) {
                filled++;
                own.sheets
                        .save(new SetLimit(), one(line.getValue(), typed.get(line.getKey())), "by hand")
                        .orThrow();
            }
        }
        assertThat(atOnce)
                .as("seed %d", seed)
                .isEqualTo(limits())
                .hasSize(filled)
                .hasSizeGreaterThan(15);
    }

    @ParameterizedTest
    @EnumSource(EngineClass.class)
    void no_figure_stands_there_whatever_class_is_picked(EngineClass of) {
        Map<SheetField, String> fresh = list.fresh(own.sheets.sight());
        assertThat(fresh.keySet()).doesNotContainAnyElementsOf(lines().keySet());
        Map<SheetField, String> typed = filled(of.code());
        SheetReading reading = own.sheets.read(list, typed);
        assertThat(reading.entries()).isEmpty();
        assertThat(asked(typed))
                .extracting(SheetField::key)
                .containsExactlyInAnyOrderElementsOf(values.stream()
                        .filter(value -> value.of() == of)
                        .map(value -> ListedLimit.of(value.part(), value.action(), value.counter())
                                .field()
                                .key())
                        .collect(Collectors.toSet()));
        refused(typed, ProblemKind.NO_NEW_FIGURE);
    }

    @Test
    void every_thing_named_has_a_field_once_and_none_is_shown_before_a_class_is_picked() {
        assertThat(lines().keySet()).isSubsetOf(list.fields()).hasSizeGreaterThan(45);
        assertThat(list.groups().stream()
                        .flatMap(group -> group.rows().stream())
                        .allMatch(row -> row.stream().mapToInt(SheetField::span).sum() <= 4))
                .isTrue();
        assertThat(asked(filled(""))).isEmpty();
        refused(filled("", SPRINGS, "12"), ProblemKind.NEEDED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-3", "\u22123", "soon", "0 h", "1:20"})
    void a_figure_that_is_none_is_refused_beside_its_field_and_the_others_wait(String bad) {
        Map<SheetField, String> typed = filled("formula", RODS, "40", SPRINGS, bad);
        SheetReading reading = own.sheets.read(list, typed);
        assertThat(reading.stopped()).extracting(SheetField::key).containsExactly(SPRINGS);
        assertThat(own.sheets.save(list, typed, "by hand").didWork()).isFalse();
        assertThat(limits()).isEmpty();
        typed.put(field(SPRINGS), "12");
        own.sheets.save(list, typed, "by hand").orThrow();
        assertThat(names()).containsExactlyInAnyOrder("crack-test rods", "renew valve springs");
    }

    @Test
    void a_source_is_asked_for_unless_the_limit_is_our_own() {
        Map<SheetField, String> typed = filled("formula", SPRINGS, "12", "rank", "maker");
        assertThat(own.sheets.read(list, typed).stopped())
                .extracting(SheetField::key)
                .containsExactly("source");
    }

    @Test
    void a_figure_typed_stays_in_sight_and_is_saved_when_another_class_is_picked() {
        String belt = "list_timing_chain_renew_months";
        Map<SheetField, String> typed = filled("historic", belt, "12");
        assertThat(asked(filled("historic"))).extracting(SheetField::key).doesNotContain(belt);
        assertThat(asked(typed)).extracting(SheetField::key).contains(belt);
        own.sheets.save(list, typed, "by hand").orThrow();
        assertThat(names()).containsExactly("renew timing chain");
    }

    @Test
    void the_same_figure_is_not_written_again() {
        save(SPRINGS, "12", "limit_from", "5 Mar");
        Map<SheetField, String> typed = filled("formula", SPRINGS, "12");
        refused(typed, ProblemKind.NO_NEW_FIGURE);
        assertThat(note(typed, SPRINGS)).isEqualTo("set_already");
        typed.put(field(RODS), "40");
        own.sheets.save(list, typed, "by hand").orThrow();
        assertThat(names()).containsExactlyInAnyOrder("renew valve springs", "crack-test rods");
    }

    @Test
    void another_figure_takes_its_place_from_its_day_and_undo_brings_the_old_one_back() {
        save(SPRINGS, "12", "limit_from", "5 Mar");
        Set<Limit> before = limits();
        Map<SheetField, String> typed = filled("formula", SPRINGS, "14", "limit_from", "9 Mar");
        assertThat(note(typed, SPRINGS)).isEqualTo("ends_before");
        own.sheets.save(list, typed, "by hand").orThrow();
        assertThat(limits())
                .extracting(limit -> limit.amount() / HOUR + " from " + limit.validFrom() + " to " + limit.validTo())
                .containsExactlyInAnyOrder("12 from 2026-03-05 to 2026-03-08", "14 from 2026-03-09 to null");
        own.desk.undo().orThrow();
        assertThat(limits()).isEqualTo(before);
    }

    @Test
    void one_set_that_very_day_is_put_right_since_it_counted_no_day() {
        save(SPRINGS, "12", "limit_from", "5 Mar");
        Map<SheetField, String> typed = filled("formula", SPRINGS, "14", "limit_from", "5 Mar");
        assertThat(note(typed, SPRINGS)).isEqualTo("in_place_of");
        own.sheets.save(list, typed, "by hand").orThrow();
        assertThat(limits()).singleElement().satisfies(limit -> {
            assertThat(limit.amount()).isEqualTo(14 * HOUR);
            assertThat(limit.validFrom()).isEqualTo(MAR_5);
            assertThat(limit.validTo()).isNull();
        });
    }

    @Test
    void one_that_begins_later_is_not_cut_off_unseen() {
        save(SPRINGS, "12", "limit_from", "5 Mar");
        for (String figure : List.of("12", "14")) {
            SheetReading reading = own.sheets.read(list, filled("formula", SPRINGS, figure, "limit_from", "4 Mar"));
            assertThat(reading.of(field(SPRINGS)).problem())
                    .isEqualTo(Problem.of(ProblemKind.EARLIER_THAN, ListLimits.FROM, LocalDate.of(2026, 3, 4), MAR_5));
        }
    }

    @Test
    void one_that_is_over_one_of_another_rank_and_one_for_other_engines_stay_as_they_are() {
        limit("rule book", "10");
        save("limit_design", SheetWord.ALL_DESIGNS.key(), SPRINGS, "20", "limit_from", "5 Mar");
        write(PartKind.VALVE_SPRINGS, 9, LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 4));
        Set<Limit> before = limits();
        Map<SheetField, String> typed = filled("formula", SPRINGS, "12", "limit_from", "5 Mar");
        own.sheets.save(list, typed, "by hand").orThrow();
        assertThat(limits()).containsAll(before).hasSize(before.size() + 1);
    }

    @Test
    void beside_an_empty_figure_stands_what_is_set_for_that_design_before_what_is_set_for_all() {
        save("limit_design", SheetWord.ALL_DESIGNS.key(), SPRINGS, "20", "limit_from", "1 Mar", "source", "all");
        assertThat(said(SPRINGS)).contains(nowSet("20"));
        save(SPRINGS, "12", "limit_from", "5 Mar", "source", "ours");
        assertThat(said(SPRINGS)).contains(nowSet("12"));
    }

    @Test
    void the_design_of_the_engine_in_view_is_picked() {
        assertThat(list.picksFor(own.the(witnessmark.domain.Engine.class, "H1").id(), own.sheets.sight()))
                .containsExactly(Map.entry(
                        ListLimits.DESIGN,
                        own.the(EngineDesign.class, "Quarrow 2.0").id().text()));
    }

    private void write(PartKind kind, long hours, LocalDate from, LocalDate to) {
        own.write(new Limit(
                "old",
                LimitAction.RENEW,
                own.the(EngineDesign.class, "Quarrow 2.0").id(),
                kind,
                null,
                null,
                null,
                null,
                Counter.RUNNING,
                hours * HOUR,
                witnessmark.domain.LimitRank.OWN,
                "",
                from,
                to));
    }

    private void save(String... typed) {
        own.sheets.save(list, filled("formula", typed), "by hand").orThrow();
    }

    private Map<SheetField, String> filled(String of, String... typed) {
        Map<SheetField, String> all = own.filled(list, typed);
        all.put(ListLimits.CLASS, of);
        return all;
    }

    private Map<SheetField, String> one(ListedLimit line, String figure) {
        return own.filled(
                new SetLimit(),
                "part_kind",
                line.kind().code(),
                "action",
                line.action().code(),
                "work_due",
                line.workDue(),
                "counter",
                line.counter().code(),
                "figure",
                figure,
                "rank",
                "builder",
                "source",
                "sheet of March");
    }

    private static String figure(Counter counter, Random random) {
        int whole = 1 + random.nextInt(200);
        return counter.unit() == Counter.Unit.MILLISECOND && random.nextBoolean()
                ? whole + "." + random.nextInt(10)
                : Integer.toString(whole);
    }

    private Map<SheetField, ListedLimit> lines() {
        Map<SheetField, ListedLimit> lines = new HashMap<>();
        for (StartingValue value : values) {
            ListedLimit line = ListedLimit.of(value.part(), value.action(), value.counter());
            lines.put(line.field(), line);
        }
        return lines;
    }

    /** The fields of figures that are asked for. */
    private List<SheetField> asked(Map<SheetField, String> typed) {
        return own.sheets.read(list, typed).asked().stream()
                .filter(field -> field.label() != null)
                .toList();
    }

    private void refused(Map<SheetField, String> typed, ProblemKind kind) {
        long before = own.desk.view().facts().revision();
        Outcome<Written> outcome = own.sheets.save(list, typed, "by hand");
        assertThat(outcome.didWork()).isFalse();
        assertThat(outcome.problems()).extracting(Problem::kind).containsExactly(kind);
        assertThat(own.desk.view().facts().revision()).isEqualTo(before);
    }

    private SheetField field(String key) {
        return OwnLogbook.field(list, key);
    }

    /** The sentence under a figure, without what it usually starts from. */
    private String note(Map<SheetField, String> typed, String key) {
        SheetNote note = own.sheets.read(list, typed).of(field(key)).note();
        while (note.key().equals("and_then")) {
            note = (SheetNote) note.facts().get(0);
        }
        return note.key();
    }

    /** The note says the figure and nothing that its sentence does not show. */
    private static String nowSet(String hours) {
        long millis = Long.parseLong(hours) * 3_600_000;
        return SheetNote.echo("now_set", LimitRange.of(Counter.RUNNING, millis)).toString();
    }

    private String said(String key) {
        return own.sheets.read(list, filled("formula")).of(field(key)).note().toString();
    }

    private Set<Limit> limits() {
        return own.desk.view().facts().of(Limit.class).where(limit -> true).stream()
                .map(Entry::fact)
                .collect(Collectors.toSet());
    }

    private List<String> names() {
        return limits().stream().map(Limit::name).toList();
    }
}
