package witnessmark.desktop.beforewego;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.LifeStrip;
import witnessmark.desktop.form.OpenRow;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/**
 * What must be done before the team goes, what comes due while it is there, what stands nearest; the quiet line under
 * them, on asking every mark there is, and where it runs out run by run.
 */
final class MarksSheet {
    private static final String ROW = "[24!]12[0:0:,grow 38,fill]16[0:0:,grow 40,fill]20[0:0:,grow 36,fill]";

    private final Sheet sheet = new Sheet("fillx, aligny top, hidemode 3", "[0::,grow,fill]", "");
    private final Texts texts;
    private final StateWords states;
    private final Consumer<MarkLine> open;
    private final JPanel rows = new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap", "[0::,grow,fill]"));
    private final JTextArea quiet = Lettering.paragraph("", Styles.FIELD_LABEL);
    private final JTextArea elsewhere = Lettering.paragraph("", Styles.NOTE);
    private final JButton toggle;
    private final AllMarks all;
    private final RunsOutSheet runsOut;
    private final JPanel foot;
    private final JPanel legend;
    private final JButton fitPart;
    private final JButton setLimit;
    private List<MarkLine> shown = List.of();

    /**
     * @param actions what leads on while nothing is fitted or limited yet
     * @param open told the row that is opened
     */
    MarksSheet(SheetTools tools, BeginActions actions, Consumer<MarkLine> open) {
        this.texts = tools.texts();
        this.fitPart = Buttons.plain(Caption.of(texts.get("beforewego.nearest.fit")), actions.fitPart());
        this.setLimit = Buttons.plain(Caption.of(texts.get("beforewego.nearest.limit")), actions.setLimit());
        this.states = new StateWords(texts);
        this.open = open;
        this.all = new AllMarks(tools, open);
        this.runsOut = new RunsOutSheet(texts);
        this.toggle = Buttons.link(Caption.of(texts.get("beforewego.showAll")), this::toggle);
        this.foot = foot();
        this.legend = legend();
        rows.setOpaque(false);
        sheet.add(rows, OpenRow.LIST + ", wrap");
        sheet.add(foot, "growx, gaptop 8, wrap");
        sheet.add(legend, "growx, gaptop 6, wrap");
        sheet.add(all, "growx, gaptop 10, wrap");
        sheet.add(runsOut.component(), "growx, wrap");
        all.setVisible(false);
    }

    Sheet component() {
        return sheet;
    }

    void show(StandingLines lines) {
        shown = Stream.of(lines.must(), lines.due(), lines.nearest())
                .flatMap(List::stream)
                .toList();
        rows.removeAll();
        boolean there = !lines.nextRuns().isEmpty();
        section(there ? "beforewego.must.next" : "beforewego.must", "beforewego.must.runsOut", lines.must());
        if (lines.more() > 0) {
            String more = texts.get("beforewego.nearest.more", lines.more());
            rows.add(Lettering.paragraph(more, SeamState.OVER.style()), "growx, gap 8 8 8 8");
        }
        section("beforewego.due", "", lines.due());
        section("beforewego.nearest", "beforewego.nearest.recorded", lines.nearest());
        boolean nothingFitted = lines.all().isEmpty();
        if (shown.isEmpty()) {
            rows.add(heading("beforewego.nearest", ""), "growx");
            say(
                    nothingFitted ? "beforewego.nearest.bare" : "beforewego.nearest.none",
                    nothingFitted ? fitPart : setLimit);
            rows.add(new Hairline(), OpenRow.BETWEEN);
        }
        runsOut.show(lines.runsOut());
        foot.setVisible(!nothingFitted);
        legend.setVisible(!shown.isEmpty());
        say(quiet, lines.quiet());
        say(elsewhere, lines.elsewhere());
        elsewhere.setVisible(!lines.elsewhere().isEmpty());
        all.show(lines.all());
        sheet.revalidate();
        sheet.repaint();
    }

    /** Where the focus goes on arrival: the worst row, or what leads on to one; null before anything is shown. */
    @Nullable
    JComponent first() {
        for (var component : rows.getComponents()) {
            if (component instanceof OpenRow row) {
                return row;
            }
        }
        return fitPart.isShowing() ? fitPart : setLimit.isShowing() ? setLimit : null;
    }

    JButton toggleButton() {
        return toggle;
    }

    AllMarks all() {
        return all;
    }

    private void toggle() {
        boolean show = !all.isVisible();
        all.setVisible(show);
        Caption caption = Caption.of(texts.get(show ? "beforewego.hideAll" : "beforewego.showAll"));
        toggle.setText(caption.text());
        toggle.setMnemonic(caption.mnemonic());
        sheet.revalidate();
        if (show) {
            all.takeFocus();
        }
    }

    /** A heading with its rows between lines; nothing at all when there are none. */
    private void section(String heading, String beside, List<MarkLine> lines) {
        if (lines.isEmpty()) {
            return;
        }
        rows.add(heading(heading, beside), rows.getComponentCount() == 0 ? "growx" : "growx, gaptop 14");
        for (MarkLine line : lines) {
            rows.add(new Hairline(), OpenRow.BETWEEN);
            rows.add(row(line), "growx");
        }
        rows.add(new Hairline(), OpenRow.BETWEEN);
    }

    private JPanel heading(String key, String beside) {
        JPanel head =
                new JPanel(new FormLayout("insets 0 " + OpenRow.BLEED + " 0 " + OpenRow.BLEED + ", gap 0, fillx", ROW));
        head.setOpaque(false);
        head.add(Lettering.cutLine(texts.get(key), Styles.SECTION), "span 3, growx, w 0:0:, gapbottom 6");
        head.add(beside.isEmpty() ? new JLabel() : Lettering.cutLine(texts.get(beside), Styles.NOTE), "w 0:0:");
        return head;
    }

    private OpenRow row(MarkLine line) {
        String about = texts.get("beforewego.comma", states.of(line.state()), line.about());
        OpenRow row = new OpenRow(ROW, about, () -> open.accept(line));
        row.add(new JLabel(new SeamIcon(line.state())), "spany 2");
        row.say(line.title(), Styles.ROW_TITLE, "");
        Life life = line.life();
        row.add(life == null ? new JLabel() : new LifeStrip(life, line.state(), line.figures()), "wmax 188");
        row.say(line.left(), line.state().style(), "wrap");
        row.say(line.where(), Styles.NOTE, "");
        row.say(line.figures(), Styles.ECHO, "");
        row.say(line.dueWords(), Styles.NOTE, "");
        row.setToolTipText(line.tip());
        return row;
    }

    private void say(String key, JButton leadsOn) {
        rows.add(Lettering.paragraph(texts.get(key), Styles.QUIET_INK), "growx, gap 8 8 8 8");
        JPanel way = new JPanel(new FormLayout("insets 0 8 12 8, gap 0"));
        way.setOpaque(false);
        way.add(leadsOn);
        rows.add(way, "growx");
    }

    private JPanel foot() {
        JPanel foot =
                new JPanel(new FormLayout("insets 0, gap 0, fillx, hidemode 3", "[24!]12[0::,grow,fill]12[]", "[]2[]"));
        foot.setOpaque(false);
        foot.add(new JLabel(new SeamIcon(SeamState.WITHIN)), "aligny top");
        foot.add(quiet, "wmin 0, growx");
        foot.add(toggle, "aligny top, wrap");
        foot.add(elsewhere, "skip 1, wmin 0, growx");
        return foot;
    }

    private JPanel legend() {
        JPanel legend = new JPanel(new FormLayout("insets 0, gapx 8"));
        legend.setOpaque(false);
        piece(legend, LegendIcon.bar(Palette.WITHIN), "beforewego.legend.ran");
        piece(legend, LegendIcon.bar(Palette.OVER_FILL), "beforewego.legend.over");
        piece(legend, LegendIcon.bar(Palette.DUE_FILL), "beforewego.legend.adds");
        piece(legend, LegendIcon.seam(), "beforewego.legend.limit");
        return legend;
    }

    private void piece(JPanel legend, LegendIcon icon, String key) {
        legend.add(new JLabel(icon));
        legend.add(Lettering.line(texts.get(key), Styles.NOTE), "gapright 12");
    }

    private static void say(JTextArea area, String words) {
        area.setText(words);
        area.getAccessibleContext().setAccessibleName(words);
    }

    /** The rows as shown, worst first. */
    List<MarkLine> shown() {
        return shown;
    }
}
