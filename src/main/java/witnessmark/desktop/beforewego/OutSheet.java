package witnessmark.desktop.beforewego;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.OpenRow;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** A sheet at the side of the page: short reports under a heading, each leading to its record. */
final class OutSheet {
    private final Sheet sheet = new Sheet("fillx", "[0::,grow,fill]", "");
    private final Texts texts;
    private final @Nullable String whenNone;
    private final Consumer<OutLine> open;
    private @Nullable Consumer<OutLine> job;
    private final JPanel reports = new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap", "[0::,grow,fill]"));

    /**
     * @param heading key of the heading
     * @param whenNone key of what is said when there is nothing to report; null when the sheet is not there then
     * @param foot a button under the reports, or null
     */
    OutSheet(Texts texts, String heading, @Nullable String whenNone, Consumer<OutLine> open, @Nullable JButton foot) {
        this.texts = texts;
        this.whenNone = whenNone;
        this.open = open;
        reports.setOpaque(false);
        sheet.add(Lettering.line(texts.get(heading), Styles.SECTION), "wrap");
        sheet.add(reports, OpenRow.LIST + ", wrap");
        sheet.setVisible(whenNone != null);
        if (foot != null) {
            sheet.add(foot, "growx, gaptop 4, wrap");
        }
    }

    Sheet component() {
        return sheet;
    }

    /** The first row; null when there is none. */
    @Nullable
    JComponent first() {
        return reports.getComponentCount() > 0 && reports.getComponent(0) instanceof OpenRow row ? row : null;
    }

    /** Lets J on a row plan a job of what was told there. */
    void onJob(Consumer<OutLine> job) {
        this.job = job;
    }

    void show(List<OutLine> lines) {
        reports.removeAll();
        for (OutLine line : lines) {
            if (reports.getComponentCount() > 0) {
                reports.add(new Hairline(), OpenRow.BETWEEN);
            }
            reports.add(report(line), "growx");
        }
        sheet.setVisible(whenNone != null || !lines.isEmpty());
        if (lines.isEmpty() && whenNone != null) {
            reports.add(Lettering.paragraph(texts.get(whenNone), Styles.QUIET_INK), "growx, gap 8 8 4 8");
        }
        sheet.revalidate();
        sheet.repaint();
    }

    private OpenRow report(OutLine line) {
        boolean more = !line.second().isEmpty();
        String first = more ? texts.get("beforewego.comma", line.first(), line.second()) : line.first();
        String about = texts.get("beforewego.comma", line.title(), first);
        OpenRow row = new OpenRow("[0::,grow,fill]", about, () -> open.accept(line));
        row.say(line.title(), Styles.STRONG, "wrap 2");
        row.say(line.first(), Styles.NOTE, more ? "wrap 2" : "");
        if (more) {
            row.say(line.second(), Styles.NOTE, "");
        }
        row.setToolTipText(about);
        Consumer<OutLine> planned = job;
        if (planned != null) {
            row.bind(KeyEvent.VK_J, "job", () -> planned.accept(line));
            String tip = texts.get("beforewego.job.key", about);
            row.setToolTipText(tip);
            row.getAccessibleContext().setAccessibleDescription(tip);
        }
        return row;
    }
}
