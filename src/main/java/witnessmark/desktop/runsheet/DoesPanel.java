package witnessmark.desktop.runsheet;

import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.LifeStrip;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.logbook.run.RunDoes;
import witnessmark.wording.Texts;

/** The right sheet: what this run does. Advice, never a gate. */
final class DoesPanel extends JPanel {
    /** As wide in every row, so that the seams stand in one column. */
    private static final int STRIP = 100;

    private final transient Texts texts;
    private final transient DoesModel does;
    private String waiting;
    private final transient StateWords states;
    private final JTextArea engine = Lettering.paragraph("", Styles.NOTE);
    private final JPanel rows = new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap", "[0::,grow,fill]"));

    /** @param waiting what is said while it cannot be told what the run does */
    DoesPanel(RunWords words, String waiting) {
        super(new java.awt.BorderLayout());
        setOpaque(false);
        this.texts = words.texts();
        this.waiting = waiting;
        this.does = new DoesModel(words);
        this.states = new StateWords(texts);
        rows.setOpaque(false);
        Sheet sheet = new Sheet("fillx, wrap", "[0::,grow,fill]", "[]4[]6[]");
        sheet.add(Lettering.line(texts.get("runsheet.does"), Styles.SECTION));
        sheet.add(engine, "growx, wmin 0");
        sheet.add(rows, "growx, wmin 0");
        add(sheet);
        show(Optional.empty());
    }

    /** Says something else from now on while it cannot be told. */
    void waiting(String sentence) {
        waiting = sentence;
    }

    void show(Optional<RunDoes> answer) {
        rows.removeAll();
        if (answer.isEmpty()) {
            say(waiting);
        } else {
            RunDoes now = answer.get();
            say(does.engine(now));
            List<DoesModel.Row> shown = does.rows(now);
            shown.forEach(this::row);
            rows.add(new Hairline(), "growx");
            does.rest(now)
                    .forEach(words -> rows.add(Lettering.paragraph(words, Styles.NOTE), "growx, wmin 0, gaptop 8"));
        }
        rows.revalidate();
        rows.repaint();
    }

    private void say(String sentence) {
        engine.setText(sentence);
        engine.getAccessibleContext().setAccessibleName(sentence);
    }

    private void row(DoesModel.Row row) {
        SeamState state = row.state();
        JPanel line = new JPanel(
                new FormLayout("insets 9 0 9 0, gap 0, fillx", "[24!]10[" + STRIP + "!]10[0::,grow,fill]", "[]5[20!]"));
        line.setOpaque(false);
        line.add(
                states.mark(state, texts.get("runsheet.does.mark", row.title(), row.stands())),
                "cell 0 0 1 2, aligny top, gaptop 1");
        line.add(Lettering.cutLine(row.title(), Styles.STRONG), "cell 1 0 2 1, wmin 0, growx, pushx");
        line.add(Lettering.figure(row.stands(), state.style()), "cell 1 0, gapleft 8");
        Life strip = row.strip();
        if (strip == null) {
            line.add(Lettering.cutLine(row.beside(), Styles.NOTE), "cell 1 1 2 1, wmin 0");
        } else {
            line.add(new LifeStrip(strip, state, row.about()), "cell 1 1, growx");
            line.add(trailing(Lettering.cutLine(row.beside(), Styles.NOTE)), "cell 2 1, wmin 0");
        }
        rows.add(new Hairline(), "growx");
        rows.add(line, "growx, wmin 0");
    }

    private static JLabel trailing(JLabel label) {
        label.setHorizontalAlignment(SwingConstants.TRAILING);
        return label;
    }
}
