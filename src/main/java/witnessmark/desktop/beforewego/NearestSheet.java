package witnessmark.desktop.beforewego;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.LifeStrip;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** What stands nearest to its limit: the rows, the quiet line under them, and on asking every limit there is. */
final class NearestSheet {
    private static final String ROW = "[24!]12[0:0:,grow 38,fill]16[0:0:,grow 40,fill]20[0:0:,grow 36,fill]";

    private final Sheet sheet = new Sheet("fillx, aligny top, hidemode 3", "[0::,grow,fill]", "");
    private final Texts texts;
    private final StateWords states;
    private final Consumer<LimitLine> open;
    private final JPanel rows = new JPanel(new MigLayout("insets 0, gap 0, fillx, wrap", "[0::,grow,fill]"));
    private final JTextArea quiet = Lettering.paragraph("", Styles.FIELD_LABEL);
    private final JTextArea elsewhere = Lettering.paragraph("", Styles.NOTE);
    private final JButton toggle;
    private final AllLimits all;
    private final JPanel foot;
    private final JPanel legend;
    private final JButton fitPart;
    private final JButton setLimit;
    private List<LimitLine> shown = List.of();

    /**
     * @param actions what leads on while nothing is fitted or limited yet
     * @param open told the row that is opened
     */
    NearestSheet(SheetTools tools, BeginActions actions, Consumer<LimitLine> open) {
        this.texts = tools.texts();
        this.fitPart = Buttons.plain(Caption.of(texts.get("beforewego.nearest.fit")), actions.fitPart());
        this.setLimit = Buttons.plain(Caption.of(texts.get("beforewego.nearest.limit")), actions.setLimit());
        this.states = new StateWords(texts);
        this.open = open;
        this.all = new AllLimits(tools, open);
        this.toggle = Buttons.link(Caption.of(texts.get("beforewego.showAll")), this::toggle);
        this.foot = foot();
        this.legend = legend();
        rows.setOpaque(false);
        sheet.add(head(), "growx, wrap");
        sheet.add(rows, OpenRow.LIST + ", wrap");
        sheet.add(foot, "growx, gaptop 8, wrap");
        sheet.add(legend, "growx, gaptop 6, wrap");
        sheet.add(all, "growx, gaptop 10, wrap");
        all.setVisible(false);
    }

    Sheet component() {
        return sheet;
    }

    void show(StandingLines lines) {
        shown = lines.nearest();
        rows.removeAll();
        for (LimitLine line : lines.nearest()) {
            rows.add(new Hairline(), OpenRow.BETWEEN);
            rows.add(row(line), "growx");
        }
        boolean nothingFitted = lines.all().isEmpty();
        if (lines.nearest().isEmpty()) {
            say(
                    nothingFitted ? "beforewego.nearest.bare" : "beforewego.nearest.none",
                    nothingFitted ? fitPart : setLimit);
        }
        rows.add(new Hairline(), OpenRow.BETWEEN);
        if (lines.more() > 0) {
            String more = texts.get("beforewego.nearest.more", lines.more());
            rows.add(Lettering.paragraph(more, SeamState.OVER.style()), "growx, gap 8 8 8 8");
        }
        foot.setVisible(!nothingFitted);
        legend.setVisible(!lines.nearest().isEmpty());
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

    AllLimits all() {
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

    private JPanel head() {
        JPanel head = new JPanel(new MigLayout("insets 0, gap 0, fillx", ROW));
        head.setOpaque(false);
        head.add(Lettering.line(texts.get("beforewego.nearest"), Styles.SECTION), "span 3, growx, w 0:0:, gapbottom 6");
        head.add(Lettering.cutLine(texts.get("beforewego.nearest.recorded"), Styles.NOTE), "w 0:0:");
        return head;
    }

    private OpenRow row(LimitLine line) {
        String about = texts.get("beforewego.comma", states.of(line.state()), line.about());
        OpenRow row = new OpenRow(ROW, about, () -> open.accept(line));
        row.add(new JLabel(new SeamIcon(line.state())), "spany 2");
        row.say(line.title(), Styles.ROW_TITLE, "");
        row.add(new LifeStrip(line.life(), line.state(), line.figures()), "wmax 188");
        row.say(line.left(), line.state().style(), "wrap");
        row.say(line.where(), Styles.NOTE, "");
        row.say(line.figures(), Styles.ECHO, "");
        row.say(line.dueWords(), Styles.NOTE, "");
        row.setToolTipText(line.tip());
        return row;
    }

    private void say(String key, JButton leadsOn) {
        rows.add(Lettering.paragraph(texts.get(key), Styles.QUIET_INK), "growx, gap 8 8 8 8");
        JPanel way = new JPanel(new MigLayout("insets 0 8 12 8, gap 0"));
        way.setOpaque(false);
        way.add(leadsOn);
        rows.add(way, "growx");
    }

    private JPanel foot() {
        JPanel foot =
                new JPanel(new MigLayout("insets 0, gap 0, fillx, hidemode 3", "[24!]12[0::,grow,fill]12[]", "[]2[]"));
        foot.setOpaque(false);
        foot.add(new JLabel(new SeamIcon(SeamState.WITHIN)), "aligny top");
        foot.add(quiet, "wmin 0, growx");
        foot.add(toggle, "aligny top, wrap");
        foot.add(elsewhere, "skip 1, wmin 0, growx");
        return foot;
    }

    private JPanel legend() {
        JPanel legend = new JPanel(new MigLayout("insets 0, gapx 8"));
        legend.setOpaque(false);
        piece(legend, LegendIcon.bar(Palette.WITHIN), "beforewego.legend.ran");
        piece(legend, LegendIcon.bar(Palette.OVER_FILL), "beforewego.legend.over");
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
    List<LimitLine> shown() {
        return shown;
    }
}
