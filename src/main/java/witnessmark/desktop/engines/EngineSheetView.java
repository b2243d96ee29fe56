package witnessmark.desktop.engines;

import com.formdev.flatlaf.FlatClientProperties;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import witnessmark.chart.Chart;
import witnessmark.chart.Dot;
import witnessmark.desktop.engines.CurvesModel.Which;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.study.result.DynoAnswer;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** One engine: heading, line of life, and under tabs the build, the lives, the chart; a figure's entries at the side. */
final class EngineSheetView {
    private final Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "[]2[]0[]2[fill,grow]");
    private final EngineHead head;
    private final LineOfLifeModel line = new LineOfLifeModel();
    private final LineOfLifeView lineView;
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final JTabbedPane tabs = new JTabbedPane();
    private final BuildTab build;
    private final LivesTab lives;
    private final CurvesTab curves;
    private final DynoTab dyno;
    private final Beside beside;
    private final Texts texts;
    private String shown = "";

    /** What the page can be asked to do. */
    interface Asked {
        /** Shows the entries behind a figure. */
        void behind(Shown figure);

        /** Shows where a part has been, by the text form of its identity. */
        void part(String part);

        /** Opens the page of the engine's build. */
        void page();

        /** Opens the sheet of the engine's build. */
        void buildSheet();

        /** Opens an entry on the line of life. */
        void open(LifeMark mark);

        /** Opens the entry a point on the chart stands for. */
        void record(Dot point);

        /** Opens a dyno sheet, by the text form of its identity. */
        void dynoSheet(String sheet);

        /** Says what was done. */
        void say(String sentence);

        /** Puts the entries behind a figure away. */
        void closeBehind();
    }

    EngineSheetView(SheetTools tools, Measures measures, EntryWork work, Asked asked) {
        this.texts = tools.texts();
        Consumer<Shown> open = asked::behind;
        head = new EngineHead(
                open,
                List.of(
                        Buttons.link(Caption.of(texts.get("builds.page")), asked::page),
                        Buttons.link(Caption.of(texts.get("builds.sheet")), asked::buildSheet)));
        LineOfLifePainter painter = new LineOfLifePainter(
                line, day -> day.getDayOfYear() == 1 ? Integer.toString(day.getYear()) : measures.shortDate(day));
        lineView = new LineOfLifeView(texts, line, painter, this::readLine, asked::open);
        build = new BuildTab(tools, open, asked::part);
        lives = new LivesTab(tools, "engines.lives", open);
        curves = new CurvesTab(tools, asked::record, asked::say);
        dyno = new DynoTab(tools, measures, asked::dynoSheet, asked::say);
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_TYPE, "underlined");
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_HEIGHT, 28);
        tabs.putClientProperty(FlatClientProperties.STYLE, "background: $Wm.sheet");
        // What trails the tabs stands on a panel of the look's own, which would show through.
        JPanel trailing = Styles.as(Styles.SHEET, new JPanel(new MigLayout("insets 0, gap 0, hidemode 3", "push[][]")));
        trailing.add(curves.controls());
        trailing.add(dyno.controls());
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TRAILING_COMPONENT, trailing);
        showControls();
        tabs.addChangeListener(e -> showControls());
        tabs.addTab(texts.get("engines.tab.build"), build);
        tabs.addTab(texts.get("engines.tab.lives"), lives);
        tabs.addTab(texts.get("engines.tab.curves"), curves);
        tabs.addTab(texts.get("engines.tab.dyno"), dyno);
        tabs.getAccessibleContext().setAccessibleName(texts.get("engines.tabs"));
        beside = new Beside(tabs, new BehindPane(tools, work, asked::closeBehind));
        sheet.add(head, "growx, wmin 0, wrap");
        sheet.add(lineView, "growx, wmin 0, wrap");
        sheet.add(readout, "growx, wmin 0, wrap");
        sheet.add(beside, "grow, wmin 0");
    }

    private void showControls() {
        curves.controls().setVisible(tabs.getSelectedComponent() == curves);
        dyno.controls().setVisible(tabs.getSelectedComponent() == dyno);
    }

    Sheet component() {
        return sheet;
    }

    void show(
            SheetLines lines,
            List<LifeMark> marks,
            long end,
            ZoneId zone,
            Function<Which, Optional<Chart>> charts,
            List<DynoAnswer> sheets) {
        boolean same = shown.equals(lines.engine());
        shown = lines.engine();
        head.show(lines);
        line.show(marks, end, zone, same);
        lineView.getAccessibleContext().setAccessibleName(texts.get("engines.line.of", lines.number()));
        readLine();
        build.show(lines);
        lives.show(lines.lives());
        curves.show(charts);
        dyno.show(sheets);
        sheet.revalidate();
        sheet.repaint();
    }

    EngineHead head() {
        return head;
    }

    LineOfLifeView lineView() {
        return lineView;
    }

    LineOfLifeModel line() {
        return line;
    }

    JTabbedPane tabs() {
        return tabs;
    }

    BuildTab build() {
        return build;
    }

    LivesTab lives() {
        return lives;
    }

    CurvesTab curves() {
        return curves;
    }

    /** The tab whose chart commands are about: the dyno's while it shows, else that of running. */
    JComponent chart() {
        return tabs.getSelectedComponent() == dyno ? dyno : curves;
    }

    void toggleChart() {
        if (chart() == dyno) {
            dyno.toggle();
        } else {
            curves.toggle();
        }
    }

    void copyChart(Consumer<String> say) {
        if (chart() == dyno) {
            dyno.copy(say);
        } else {
            curves.copy(say);
        }
    }

    DynoTab dyno() {
        return dyno;
    }

    Beside beside() {
        return beside;
    }

    String readout() {
        return readout.getText().strip();
    }

    private void readLine() {
        LifeMark chosen = line.chosen();
        String words =
                chosen == null ? texts.get("engines.line.hint", line.marks().size()) : chosen.words();
        readout.setText(words);
        lineView.changed(words);
    }
}
