package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.SystemFileChooser;
import java.awt.Dialog;
import java.awt.Window;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;
import witnessmark.wording.Texts;

/** Says that something broke, what that means for the logbook, and what to do. */
public final class CrashDialog {
    private static final Duration COUNTING = Duration.ofMillis(500);

    private final Texts texts;
    private final Supplier<Tasks> tasks;
    private final Supplier<String> lastSaved;
    private final Callable<String> log;
    private final Runnable quit;

    /**
     * @param lastSaved the time of the last thing saved, in words; empty for nothing yet
     * @param log the end of the program's log; called off the event thread
     */
    public CrashDialog(
            Texts texts, Supplier<Tasks> tasks, Supplier<String> lastSaved, Callable<String> log, Runnable quit) {
        this.texts = texts;
        this.tasks = tasks;
        this.lastSaved = lastSaved;
        this.log = log;
        this.quit = quit;
    }

    void show(@Nullable Window parent, String where, Throwable failure, IntSupplier repeats) {
        String title = texts.get("shell.crash.title");
        JDialog dialog = new JDialog(parent, title, Dialog.ModalityType.DOCUMENT_MODAL);
        JTextArea said = Lettering.paragraph("", Styles.NOTE);
        JPanel content = content(dialog, CrashReport.text(where, failure), said);
        dialog.setContentPane(content);
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        dialog.pack();
        dialog.setLocationRelativeTo(parent);
        Ticking ticking = tasks.get().every(COUNTING, () -> tellRepeats(said, repeats.getAsInt()));
        try {
            dialog.setVisible(true);
        } finally {
            ticking.close();
        }
    }

    /** What the dialog shows; it can be looked at without a display. */
    JPanel content(@Nullable JDialog dialog, String report, JTextArea said) {
        JPanel content = new JPanel(new FormLayout("insets 18, gap 8, fillx", "[420::,grow,fill]"));
        content.add(Lettering.line(texts.get("shell.crash.title"), Styles.SECTION), "wrap");
        String saved = lastSaved.get();
        String sentence = saved.isEmpty() ? texts.get("shell.crash.text") : texts.get("shell.crash.textSaved", saved);
        content.add(Lettering.paragraph(sentence, Styles.FIELD_LABEL), "growx, wmin 0, wrap");
        content.add(said, "growx, wmin 0, wrap 14");
        Runnable close = () -> {
            if (dialog != null) {
                dialog.dispose();
            }
        };
        JButton on = Styles.as(Styles.MAIN, Buttons.plain(Caption.of(texts.get("shell.crash.goOn")), close));
        JButton save =
                Buttons.plain(Caption.of(texts.get("shell.crash.saveReport")), () -> save(content, said, report));
        JButton leave = Buttons.plain(Caption.of(texts.get("shell.crash.quit")), quit);
        JPanel buttons = new JPanel(new FormLayout("insets 0, gap 8", "[grow][][][]"));
        buttons.add(leave, "skip");
        buttons.add(save);
        buttons.add(on);
        content.add(buttons, "growx");
        if (dialog != null) {
            dialog.getRootPane().setDefaultButton(on);
            dialog.getRootPane()
                    .registerKeyboardAction(
                            e -> close.run(),
                            witnessmark.desktop.form.Keys.plain(java.awt.event.KeyEvent.VK_ESCAPE),
                            JComponent.WHEN_IN_FOCUSED_WINDOW);
        }
        return content;
    }

    /** Says how often it happened again while the notice stood open. */
    void tellRepeats(JTextArea said, int count) {
        if (count > 0) {
            said.setText(texts.get("shell.crash.repeats", count));
        }
    }

    private void save(JPanel content, JTextArea said, String report) {
        SystemFileChooser chooser = new SystemFileChooser();
        chooser.setSelectedFile(new File(texts.get("shell.crash.reportFile")));
        if (chooser.showSaveDialog(content) != SystemFileChooser.APPROVE_OPTION) {
            return;
        }
        Path file = chooser.getSelectedFile().toPath();
        tasks.get()
                .run(
                        texts.get("shell.crash.saving"),
                        () -> Files.writeString(file, report + "\n" + log.call()),
                        written -> said.setText(texts.get("shell.crash.saved", written.toString())),
                        failure -> said.setText(texts.get("shell.crash.notSaved", file.toString())));
    }
}
