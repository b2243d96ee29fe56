package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Grade;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.SetMember;
import witnessmark.domain.Warmth;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Readings and what they may be, written by sheets alone. Oracle: each record spelt out by hand. */
class ReadByHandTest extends ByHand {
    @Test
    void a_leak_down_is_kept_as_typed_and_the_next_cylinder_takes_place_and_figure_only() {
        Map<SheetField, String> typed = reading("1", "4,5 %", "heard_at", "exhaust", "reading_time", "18:30");
        typed.put(WriteReading.WARMTH, Warmth.HOT.code());
        typed.put(WriteReading.BASELINE, "yes");
        typed.put(WriteReading.NOTE, "after the dyno");
        own.sheets.save(new WriteReading(), typed, "by hand").orThrow();

        assertThat(last(Reading.class))
                .isEqualTo(new Reading(
                        ReadingKind.LEAK_DOWN,
                        Moment.of(LocalDate.of(2026, 3, 9).atTime(18, 30), zone()),
                        engine(),
                        null,
                        "1",
                        450L,
                        null,
                        "exhaust",
                        Warmth.HOT,
                        true,
                        "Ada",
                        "after the dyno",
                        null));
        assertThat(new WriteReading().oneAfterTheOther()).isTrue();
        assertThat(new WriteReading().kept())
                .contains(WriteReading.KIND, WriteReading.ON, WriteReading.WHEN)
                .doesNotContain(WriteReading.PLACE, WriteReading.VALUE, WriteReading.HEARD, WriteReading.NOTE);
    }

    @Test
    void each_kind_of_figure_is_kept_in_whole_parts_of_its_unit() {
        // 12.4 bar = 1 240 000 Pa; 180 psi = 1 241 056.3 Pa (NIST SP 811, 6.894 757 kPa); 291 N; 0.25 mm; 10 thou =
        // 0.254 mm
        assertThat(value(ReadingKind.COMPRESSION, "12.4")).isEqualTo(1_240_000);
        assertThat(value(ReadingKind.COMPRESSION, "180 psi")).isEqualTo(1_241_056);
        assertThat(value(ReadingKind.SPRING_FORCE, "291 N")).isEqualTo(291_000);
        assertThat(value(ReadingKind.LASH, "0,25")).isEqualTo(250_000);
        assertThat(value(ReadingKind.LASH, "10 thou")).isEqualTo(254_000);
        assertThat(value(ReadingKind.HARDNESS, "103.5 HB")).isEqualTo(1035);
        assertThat(value(ReadingKind.OIL_PRESSURE, "4.2 bar")).isEqualTo(420_000);
        assertThat(value(ReadingKind.OIL_METAL, "12.5 ppm")).isEqualTo(12_500);
        assertThat(value(ReadingKind.LEAK_DOWN, "100")).isEqualTo(10_000);
    }

    @Test
    void a_grade_takes_the_place_of_the_figure_where_the_kind_is_graded() {
        Map<SheetField, String> typed = reading("", "");
        typed.put(WriteReading.KIND, ReadingKind.FILTER.code());
        typed.put(WriteReading.GRADE, Grade.FEW_SPECKS.code());
        assertThat(own.sheets.read(new WriteReading(), typed).asked())
                .contains(WriteReading.GRADE)
                .doesNotContain(WriteReading.VALUE, WriteReading.HEARD);
        own.sheets.save(new WriteReading(), typed, "by hand").orThrow();
        assertThat(last(Reading.class).grade()).isEqualTo(Grade.FEW_SPECKS);
        assertThat(last(Reading.class).value()).isNull();
    }

    @Test
    void a_bad_grade_for_which_nothing_is_set_says_that_it_shows_nowhere() {
        Map<SheetField, String> typed = reading("3", "");
        typed.put(WriteReading.KIND, ReadingKind.PLUG.code());
        typed.put(WriteReading.GRADE, Grade.DAMAGED.code());
        SheetNote silent = SheetNote.of("grade_shows_nowhere");
        assertThat(own.sheets
                        .read(new WriteReading(), typed)
                        .of(WriteReading.GRADE)
                        .note())
                .isEqualTo(silent);
        typed.put(WriteReading.GRADE, Grade.CLEAN.code());
        assertThat(own.sheets
                        .read(new WriteReading(), typed)
                        .of(WriteReading.GRADE)
                        .note())
                .isNotEqualTo(silent);
        typed.put(WriteReading.GRADE, Grade.DAMAGED.code());
        trigger("trigger_kind", "graded", "reading_kind", "plug", "trigger_grade", "damaged");
        assertThat(own.sheets
                        .read(new WriteReading(), typed)
                        .of(WriteReading.GRADE)
                        .note())
                .isNotEqualTo(silent);
    }

    @Test
    void a_reading_says_before_it_is_saved_which_others_it_will_not_be_held_against() {
        Map<SheetField, String> typed = reading("2", "4");
        assertThat(warmth(typed)).as("the first, hot or cold not said").isEqualTo(SheetNote.of("warmth_not_said"));
        typed.put(WriteReading.WARMTH, Warmth.HOT.code());
        assertThat(warmth(typed)).as("the first, said").isEqualTo(SheetNote.NONE);
        own.sheets.save(new WriteReading(), typed, "by hand").orThrow();
        assertThat(warmth(typed)).as("as the one before").isEqualTo(SheetNote.NONE);
        typed.put(WriteReading.WARMTH, Warmth.NOT_SAID.code());
        assertThat(warmth(typed)).isEqualTo(SheetNote.of("apart_from_hot", 1));
        own.sheets.save(new WriteReading(), typed, "by hand").orThrow();
        typed.put(WriteReading.WARMTH, Warmth.COLD.code());
        assertThat(warmth(typed)).as("the last of those").isEqualTo(SheetNote.of("apart_from_not_said", 1));
        typed.put(WriteReading.PLACE, "3");
        assertThat(warmth(typed)).as("another cylinder").isEqualTo(SheetNote.NONE);
    }

    private SheetNote warmth(Map<SheetField, String> typed) {
        return own.sheets
                .read(new WriteReading(), typed)
                .of(WriteReading.WARMTH)
                .note();
    }

    /** That a spring does not get force back: common practice, no source. */
    @Test
    void a_spring_that_reads_stronger_with_nothing_run_since_is_asked_about() {
        own.save(new WriteReading(), spring("280", "5 Mar")).orThrow();
        assertThat(asked(spring("291", "6 Mar"))).containsExactly("FORCE_CAME_BACK");
        assertThat(asked(spring("282", "6 Mar"))).as("whoever reads").isEmpty();
        assertThat(asked(spring("270", "6 Mar"))).isEmpty();
        logRun("60", "8000");
        assertThat(asked(spring("291", "10 Mar"))).as("other hours").isEmpty();
    }

    private static String[] spring(String force, String day) {
        return new String[] {
            "reading_kind",
            "spring force",
            "reading_on",
            "VS-1",
            "reading_place",
            "exhaust 3B",
            "reading_value",
            force,
            "reading_day",
            day
        };
    }

    private List<String> asked(String... typed) {
        return own.sheets.read(new WriteReading(), own.filled(new WriteReading(), typed)).problems().stream()
                .map(problem -> problem.kind().name())
                .toList();
    }

    @Test
    void what_is_read_by_cylinder_asks_about_a_place_that_is_none() {
        for (String good : List.of("", "3", "cyl 4", "Cylinder 1")) {
            assertThat(own.sheets.read(new WriteReading(), reading(good, "4")).problems())
                    .as(good)
                    .isEmpty();
        }
        for (String bad : List.of("exhaust 3B", "5", "0")) {
            assertThat(own.sheets.read(new WriteReading(), reading(bad, "4")).problems())
                    .as(bad)
                    .extracting(problem -> problem.kind().name())
                    .containsExactly("NOT_A_CYLINDER");
        }
    }

    @Test
    void the_place_says_what_a_place_is_called_for_its_kind() {
        Map<SheetField, String> typed = reading("", "4");
        assertThat(own.sheets
                        .read(new WriteReading(), typed)
                        .of(WriteReading.PLACE)
                        .note())
                .isEqualTo(SheetNote.of("place_cylinder"));
        typed.put(WriteReading.KIND, ReadingKind.OIL_PRESSURE.code());
        assertThat(own.sheets
                        .read(new WriteReading(), typed)
                        .of(WriteReading.PLACE)
                        .note())
                .isEqualTo(SheetNote.of("place_example"));
    }

    @Test
    void a_joint_without_words_of_its_own_is_named_by_its_fasteners() {
        Map<SheetField, String> typed =
                own.filled(new TightenJoint(), "engine", "H1", "fasteners", "head studs", "joint_value", "95 Nm");
        TightenJoint sheet = new TightenJoint();
        assertThat(sheet.about(new SheetTyped(typed), own.sheets.sight())).containsExactly("head studs", "H1");
        typed.put(TightenJoint.STAGE, "2 of 3");
        assertThat(sheet.about(new SheetTyped(typed), own.sheets.sight()).get(0))
                .isEqualTo("head studs, 2 of 3");
    }

    @Test
    void a_reading_of_a_fitted_part_says_which_engine_it_was_in() {
        own.save(
                        new WriteReading(),
                        "reading_kind",
                        "spring force",
                        "reading_on",
                        "VS-1",
                        "reading_place",
                        "exhaust 3B",
                        "reading_value",
                        "291")
                .orThrow();
        assertThat(last(Reading.class).part()).isEqualTo(part("VS-1"));
        assertThat(last(Reading.class).engine()).isEqualTo(engine());
    }

    @Test
    void a_place_is_spelt_as_before_and_its_end_will_do_where_it_is_clear() {
        read("exhaust 3B", "4");
        assertThat(place("EXHAUST 3b")).isEqualTo("exhaust 3B");
        assertThat(place("3b")).isEqualTo("exhaust 3B");
        assertThat(place("B")).isEqualTo("B");
        read("inlet 3B", "4");
        SheetReading two = own.sheets.read(new WriteReading(), reading("3B", "4"));
        assertThat(Objects.requireNonNull(two.of(WriteReading.PLACE).problem()).kind())
                .isEqualTo(witnessmark.outcome.ProblemKind.TWO_READINGS);
    }

    /** Whoever writes "ex 3B" means the place that another wrote "exhaust 3B", on the engine and in a set of springs. */
    @Test
    void a_place_is_the_same_in_both_its_spellings() {
        read("exhaust 3B", "4");
        read("in 2a", "4");
        assertThat(place("ex 3B")).isEqualTo("exhaust 3B");
        assertThat(place("EXH3b")).isEqualTo("exhaust 3B");
        assertThat(place("inlet 2A")).isEqualTo("in 2a");
        assertThat(place("intake-2A")).isEqualTo("in 2a");
        assertThat(place("inner")).as("not a side of the head").isEqualTo("inner");

        own.write(new SetMember(part("VS-1"), "exhaust 1A", 1));
        own.save(new WriteReading(), force("ex 1A")).orThrow();
        assertThat(last(Reading.class).place()).isEqualTo("exhaust 1A");
        own.save(new TakeOffPart(), "place", "H1", "fitted", "VS-1", "off_when", "9 Mar", "off_reason", "look")
                .orThrow();
        own.save(new SplitSet(), "set", "VS-1", "members", "ex 1A", "mark", "V-1A", "when", "9 Mar")
                .orThrow();
        assertThat(own.the(Part.class, "V-1A").fact().memberMark()).isEqualTo("exhaust 1A");
    }

    private static String[] force(String place) {
        return new String[] {
            "reading_kind", "spring force", "reading_on", "VS-1", "reading_place", place, "reading_value", "291"
        };
    }

    @Test
    void a_figure_unlike_the_five_before_is_asked_about_and_saved_all_the_same() {
        for (String earlier : List.of("3", "4", "4", "3", "5")) {
            read("2", earlier);
        }
        // quartiles 3 and 4, spread 1, fences 1.5 and 5.5
        assertThat(own.sheets.read(new WriteReading(), reading("2", "5.5")).problems())
                .isEmpty();
        SheetReading far = own.sheets.read(new WriteReading(), reading("2", "45"));
        assertThat(far.problems()).extracting(problem -> problem.kind().name()).containsExactly("UNUSUAL");
        assertThat(own.sheets.read(new WriteReading(), reading("1", "45")).problems())
                .isEmpty();
        own.sheets.save(new WriteReading(), reading("2", "45"), "by hand").orThrow();
        assertThat(last(Reading.class).value()).isEqualTo(4500);
    }

    @Test
    void a_limit_of_readings_is_kept_as_typed_and_a_reading_beyond_it_is_over_until_undone() {
        own.save(
                        new SetReadingLimit(),
                        "limit_name",
                        "leak-down",
                        "at_most",
                        "10",
                        "change_at_most",
                        "3 %",
                        "every",
                        "3.5",
                        "rank",
                        "builder",
                        "source",
                        "builder's sheet",
                        "limit_from",
                        "1 Mar")
                .orThrow();
        assertThat(last(ReadingLimit.class))
                .isEqualTo(new ReadingLimit(
                        "leak-down",
                        ReadingKind.LEAK_DOWN,
                        design(),
                        null,
                        null,
                        null,
                        1000L,
                        300L,
                        null,
                        null,
                        new RunningTime(7 * HOUR / 2),
                        LimitRank.BUILDER,
                        "builder's sheet",
                        FROM,
                        null));
        read("1", "4");
        assertThat(readings()).isEqualTo(MarkState.WITHIN);
        read("1", "10.01");
        assertThat(readings()).isEqualTo(MarkState.OVER);
        own.desk.undo().orThrow();
        assertThat(readings()).isEqualTo(MarkState.WITHIN);
    }

    @Test
    void limits_of_readings_of_parts_of_one_engine_and_of_grades_are_kept_as_typed() {
        own.save(
                        new SetReadingLimit(),
                        "limit_name",
                        "spring force",
                        "reading_kind",
                        "spring force",
                        "limit_in",
                        "H1",
                        "limit_of",
                        "valve springs",
                        "at_least",
                        "280",
                        "fall_at_most",
                        "8",
                        "source",
                        "ours",
                        "limit_from",
                        "1 Mar")
                .orThrow();
        ReadingLimit force = last(ReadingLimit.class);
        assertThat(force.engine()).isEqualTo(engine());
        assertThat(force.design()).isNull();
        assertThat(force.partKind()).isEqualTo(PartKind.VALVE_SPRINGS);
        assertThat(force.atLeast()).isEqualTo(280_000);
        assertThat(force.fallAtMost()).isEqualTo(800);
        assertThat(force.every()).isNull();
        own.save(
                        new SetReadingLimit(),
                        "limit_name",
                        "filter",
                        "reading_kind",
                        "filter",
                        "limit_in",
                        "all_designs",
                        "worst_grade",
                        "few specks",
                        "source",
                        "ours")
                .orThrow();
        assertThat(last(ReadingLimit.class).worstGrade()).isEqualTo(Grade.FEW_SPECKS);
        assertThat(last(ReadingLimit.class).design()).isNull();
    }
}
