package witnessmark.desktop.shell;

import java.awt.Dialog;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
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
 * Says what the program waits for before it closes, when that takes longer than a glance, and lets people leave at once. It
 * goes on once, when the work is done or nobody waits for it any more.
 */
public final class ClosingWait {
    /** Most work takes less, and nothing flickers. */
    private static final Duration GLANCE = Duration.ofMillis(600);

    private static final Duration COUNTING = Duration.ofSeconds(1);

    private final Texts texts;
    private final Tasks tasks;
    private final Words words;
    private final Runnable then;
    private final Instant begun = Instant.now();
    private @Nullable Later showing;
    private @Nullable Ticking counting;
    private @Nullable JDialog dialog;
    private boolean over;

    /**
     * What is waited for.
     *
     * @param title what is being done
     * @param text what that is, and when the program ends
     * @param meaning what leaving at once means for the data
     */
    public record Words(String title, String text, String meaning) {}

    /** @param then told once, when it is over or somebody leaves */
    public ClosingWait(Texts texts, Tasks tasks, Words words, Runnable then) {
        this.texts = texts;
        this.tasks = tasks;
        this.words = words;
        this.then = then;
    }

    /** @param parent the window that is about to close */
    public void begin(@Nullable Window parent) {
        Later later = tasks.later(GLANCE, () -> show(parent));
        showing = later;
        later.poke();
    }

    /** The work is done, or cannot be; or somebody leaves. */
    public void end() {
        if (!over) {
            close();
            then.run();
        }
    }

    /** The program stays: there is something to be read first. */
    public void stay() {
        if (!over) {
            close();
        }
    }

    private void close() {
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
    }

    private void show(@Nullable Window parent) {
        JDialog made = new JDialog(parent, words.title(), Dialog.ModalityType.APPLICATION_MODAL);
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
                        "shell.closing.since",
                        Duration.between(begun, Instant.now()).toSeconds())));
        made.setVisible(true);
    }

    private JButton leave() {
        return Styles.as(Styles.MAIN, Buttons.plain(Caption.of(texts.get("shell.closing.leave")), this::end));
    }

    /** What the dialog shows; it can be looked at without a display. */
    JPanel content(JTextArea since, JButton leave) {
        JPanel content = new JPanel(new FormLayout("insets 18, gap 8, fillx", "[420::,grow,fill]"));
        content.add(Lettering.line(words.title(), Styles.SECTION), "wrap");
        content.add(Lettering.paragraph(words.text(), Styles.FIELD_LABEL), "growx, wmin 0, wrap");
        content.add(Lettering.paragraph(words.meaning(), Styles.FIELD_LABEL), "growx, wmin 0, wrap");
        content.add(since, "growx, wmin 0, wrap 14");
        content.add(leave, "growx 0, alignx right");
        return content;
    }
}
