package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Job;
import witnessmark.domain.Run;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Texts;

/** What was told of a run becomes a job on its engine. */
@UiTest
class JobOfARunTest {
    @TempDir
    Path folder;

    @Test
    void the_remark_and_its_run_stand_on_the_sheet_and_saving_plans_the_job() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK))) {
            window.own.save(new AddCar(), "name", "7").orThrow();
            window.own
                    .save(
                            new AddEngine(),
                            "number",
                            "H1",
                            "design_name",
                            "Quarrow 2.0",
                            "cylinders",
                            "4",
                            "car",
                            "7",
                            "since",
                            "1 Mar",
                            "hours_how",
                            "part_new")
                    .orThrow();
            RunSheet sheet = new RunSheet(window.own.desk, window.own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
            var facts = window.own.desk.view().facts();
            Map<RunField, String> typed = new EnumMap<>(
                    sheet.fresh(facts.of(Car.class).named("7").orElseThrow().id()));
            typed.put(RunField.RUNNING, "20");
            typed.put(RunField.REMARKS, "oil light\nat turn 6");
            sheet.save(typed, "run").orThrow();
            var run = window.own
                    .desk
                    .view()
                    .facts()
                    .of(Run.class)
                    .where(each -> true)
                    .get(0);

            window.sheets.planJob(run.id().text());
            window.awaitIdle();
            window.lay(1366, 768);
            assertThat(window.ui().field("What is to be done").getText())
                    .startsWith("oil light at turn 6 (told in car 7, ")
                    .contains("2026");
            Ui.press(java.util.Objects.requireNonNull(window.shown()).component(), Keys.menu(KeyEvent.VK_ENTER));
            window.awaitIdle();
            Job job = window.own
                    .desk
                    .view()
                    .facts()
                    .of(Job.class)
                    .where(each -> true)
                    .get(0)
                    .fact();
            assertThat(job.what()).startsWith("oil light at turn 6");
            assertThat(job.engine())
                    .isEqualTo(facts.of(Engine.class).named("H1").orElseThrow().id());
        }
    }
}
