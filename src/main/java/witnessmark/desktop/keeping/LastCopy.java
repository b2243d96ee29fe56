package witnessmark.desktop.keeping;

import java.awt.Dialog;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;
import witnessmark.wording.Texts;

/**
 * Says that the program waits for a last copy in the second place, when that takes longer than a glance, and lets people
 * leave at once. It goes on once, when the copy is made or nobody waits for it any more.
 */
final class LastCopy {
    /** Most copies take less, and nothing flickers. */
    private static final Duration GLANCE = Duration.ofMillis(600);

    private static final Duration COUNTING = Duration.ofSeconds(1);

    private final Texts texts;
    private final Tasks tasks;
    private final Path place;
    private final Runnable then;
    private final Instant begun = Instant.now();
    private @Nullable Later showing;
    private @Nullable Ticking counting;
    private @Nullable JDialog dialog;
    private boolean over;

    LastCopy(Texts texts, Tasks tasks, Path place, Runnable then) {
        this.texts = texts;
        this.tasks = tasks;
        this.place = place;
        this.then = then;
    }

    /** @param parent the window that is about to close */
    void begin(@Nullable Window parent) {
        Later later = tasks.later(GLANCE, () -> show(parent));
        showing = later;
        later.poke();
    }

    /** The copy is made, or cannot be; or somebody leaves. */
    void end() {
        if (over) {
            return;
        }
        over = true;
        if (showing != null) {
            showing.cancel();
        }
        if (counting != null) {
            counting.close();
        }
        if (dialog != null) {
            dialog.dispose();
        }
        then.run();
    }

    private void show(@Nullable Window parent) {
        JDialog made = new JDialog(parent, texts.get("keeping.last"), Dialog.ModalityType.APPLICATION_MODAL);
        JTextArea since = Lettering.paragraph(" ", Styles.NOTE);
        JButton leave = leave();
        made.setContentPane(content(since, leave));
        made.getRootPane().setDefaultButton(leave);
        made.setDefaultCloseOperation(JDialog.DO_NOTHING_ON_CLOSE);
        made.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent e) {
                end();
            }
        });
        made.pack();
        made.setLocationRelativeTo(parent);
        dialog = made;
        counting = tasks.every(
                COUNTING,
                () -> since.setText(texts.get(
                        "keeping.last.since",
                        Duration.between(begun, Instant.now()).toSeconds())));
        made.setVisible(true);
    }

    private JButton leave() {
        return Styles.as(Styles.MAIN, Buttons.plain(Caption.of(texts.get("keeping.last.leave")), this::end));
    }

    /** What the dialog shows; it can be looked at without a display. */
    JPanel content(JTextArea since, JButton leave) {
        JPanel content = new JPanel(new FormLayout("insets 18, gap 8, fillx", "[420::,grow,fill]"));
        content.add(Lettering.line(texts.get("keeping.last"), Styles.SECTION), "wrap");
        content.add(
                Lettering.paragraph(texts.get("keeping.last.text", place), Styles.FIELD_LABEL), "growx, wmin 0, wrap");
        content.add(Lettering.paragraph(texts.get("keeping.last.meaning"), Styles.FIELD_LABEL), "growx, wmin 0, wrap");
        content.add(since, "growx, wmin 0, wrap 14");
        content.add(leave, "growx 0, alignx right");
        return content;
    }
}
