package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JMenuBar;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.beforewego.BeforeWeGoPlace;
import witnessmark.desktop.beforewego.BeginActions;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.incidents.IncidentsAsked;
import witnessmark.desktop.incidents.IncidentsPlace;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.WeighFinding;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * The big end of K05 from flakes in the filter to holding, walked through the window: what Before we go and the page of the incident
 * say on each day. Oracle: the table of what a watchful crew would have been shown, printed with the invented season.
 */
@UiTest
class FromFlakesToHoldingTest {
    private static Facts facts;

    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    private final Desk window = new Desk();
    private final List<Prefilled> written = new ArrayList<>();
    private View today = on("2026-04-14");
    private final BeforeWeGoPlace first;
    private final IncidentsPlace incidents;
    private final ShellPane pane;

    FromFlakesToHoldingTest() {
        Texts texts = Texts.in(Locale.UK);
        Measures measures = new Measures(texts, Units.METRIC);
        SheetTools tools = new SheetTools(texts, tasks, new MemorySettings());
        Runnable nothing = () -> {};
        first = new BeforeWeGoPlace(
                tools,
                measures,
                window,
                () -> today,
                new BeginActions(nothing, nothing, nothing, nothing, nothing, nothing, nothing),
                nothing);
        first.onWrite(written::add);
        incidents = new IncidentsPlace(
                tools,
                measures,
                window,
                () -> today,
                new IncidentsAsked(
                        nothing, written::add, record -> {}, incident -> window.go(PlaceId.INCIDENTS, incident)),
                new WeighFinding(SampleBook.on(SampleBook.OPENING), SampleBook.ids()),
                nothing);
        pane = new ShellPane(
                new ShellContext(
                        texts,
                        tasks,
                        new MemorySettings(),
                        Looks.light(),
                        window,
                        new AboutFacts("0.1.0", List.of()),
                        nothing),
                List.of(first, incidents),
                List.of(),
                List.of());
    }

    @BeforeAll
    static void tellTheSeason() {
        facts = SampleViews.end().facts();
    }

    @AfterEach
    void close() {
        tasks.awaitIdle();
        tasks.close();
    }

    private static View on(String day) {
        return SampleViews.on(facts, LocalDate.parse(day));
    }

    /** What stands on Before we go on a day, every line of it. */
    private String beforeWeGo(String day) {
        today = on(day);
        window.changed();
        window.go(PlaceId.BEFORE_WE_GO);
        tasks.awaitIdle();
        Stage.window(pane, (JMenuBar) null, 1366, 2600);
        return GoldenText.of(first.component());
    }

    /** What stands on the page of an incident on a day. */
    private String page(String day, String incident) {
        today = on(day);
        window.changed();
        window.go(
                PlaceId.INCIDENTS,
                facts.of(Incident.class).named(incident).orElseThrow().id().text());
        tasks.awaitIdle();
        Stage.window(pane, (JMenuBar) null, 1366, 2600);
        return GoldenText.of(incidents.component());
    }

    @Test
    void on_14_april_flakes_open_the_case_and_the_cooler_of_car_57_is_told_as_neither_renewed_nor_cleaned() {
        assertThat(beforeWeGo("2026-03-24")).doesNotContain("INC-03").doesNotContain("OC-57");

        assertThat(beforeWeGo("2026-04-14"))
                .contains("INC-03 Copper flakes in the filter")
                .contains("Oil cooler OC-57")
                .contains("flakes in the filter of K05 on 14 Apr, in car 57 since")
                .contains("Neither renewed nor cleaned since");
        assertThat(page("2026-04-14", "INC-03")).contains("Copper flakes").contains("open today");
    }

    @Test
    void after_it_was_signed_clear_and_closed_the_cooler_is_told_still_until_it_is_renewed() {
        assertThat(beforeWeGo("2026-05-20")).contains("Oil cooler OC-57").doesNotContain("INC-03");
        assertThat(beforeWeGo("2026-06-25")).doesNotContain("OC-57");
    }

    @Test
    void on_26_may_specks_again_ask_to_open_inc_03_before_round_4_and_one_press_leads_to_the_sheet() {
        String said = beforeWeGo("2026-05-26");

        assertThat(said)
                .contains("INC-03 Copper flakes in the filter")
                .contains(
                        "Closed Sun 10 May 2026, yet Tue 26 May 2026, filter clean: not as asked for, few bright specks")
                .contains("Open it again before going?");
        new Ui(first.component())
                .button(
                        "INC-03 Copper flakes in the filter, Closed Sun 10 May 2026, yet Tue 26 May 2026, filter clean: not"
                                + " as asked for, few bright specks, taken for what was left from April: look at it again, Open it again"
                                + " before going?")
                .doClick();
        assertThat(written)
                .singleElement()
                .satisfies(sheet -> assertThat(sheet.sheet()).isEqualTo("reopen_incident"));
        assertThat(page("2026-05-26", "INC-03"))
                .contains("look at it again")
                .doesNotContain("INC-05")
                .doesNotContain("came back")
                .contains("Came in together, so nobody can tell which of them it was");
    }

    @Test
    void on_14_june_it_came_back_as_inc_05_whether_the_first_case_was_closed_or_not() {
        assertThat(beforeWeGo("2026-06-15"))
                .contains("INC-05 Big end of 3 gone again")
                .contains("again after INC-03")
                .doesNotContain("Open it again");
        assertThat(page("2026-06-15", "INC-03"))
                .contains("Came back as INC-05 after 6.39 h")
                .contains("INC-05");
        assertThat(page("2026-06-15", "INC-05")).contains("Looks like").contains("INC-03");
    }

    @Test
    void on_7_july_the_cause_is_looked_for_and_nothing_is_done_yet() {
        assertThat(page("2026-07-07", "INC-05"))
                .contains("housing of rod 3 lost its grip")
                .contains("ruled out")
                .contains("bore gauge in all four housings")
                .contains("No lesson is written");
    }

    @Test
    void on_24_october_it_is_holding_at_5_72_of_12_77_hours_and_the_page_says_what_it_taught() {
        assertThat(beforeWeGo("2026-10-24"))
                .contains("INC-05 Big end of 3 gone again")
                .contains("holding, 5.72 h of 12.77 h")
                .contains("3 things done at once, not to be told apart");
        assertThat(page("2026-10-24", "INC-05"))
                .contains("Holding")
                .contains("5.72 h since")
                .contains("12.77 h, 7.05 h to go")
                .contains("3 cannot be told from 1, 2 and 4")
                .contains("Came in together, so nobody can tell which of them it was")
                .contains("What it taught")
                .contains("Big-end housing ovality at most 0.012 mm");
    }
}
