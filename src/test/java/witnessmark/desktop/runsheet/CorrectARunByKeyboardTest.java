package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.Counter;

/** A written run is found, corrected and given back in a real window with nothing but keys. */
@UiTest(display = true)
class CorrectARunByKeyboardTest {
    private static final int MENU = Typist.MENU;

    private final RunSheetStage stage = new RunSheetStage(SampleBook.on(SampleBook.OPENING));
    private final Typist keys = new Typist(stage);
    private final Id<Run> race2 = stage.run("K03", "2026-07-05", "Race 2");

    @AfterEach
    void close() {
        keys.close();
    }

    private Run run() {
        return stage.book.view().facts().of(Run.class).get(race2);
    }

    private long life(Id<Engine> engine) {
        return stage.book.view().ledger().engineLife(engine, Counter.RUNNING).total();
    }

    private void find() {
        keys.press(KeyEvent.VK_K, MENU);
        keys.type("race 2 pellow 41");
        keys.press(KeyEvent.VK_ENTER, 0);
    }

    @Test
    void it_is_found_corrected_and_taken_back() {
        Run before = run();
        long life = life(before.engine());

        find();
        assertThat(stage.pane.current()).contains(Visit.to(PlaceId.RUN_SHEET, race2.text()));
        assertThat(stage.place.writtenPanel().focused()).contains(RunField.RUNNING);
        keys.type("30");
        keys.press(KeyEvent.VK_ENTER, MENU);

        assertThat(life(before.engine())).isEqualTo(life - before.running().millis() + 1_800_000);
        assertThat(run().laps()).isEqualTo(before.laps());

        keys.press(KeyEvent.VK_Z, MENU);
        assertThat(run()).isEqualTo(before);
        assertThat(life(before.engine())).isEqualTo(life);
        assertThat(((JTextComponent) Typist.owner()).getText()).isEqualTo("27:42");

        keys.press(KeyEvent.VK_Y, MENU);
        assertThat(run().running().millis()).isEqualTo(1_800_000);
    }

    @Test
    void typing_is_taken_back_before_anything_written() {
        find();
        keys.type("30");
        keys.press(KeyEvent.VK_Z, MENU);
        keys.press(KeyEvent.VK_Z, MENU);

        assertThat(((JTextComponent) Typist.owner()).getText()).isEqualTo("27:42");
        assertThat(stage.place.writtenModel().isDirty()).isFalse();
    }

    @Test
    void ctrl_r_goes_to_the_fresh_sheet_and_back_comes_to_the_run_as_it_was_left() {
        find();
        keys.type("30");
        keys.press(KeyEvent.VK_R, MENU);
        assertThat(stage.place.isWritten()).isFalse();

        keys.press(KeyEvent.VK_LEFT, InputEvent.ALT_DOWN_MASK);
        assertThat(stage.place.isWritten()).isTrue();
        assertThat(stage.place.writtenModel().text(RunField.RUNNING)).isEqualTo("30");

        keys.press(KeyEvent.VK_RIGHT, InputEvent.ALT_DOWN_MASK);
        assertThat(stage.place.isWritten()).isFalse();
    }

    @Test
    void esc_leaves_the_reason_first_and_then_the_run() {
        find();
        stage.place.writtenPanel().askReason();
        keys.settle();
        keys.press(KeyEvent.VK_ESCAPE, 0);
        assertThat(stage.place.writtenPanel().asking().isVisible()).isFalse();

        keys.press(KeyEvent.VK_ESCAPE, 0);
        assertThat(stage.pane.current()).contains(Visit.to(PlaceId.BEFORE_WE_GO));
    }

    @Test
    void enter_after_the_reason_strikes_the_run_out_and_without_one_it_does_not() {
        find();
        stage.place.writtenPanel().askReason();
        keys.settle();
        keys.press(KeyEvent.VK_ENTER, 0);
        assertThat(stage.place.writtenPanel().asking().isVisible()).isTrue();
        assertThat(stage.place.writtenActions().isStruckOut()).isFalse();

        keys.type("wrong car");
        keys.press(KeyEvent.VK_ENTER, 0);
        assertThat(stage.place.writtenActions().isStruckOut()).isTrue();
        assertThat(stage.place.writtenActions().entry().struckBecause()).isEqualTo("wrong car");
    }

    @Test
    void its_history_is_read_and_left_by_keys() {
        find();
        keys.type("30");
        keys.press(KeyEvent.VK_ENTER, MENU);
        stage.place.writtenPanel().historyButton().requestFocusInWindow();
        keys.settle();
        keys.press(KeyEvent.VK_SPACE, 0);
        assertThat(Typist.owner())
                .isSameAs(stage.place.writtenPanel().history().table().table());
        assertThat(stage.place.writtenPanel().history().table().shown().get(0).what())
                .contains("Running time: 27 min 42 s → 30 min");

        keys.press(KeyEvent.VK_ESCAPE, 0);
        assertThat(Typist.owner()).isSameAs(stage.place.writtenPanel().historyButton());
        assertThat(stage.place.isWritten()).isTrue();
    }
}
