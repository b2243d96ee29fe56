package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.Random;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;

/** A listener or a painter that breaks in the midst of typing: what is typed is kept, and the sheet goes on. */
@UiTest
class BreaksOnTheEventThreadTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");
    private static final long SEED = 20_260_708L;
    private static final int BREAKS = 200;

    private final MemoryLogbook logbook = new MemoryLogbook(SampleBook.facts());
    private final RunSheetStage stage = new RunSheetStage(new Desk(logbook, new SampleBook.Day(SATURDAY), "TE"));
    private final Random random = new Random(SEED);
    private boolean armed;
    private int broken;

    @AfterEach
    void close() {
        stage.tasks.awaitIdle();
        stage.close();
    }

    @Test
    void what_is_typed_while_listeners_and_painters_break_is_in_the_draft_and_can_be_saved() {
        stage.open();
        JRootPane root = stage.laidOut(1366, 768);
        stage.pick(RunField.CAR, "41, engine K03");
        stage.tasks.awaitIdle();
        JTextComponent remarks = new Ui(stage.pane).field("Anything to tell");
        remarks.getDocument().addDocumentListener(new BreakingListener());
        JComponent glass = new BreakingPainter();
        root.setGlassPane(glass);
        glass.setVisible(true);
        StringBuilder typed = new StringBuilder();
        while (broken < BREAKS) {
            armed = random.nextInt(3) == 0;
            char letter = (char) ('a' + random.nextInt(26));
            typed.append(letter);
            remarks.setCaretPosition(remarks.getDocument().getLength()); // the caret missed a key as the sheet did
            survive(() -> Ui.type(remarks, String.valueOf(letter)));
            if (typed.length() % 10 == 0) {
                survive(() -> paint(root));
            }
        }
        armed = false;
        typed.append('.');
        remarks.setCaretPosition(remarks.getDocument().getLength());
        Ui.type(remarks, ".");
        paint(root);
        stage.tasks.awaitIdle();

        assertThat(remarks.getText()).as("seed %d", SEED).isEqualTo(typed.toString());
        assertThat(stage.model().text(RunField.REMARKS)).isEqualTo(typed.toString());
        Drafts.Draft draft = logbook.drafts().find("run sheet", "new").orElseThrow();
        assertThat(draft.fields()).containsValue(typed.toString());
        stage.put(RunField.RUNNING, "21");
        assertThat(stage.model().text(RunField.RUNNING)).isEqualTo("21");
    }

    private void survive(Runnable event) {
        try {
            event.run();
        } catch (IllegalStateException e) {
            broken++; // as the event thread does: this event ends, the next one comes
        }
    }

    private static void paint(JRootPane root) {
        BufferedImage picture = new BufferedImage(1366, 768, BufferedImage.TYPE_INT_RGB);
        Graphics2D on = picture.createGraphics();
        try {
            root.paint(on);
        } finally {
            on.dispose();
        }
    }

    private void maybeBreak() {
        if (armed) {
            throw new IllegalStateException("broken on purpose");
        }
    }

    /** Told before the sheet's own listeners, which therefore miss that key. */
    private final class BreakingListener implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            maybeBreak();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            maybeBreak();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            maybeBreak();
        }
    }

    private final class BreakingPainter extends JComponent {
        private static final long serialVersionUID = 1;

        @Override
        protected void paintComponent(Graphics on) {
            maybeBreak();
        }
    }
}
