package witnessmark.desktop.start;

import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.wording.Texts;

/** What was read or found, its problems with their places, and what can be done about it. Nothing is done before. */
final class ReportPage implements Aside {
    private final String title;
    private final String help;
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));
    private final SheetTable<ProblemLine> table;
    private final JTextArea whole = Lettering.paragraph(" ", Styles.FIELD_LABEL);
    private final List<JButton> ways;

    /**
     * What it says.
     *
     * @param title over the sheet and beside the page's title
     * @param sentences under the title, each a paragraph
     * @param lines the problems, none when all is well
     */
    record Content(String title, String help, List<String> sentences, List<ProblemLine> lines) {
        Content(String title, List<String> sentences, List<ProblemLine> lines) {
            this(title, "help.report", sentences, lines);
        }
    }

    /**
     * @param ways what can be done, the main one last
     * @param close what Esc does
     */
    ReportPage(SheetTools tools, Content content, List<JButton> ways, Runnable close) {
        Texts texts = tools.texts();
        this.title = content.title();
        this.help = content.help();
        this.ways = List.copyOf(ways);
        this.table = new SheetTable<>(
                texts.get("beforewego.report.problems"),
                List.of(
                        Column.<ProblemLine, Integer>text(
                                        texts.get("beforewego.report.place"), ProblemLine::place, ProblemLine::number)
                                .wide(240),
                        Column.<ProblemLine>text(texts.get("beforewego.report.happened"), ProblemLine::happened)
                                .strong()
                                .wide(320)
                                .grow(),
                        Column.<ProblemLine>text(texts.get("beforewego.report.remedy"), ProblemLine::remedy)
                                .wide(260)
                                .grow()),
                ProblemLine::number);
        table.with(tools, "start.report");
        table.show(content.lines());
        table.onSelect(this::showWhole);
        page.setOpaque(false);
        page.add(sheet(content), "grow");
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "close", close);
        if (!content.lines().isEmpty()) {
            table.table().setRowSelectionInterval(0, 0);
        }
    }

    @Override
    public String heading() {
        return title;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public List<String> help() {
        return List.of(help);
    }

    @Override
    public JComponent firstFocus() {
        return ways.get(ways.size() - 1);
    }

    SheetTable<ProblemLine> table() {
        return table;
    }

    private Sheet sheet(Content content) {
        boolean listed = !content.lines().isEmpty();
        Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "");
        sheet.add(Lettering.cutLine(content.title(), Styles.SECTION), "wmin 0, wrap");
        for (String sentence : content.sentences()) {
            sheet.add(Lettering.paragraph(sentence, Styles.FIELD_LABEL), "growx, wmin 0, wrap 4");
        }
        sheet.add(table, "grow, pushy, hmin 160, wrap");
        sheet.add(whole, "growx, wmin 0, hmin 54, wrap");
        table.setVisible(listed);
        whole.setVisible(listed);
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8, alignx right"));
        foot.setOpaque(false);
        ways.forEach(foot::add);
        sheet.add(foot, listed ? "growx" : "growx, pushy, aligny top");
        return sheet;
    }

    private void showWhole(@Nullable ProblemLine line) {
        String words = line == null ? " " : line.whole();
        whole.setText(words);
        whole.getAccessibleContext().setAccessibleName(words);
    }
}
