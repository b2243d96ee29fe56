package witnessmark.logbook.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.SignOff;
import witnessmark.domain.TrackRepair;
import witnessmark.fit.result.LessonCheck;
import witnessmark.logbook.View;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.sample.SampleViews;

/**
 * What the failures of the invented season taught and which later build sheets asked it. Oracles: its tables of incidents and of
 * the investigation of the big end (housing no more than 0.012 mm out of round, bolts by stretch with their length written down,
 * wrench in date), and the plain rule that a sheet knows nothing that was learned after it.
 */
class LessonsOfTheSeasonTest {
    private static Facts facts;
    private static View end;

    @BeforeAll
    static void tellTheSeason() {
        facts = SampleViews.end().facts();
        end = on("2026-10-27");
    }

    private static View on(String day) {
        return SampleViews.on(facts, LocalDate.parse(day));
    }

    private static SheetPage sheet(View view, String engine, int number) {
        Entry<Engine> found = facts.of(Engine.class).named(engine).orElseThrow();
        return SeeBuildSheet.of(
                        view,
                        SeeBuild.find(view, found.id(), number).orElseThrow().id())
                .orElseThrow();
    }

    private static List<String> asked(SheetPage page) {
        return page.lessons().stream()
                .map(check -> facts.of(Incident.class)
                                .get(Objects.requireNonNull(
                                        check.lesson().fact().incident()))
                                .mark()
                        + " " + check.state())
                .toList();
    }

    @Test
    void the_sheet_of_k05_after_the_second_failure_asks_what_it_taught_and_is_as_it_asks() {
        SheetPage page = sheet(end, "K05", 3);

        assertThat(asked(page))
                .containsExactlyInAnyOrder(
                        "INC-04 MET",
                        "INC-06 MET",
                        "INC-06 MET",
                        "INC-05 MET",
                        "INC-05 MET",
                        "INC-05 MET",
                        "INC-05 MET");
        LessonCheck ovality = page.lessons().stream()
                .filter(check -> check.lesson().fact().kind() == MeasureKind.BIG_END_OVALITY)
                .findFirst()
                .orElseThrow();
        assertThat(ovality.lesson().fact().atMost())
                .as("0.012 mm in nanometres")
                .isEqualTo(12_000L);
        assertThat(ovality.checks()).hasSize(4);
        assertThat(Objects.requireNonNull(ovality.decides()).place().number()).isEqualTo(3);
    }

    @Test
    void before_the_second_failure_taught_it_the_same_open_sheet_asks_nothing_of_housings() {
        assertThat(asked(sheet(on("2026-09-07"), "K05", 3))).containsExactly("INC-04 NOT_ANSWERED");
        assertThat(asked(sheet(on("2026-07-08"), "K05", 3))).containsExactly("INC-04 NOT_ANSWERED");
        assertThat(sheet(on("2026-07-08"), "K05", 3).counts().lessons()).isEqualTo(1);
    }

    @Test
    void sheets_signed_or_closed_before_a_lesson_are_not_touched_by_it() {
        for (Entry<Build> build : SeeBuildSheet.all(end)) {
            for (LessonCheck check : SeeBuildSheet.lessons(end, build)) {
                if (build.fact().closed() != null) {
                    assertThat(check.lesson().fact().from().isAfter(build.fact().closed()))
                            .isFalse();
                }
                facts.of(SignOff.class)
                        .where(sign -> sign.build().equals(build.id()))
                        .forEach(sign -> assertThat(check.lesson().fact().from())
                                .isLessThanOrEqualTo(sign.fact().at()));
            }
        }
        assertThat(sheet(end, "K05", 1).lessons()).as("signed in January").isEmpty();
    }

    @Test
    void every_sheet_that_was_closed_after_a_lesson_answers_it_or_somebody_accepted_that() {
        int asked = 0;
        for (Entry<Build> build : SeeBuildSheet.all(end)) {
            if (build.fact().closed() != null) {
                List<LessonCheck> lessons = SeeBuildSheet.lessons(end, build);
                assertThat(lessons).noneMatch(LessonCheck::open);
                asked += lessons.size();
            }
        }
        assertThat(asked).isGreaterThan(12);
        assertThat(sheet(end, "K22", 3).lessons()).singleElement().satisfies(check -> {
            assertThat(check.state()).isEqualTo(LessonCheck.State.NOT_MET);
            assertThat(check.accepted()).isNotNull();
        });
    }

    @Test
    void a_repair_at_the_track_has_no_sheet_and_is_asked_nothing() {
        facts.of(TrackRepair.class)
                .where(repair -> true)
                .forEach(repair -> assertThat(SeeBuildSheet.lessons(
                                end,
                                facts.of(Build.class)
                                        .find(repair.fact().build())
                                        .orElseThrow()))
                        .isEmpty());
        assertThat(facts.of(TrackRepair.class).where(repair -> true)).isNotEmpty();
    }

    /** Asking for one incident is asking for all and leaving out the rest. */
    @Test
    void the_lessons_of_one_incident_are_those_of_it_among_all() {
        for (View view : List.of(end, on("2026-09-07"), on("2026-07-08"))) {
            List<LessonSeen> all = SeeLessons.all(view);
            for (Entry<Incident> incident : facts.of(Incident.class).all()) {
                assertThat(SeeLessons.of(view, incident.id()))
                        .isEqualTo(all.stream()
                                .filter(seen -> incident.id()
                                        .equals(seen.lesson().fact().incident()))
                                .toList());
            }
        }
    }

    @Test
    void every_lesson_says_which_sheets_asked_it_and_a_lesson_of_the_head_waits_for_the_next_head() {
        List<LessonSeen> all = SeeLessons.all(end);

        assertThat(all).hasSize(9).allMatch(LessonSeen::standing);
        assertThat(SeeLessons.of(
                        end,
                        facts.of(Incident.class).named("INC-05").orElseThrow().id()))
                .hasSize(4)
                .allSatisfy(seen -> assertThat(seen.asked())
                        .extracting(on -> on.engine().fact().number() + "/"
                                + on.build().fact().number())
                        .containsExactly("K05/3"));
        assertThat(SeeLessons.of(
                        end,
                        facts.of(Incident.class).named("INC-09").orElseThrow().id()))
                .singleElement()
                .satisfies(seen -> assertThat(seen.asked()).isEmpty());
        assertThat(SeeLessons.all(on("2026-05-25"))).as("nothing taught yet").isEmpty();
    }
}
