package witnessmark.desktop.engines;

import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.function.Consumer;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** Asks for the earlier day the logbook is to be looked at as of. */
final class AsOfStrip extends JPanel {
    private final FieldBox day;
    private final AsOfModel model;
    private final Consumer<LocalDate> look;
    private LocalDate today = LocalDate.EPOCH;

    /**
     * @param look told the earlier day
     * @param leave run when nothing is wanted after all
     */
    AsOfStrip(Texts texts, AsOfModel model, Consumer<LocalDate> look, Runnable leave) {
        super(new FormLayout("insets 0, gap 8", "[220::][][]", "[bottom]"));
        this.model = model;
        this.look = look;
        setOpaque(false);
        day = new FieldBox(Caption.of(texts.get("engines.asOf.day")));
        day.onChange(() -> {
            AsOfModel.Read read = model.read(day.text(), today);
            if (read.day() != null || day.line().level() != witnessmark.desktop.form.NoteLine.Level.NOTE) {
                say(read);
            }
        });
        add(day, "growx");
        add(
                Styles.as(Styles.MAIN, Buttons.plain(Caption.of(texts.get("engines.asOf.look")), this::take)),
                "gapbottom 18");
        add(Buttons.plain(Caption.of(texts.get("engines.asOf.cancel")), leave), "gapbottom 18");
        day.onEnter(this::take);
        bind(Keys.menu(KeyEvent.VK_ENTER), "wm-look", this::take);
        bind(Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", leave);
    }

    void ask(LocalDate theToday) {
        today = theToday;
        day.load("");
        day.note(model.hint());
        day.takeFocus();
    }

    FieldBox day() {
        return day;
    }

    void take() {
        AsOfModel.Read read = model.read(day.text(), today);
        say(read);
        if (read.day() == null) {
            day.takeFocus();
        } else {
            look.accept(read.day());
        }
    }

    private void say(AsOfModel.Read read) {
        if (read.day() == null) {
            day.stop(read.words());
        } else {
            day.echo(read.words());
        }
    }

    private void bind(javax.swing.KeyStroke key, String name, Runnable work) {
        FormKeys.bindWithin(this, key, name, work);
    }
}
