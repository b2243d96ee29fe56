package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunDoes;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunReading;
import witnessmark.logbook.run.RunSheet;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.logbook.sheets.OwnLogbook;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The run sheet of a logbook that has little in it yet: it says what is missing and where that is written down. */
class YoungLogbookTest {
    @TempDir
    Path folder;

    private final Texts texts = Texts.in(Locale.UK);
    private final RunWords words = new RunWords(texts, new Measures(texts, Units.METRIC));
    private OwnLogbook own;
    private RunSheet sheet;

    @BeforeEach
    void begin() {
        own = new OwnLogbook(folder);
        sheet = new RunSheet(own.desk, own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
    }

    @AfterEach
    void end() {
        own.close();
    }

    @Test
    void without_a_car_it_says_where_one_is_written_down_and_nothing_can_be_saved() {
        RunSheetModel model = new RunSheetModel(sheet);
        model.fill(sheet.fresh(null));
        assertThat(words.line(model.line(RunField.CAR))).isEqualTo("no car yet: Record, Engines and cars, Add a car");
        model.type(RunField.RUNNING, "27:30");
        assertThat(model.ask()).isFalse();
        assertThat(model.line(RunField.CAR).problem().kind()).isEqualTo(ProblemKind.NEEDED);
    }

    @Test
    void an_engine_never_rebuilt_here_is_not_said_to_have_run_since_a_rebuild() {
        own.save(new AddCar(), "name", "7").orThrow();
        own.save(new AddEngine(), "number", "H1", "design_name", "Four", "cylinders", "4", "hours", "about 9")
                .orThrow();
        RunSheetModel model = new RunSheetModel(sheet);
        model.fill(sheet.fresh(
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id()));
        assertThat(words.line(model.line(RunField.CAR)))
                .isEqualTo("H1 since 9 Mar, about 9.00 h run, no rebuild written down");
    }

    @Test
    void with_nothing_fitted_it_says_that_no_part_carries_the_running() {
        own.save(new AddCar(), "name", "7").orThrow();
        own.save(new AddEngine(), "number", "H1", "design_name", "Four", "cylinders", "4", "hours_how", "part_new")
                .orThrow();
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id()));
        typed.put(RunField.RUNNING, "27:30");
        RunReading reading = sheet.read(typed);
        RunDoes does = sheet.does(reading).orElseThrow();
        DoesModel model = new DoesModel(words);
        assertThat(model.rows(does)).isEmpty();
        assertThat(model.rest(does)).singleElement().asString().contains("H1").contains("Fit a part");
    }
}
