package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.StartKnown;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.Counter;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.RunningTime;

/** A run is logged in a real window with nothing but keys, from another place, on the evening the sample opens. */
@UiTest(display = true)
class LogARunByKeyboardTest {
    private static final int MENU = Typist.MENU;

    private final RunSheetStage stage = new RunSheetStage(SampleBook.on(SampleBook.OPENING));
    private final Typist keys = new Typist(stage);

    @AfterEach
    void close() {
        keys.close();
    }

    @Test
    void logging_a_run_takes_forty_key_presses_at_most_and_no_mouse() {
        int runs = runs().size();

        keys.press(KeyEvent.VK_R, MENU);
        keys.type("28:20");
        keys.press(KeyEvent.VK_TAB, 0);
        keys.type("15");
        keys.press(KeyEvent.VK_TAB, 0);
        keys.type("8205");
        keys.press(KeyEvent.VK_ENTER, MENU);

        assertThat(keys.presses()).isLessThanOrEqualTo(40);
        assertThat(runs()).hasSize(runs + 1);
        Run saved = runs().get(runs).fact();
        assertThat(saved.running()).isEqualTo(new RunningTime(1_700_000));
        assertThat(saved.laps()).isEqualTo(15);
        assertThat(saved.highest()).isEqualTo(new EngineSpeed(8205));
        assertThat(saved.overRevs()).as("not read is not none").isNull();
        assertThat(saved.waterHighest()).isNull();
        assertThat(saved.heatCycles()).isEqualTo(1);
        assertThat(saved.kind()).isEqualTo(RunKind.TEST);
        assertThat(saved.startKnown()).isEqualTo(StartKnown.ESTIMATE);
        assertThat(saved.start().day()).isEqualTo(SampleBook.OPENING);
        assertThat(saved.asTyped()).contains("running=28:20", "laps=15", "highest=8205");
        assertThat(saved.queried()).isEmpty();
    }

    @Test
    void the_engine_gains_what_it_ran_and_undo_gives_it_back() {
        keys.press(KeyEvent.VK_R, MENU);
        Id<Engine> engine = engineOnTheSheet();
        long before = life(engine);

        keys.type("28:20");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(life(engine)).isEqualTo(before + 1_700_000);
        assertThat(stage.model().isDirty()).isFalse();

        keys.press(KeyEvent.VK_Z, MENU);
        assertThat(life(engine)).isEqualTo(before);

        keys.press(KeyEvent.VK_Y, MENU);
        assertThat(life(engine)).isEqualTo(before + 1_700_000);
    }

    @Test
    void in_a_field_undo_takes_back_typing_first() {
        keys.press(KeyEvent.VK_R, MENU);
        keys.type("28:20");
        keys.press(KeyEvent.VK_ENTER, MENU);
        int runs = runs().size();
        keys.type("31");

        keys.press(KeyEvent.VK_Z, MENU);

        assertThat(((JTextComponent) Typist.owner()).getText()).isEmpty();
        assertThat(runs()).hasSize(runs);
    }

    @Test
    void typing_starts_in_running_time_and_goes_on_as_a_dash_is_read() {
        keys.press(KeyEvent.VK_R, MENU);
        for (RunField field : List.of(
                RunField.RUNNING,
                RunField.LAPS,
                RunField.HIGHEST,
                RunField.OVER_REVS,
                RunField.WATER,
                RunField.OIL,
                RunField.OIL_PRESSURE,
                RunField.OIL_ADDED,
                RunField.WARM_UP)) {
            assertThat(stage.place.panel().focused()).contains(field);
            keys.press(KeyEvent.VK_ENTER, 0);
        }
    }

    @Test
    void shift_tab_reaches_what_was_filled_in() {
        keys.press(KeyEvent.VK_R, MENU);
        for (RunField field : List.of(
                RunField.OUT_AT, RunField.DATE, RunField.DRIVER, RunField.PLANNED, RunField.EVENT, RunField.CAR)) {
            keys.press(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK);
            assertThat(stage.place.panel().focused()).contains(field);
        }
    }

    @Test
    void a_stopped_save_leads_to_the_first_field_with_its_text_selected() {
        keys.press(KeyEvent.VK_R, MENU);
        keys.type("1h7x");
        keys.press(KeyEvent.VK_TAB, 0);
        keys.type("12abc");
        int runs = runs().size();

        keys.press(KeyEvent.VK_ENTER, MENU);

        assertThat(runs()).hasSize(runs);
        assertThat(stage.place.panel().focused()).contains(RunField.RUNNING);
        assertThat(((JTextComponent) Typist.owner()).getSelectedText()).isEqualTo("1h7x");
        keys.type("28:20");
        keys.press(KeyEvent.VK_TAB, 0);
        keys.type("12");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(runs()).hasSize(runs + 1);
    }

    @Test
    void a_run_refused_for_another_at_that_time_leads_to_its_time_out() {
        keys.press(KeyEvent.VK_R, MENU);
        stage.put(RunField.DATE, "5 Jul");
        stage.put(RunField.OUT_AT, "15:10"); // Race 2 was out from 15:00
        keys.type("25");
        int runs = runs().size();

        keys.press(KeyEvent.VK_ENTER, MENU);

        assertThat(runs()).hasSize(runs);
        assertThat(stage.place.panel().focused()).contains(RunField.OUT_AT);
    }

    @Test
    void alt_enter_takes_what_was_meant() {
        keys.press(KeyEvent.VK_R, MENU);
        keys.type("1:20");
        keys.press(KeyEvent.VK_TAB, 0);
        keys.press(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK);
        keys.press(KeyEvent.VK_ENTER, InputEvent.ALT_DOWN_MASK);

        assertThat(((JTextComponent) Typist.owner()).getText()).isEqualTo("80");
    }

    @Test
    void save_and_next_car_goes_to_the_other_car() {
        keys.press(KeyEvent.VK_R, MENU);
        String first = stage.model().text(RunField.CAR);
        keys.type("28:20");

        keys.press(KeyEvent.VK_ENTER, MENU | InputEvent.SHIFT_DOWN_MASK);

        assertThat(stage.model().text(RunField.CAR)).isNotEqualTo(first).startsWith("car:");
        assertThat(stage.place.panel().focused()).contains(RunField.RUNNING);
    }

    @Test
    void esc_leaves_and_what_was_typed_is_there_when_somebody_comes_back() {
        keys.press(KeyEvent.VK_R, MENU);
        keys.type("1h7x");
        keys.press(KeyEvent.VK_ESCAPE, 0);
        assertThat(stage.pane.current()).contains(Visit.to(PlaceId.BEFORE_WE_GO));

        keys.press(KeyEvent.VK_2, MENU);

        assertThat(stage.model().text(RunField.RUNNING)).isEqualTo("1h7x");
    }

    @Test
    void arrow_keys_step_the_date_and_the_time_out() {
        keys.press(KeyEvent.VK_R, MENU);
        keys.press(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK);
        keys.press(KeyEvent.VK_UP, 0);
        assertThat(stage.model().text(RunField.OUT_AT)).isEqualTo("09:45");
        keys.press(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK);
        keys.press(KeyEvent.VK_DOWN, 0);
        assertThat(stage.model().text(RunField.DATE)).isEqualTo("Tue 7 Jul 2026");
    }

    private Id<Engine> engineOnTheSheet() {
        keys.type("1h");
        Id<Engine> engine = stage.model().reading().run().fact().engine();
        ((JTextComponent) Typist.owner()).selectAll();
        return engine;
    }

    private long life(Id<Engine> engine) {
        return stage.book.view().ledger().engineLife(engine, Counter.RUNNING).total();
    }

    private List<Entry<Run>> runs() {
        return stage.book.view().facts().of(Run.class).where(run -> true);
    }
}
