package witnessmark.logbook.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Engine;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.RunningTime;
import witnessmark.sample.SampleBooks;

/** Against the sample season, whose tables were added up by hand before there was a program. */
class SeeEngineTest {
    @TempDir
    private static Path folder;

    private static Desk desk;

    @BeforeAll
    static void open() {
        desk = new SampleBooks(folder).open();
    }

    @AfterEach
    void backToToday() {
        desk.lookAsOf(null);
    }

    @Test
    void the_list_says_where_each_engine_is_and_what_it_ran_since_its_rebuild() {
        Engines engines = SeeEngine.all(desk.view());
        EngineRow k03 = row(engines, "K03");
        assertThat(k03.car()).isEqualTo("41");
        assertThat(hours(k03.sinceRebuild())).isEqualTo("12.87");
        assertThat(hours(row(engines, "K06").sinceRebuild())).isEqualTo("6.11");
        assertThat(row(engines, "K05").car()).isNull();
        assertThat(row(engines, "K05").open()).isNotNull();
    }

    /** The rods were held by 9 340 rpm on 3 May and nobody signed them clear; the springs are 0.87 h past their 12 h. */
    @Test
    void the_worst_on_an_engine_is_named() {
        EngineRow k03 = row(SeeEngine.all(desk.view()), "K03");
        MarkOn worst = k03.worst();
        assertThat(worst).isNotNull();
        assertThat(worst.serial()).isEqualTo("RS-03");
        assertThat(worst.state()).isEqualTo(MarkState.HELD);
        MarkOn springs = sheet(desk.view(), "K03").build().stream()
                .map(FittedPart::nearest)
                .filter(on -> on != null && "VS-03".equals(on.serial()))
                .findFirst()
                .orElseThrow();
        assertThat(springs.state()).isEqualTo(MarkState.OVER);
        assertThat(hours(springs.use().used())).isEqualTo("12.87");
    }

    @Test
    void a_build_lists_every_position_of_the_design_and_says_which_are_empty() {
        EngineSheet k05 = sheet(desk.view(), "K05");
        assertThat(k05.build())
                .filteredOn(FittedPart::empty)
                .extracting(fitted -> fitted.position().fact().name())
                .contains("crank", "rods", "head")
                .doesNotContain("clutch");
        EngineSheet k03 = sheet(desk.view(), "K03");
        assertThat(k03.row().incomplete()).isFalse();
        assertThat(k03.build())
                .extracting(fitted -> fitted.position().fact().ordinal())
                .isSorted();
    }

    @Test
    void a_set_names_its_members() {
        FittedPart rods = sheet(desk.view(), "K03").build().stream()
                .filter(fitted -> fitted.position().fact().kind() == PartKind.RODS)
                .findFirst()
                .orElseThrow();
        assertThat(rods.members()).containsExactly("rod 1", "rod 2", "rod 3", "rod 4");
    }

    @Test
    void the_fresh_head_of_K06_counts_from_its_skim_in_june() {
        HeadRow head = row(SeeEngine.all(desk.view()), "K06").head();
        assertThat(head).isNotNull();
        assertThat(head.head().fact().mark()).isEqualTo("HD-06");
        assertThat(head.skim()).isNotNull();
        Life since = head.sinceSkim();
        assertThat(since.complete()).isTrue();
        assertThat(since.total()).isLessThan(head.running().total());
    }

    @Test
    void a_curve_ends_at_the_figure_the_ledger_gives() {
        Engines engines = SeeEngine.all(desk.view());
        for (Curve curve : engines.sinceRebuild()) {
            assertThat(curve.last())
                    .as(curve.name())
                    .isEqualTo(row(engines, curve.name()).sinceRebuild());
        }
        assertThat(engines.sinceRebuild()).hasSize(5);
    }

    @Test
    void a_curve_never_falls_but_to_nothing() {
        Engines engines = SeeEngine.all(desk.view());
        for (Curve curve : engines.sinceSkim()) {
            long before = 0;
            for (Curve.Step step : curve.steps()) {
                long since = step.since().total();
                assertThat(since == 0 || since >= before).as(curve.name()).isTrue();
                before = since;
            }
        }
    }

    @Test
    void as_of_an_earlier_day_nothing_later_is_seen() {
        desk.lookAsOf(LocalDate.of(2026, 5, 12));
        EngineSheet k03 = sheet(desk.view(), "K03");
        assertThat(k03.row().open()).isNotNull();
        assertThat(k03.row().incomplete()).isTrue();
        assertThat(k03.line())
                .allSatisfy(
                        happening -> assertThat(happening.from().day()).isBeforeOrEqualTo(LocalDate.of(2026, 5, 12)));
        assertThat(SeeEngine.all(desk.view()).readOnly()).isTrue();
    }

    @Test
    void the_line_of_life_carries_works_of_parts_that_were_off_the_engine() {
        List<Happening> line = sheet(desk.view(), "K06").line();
        assertThat(line)
                .filteredOn(happening -> happening instanceof Happening.Worked worked
                        && "HD-06".equals(worked.part())
                        && worked.source().fact().kind() == witnessmark.domain.WorkKind.SKIM)
                .hasSize(1);
    }

    /** By the printed table of incidents: two of K05 by the summer, one of K03, each on the engine it names. */
    @Test
    void the_line_of_life_carries_the_incidents_of_the_engine_and_of_no_other() {
        assertThat(incidents("K05")).containsExactly("INC-01", "INC-03", "INC-05");
        assertThat(incidents("K03")).containsExactly("INC-02");
        assertThat(incidents("K06")).containsExactly("INC-04");
        assertThat(incidents("K21")).isEmpty();
        desk.lookAsOf(LocalDate.of(2026, 5, 12));
        assertThat(incidents("K05")).containsExactly("INC-01", "INC-03");
    }

    private static List<String> incidents(String engine) {
        return sheet(desk.view(), engine).line().stream()
                .filter(Happening.Broke.class::isInstance)
                .map(happening -> ((Happening.Broke) happening).source().fact().mark())
                .toList();
    }

    private static EngineSheet sheet(View view, String number) {
        return SeeEngine.of(
                        view,
                        view.facts()
                                .of(Engine.class)
                                .named(number)
                                .orElseThrow()
                                .id())
                .orElseThrow();
    }

    private static EngineRow row(Engines engines, String number) {
        return engines.engines().stream()
                .filter(row -> row.engine().fact().number().equals(number))
                .findFirst()
                .orElseThrow();
    }

    private static String hours(Life life) {
        return new RunningTime(life.total()).hours(2).toPlainString();
    }
}
