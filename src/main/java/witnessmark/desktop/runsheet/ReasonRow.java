package witnessmark.desktop.runsheet;

import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** Asks why a run is struck out; without a reason it is not. */
final class ReasonRow extends JPanel {
    private final transient Texts texts;
    private final FieldBox reason;
    private final transient Consumer<String> strike;

    /**
     * @param strike told the reason
     * @param leave run when the run is to stay in after all
     */
    ReasonRow(Texts texts, Consumer<String> strike, Runnable leave) {
        super(new FormLayout("insets 0, gap 8, fillx", "[0::,grow,fill][][]", "[bottom]"));
        setOpaque(false);
        this.texts = texts;
        this.strike = strike;
        this.reason = new FieldBox(Caption.of(texts.get("runsheet.written.reason")));
        JButton really =
                Styles.as(Styles.MAIN, Buttons.plain(Caption.of(texts.get("runsheet.written.strike_now")), this::done));
        add(reason, "growx");
        add(Buttons.plain(Caption.of(texts.get("runsheet.written.leave_in")), leave), "gapbottom 18");
        add(really, "gapbottom 18");
        reason.onEnter(this::done);
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_ENTER), "wm-strike", this::done);
        FormKeys.bindWithin(this, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave-in", leave);
    }

    void ask() {
        reason.load("");
        reason.note(texts.get("runsheet.written.reason.note"));
        reason.takeFocus();
    }

    FieldBox reason() {
        return reason;
    }

    private void done() {
        if (reason.text().isBlank()) {
            reason.stop(texts.get("runsheet.written.reason.needed"));
            reason.takeFocus();
        } else {
            strike.accept(reason.text().strip());
        }
    }
}
