package witnessmark.desktop.engines;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Component;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.chart.Dot;
import witnessmark.desktop.engines.CurvesModel.Which;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChartOrTable;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.photos.PhotoStrip;
import witnessmark.desktop.trends.TrendsModel;
import witnessmark.desktop.trends.TrendsTab;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.study.result.DynoAnswer;
import witnessmark.study.result.KindTrends;
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
    private final TrendsTab trends;
    private final DynoTab dyno;
    private final Beside beside;
    private final Texts texts;
    private @Nullable PhotoStrip photos;
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

        /** Prints tags for the parts of the engine. */
        void tags();

        /** Shows the traces of the engine's runs. */
        void traces();

        /** Opens an entry on the line of life. */
        void open(LifeMark mark);

        /** Opens the entry a point on the chart stands for. */
        void record(Dot point);

        /** Opens a reading. */
        void reading(Entry<Reading> reading, String words);

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
        trends = new TrendsTab(tools, new TrendsModel(texts, measures), asked::reading, asked::say);
        dyno = new DynoTab(tools, measures, asked::dynoSheet, asked::say);
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_TYPE, "underlined");
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_HEIGHT, 28);
        tabs.putClientProperty(FlatClientProperties.STYLE, "background: $Wm.sheet");
        // What trails the tabs stands on a panel of the look's own, which would show through.
        JPanel trailing = Styles.as(Styles.SHEET, new JPanel(new BorderLayout()));
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TRAILING_COMPONENT, trailing);
        tabs.addChangeListener(e -> controls(trailing));
        tabs.addTab(texts.get("engines.tab.build"), build);
        tabs.addTab(texts.get("engines.tab.lives"), lives);
        tabs.addTab(texts.get("engines.tab.curves"), curves);
        tabs.addTab(texts.get("engines.tab.dyno"), dyno);
        tabs.addTab(texts.get("trends.tab"), trends);
        tabs.getAccessibleContext().setAccessibleName(texts.get("engines.tabs"));
        beside = new Beside(tabs, new BehindPane(tools, work, asked::closeBehind));
        sheet.add(head, "growx, wmin 0, wrap");
        sheet.add(lineView, "growx, wmin 0, wrap");
        JPanel said = new JPanel(new FormLayout("insets 0, gap 8, fillx", "[0::,grow,fill][][]", "[center]"));
        said.setOpaque(false);
        said.add(readout, "growx, wmin 0");
        said.add(Buttons.link(Caption.of(texts.get("tags.link")), asked::tags));
        said.add(Buttons.link(Caption.of(texts.get("traceview.page")), asked::traces));
        sheet.add(said, "growx, wmin 0, wrap");
        sheet.add(beside, "grow, wmin 0");
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
            List<KindTrends> readings,
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
        trends.show(lines.number(), readings);
        dyno.show(sheets);
        if (photos != null) {
            photos.show(PhotosOf.engine(Id.parse(lines.engine())));
        }
        sheet.revalidate();
        sheet.repaint();
    }

    /** Adds the tab of the engine's photos. */
    void with(PhotoStrip strip) {
        tabs.addTab(texts.get("photos.section"), strip);
        photos = strip;
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

    TrendsTab trends() {
        return trends;
    }

    DynoTab dyno() {
        return dyno;
    }

    /** Puts what belongs to the chart of the tab in hand beside the tabs. */
    private void controls(JPanel trailing) {
        trailing.removeAll();
        Component tab = tabs.getSelectedComponent();
        if (tab == curves) {
            trailing.add(curves.controls());
        } else if (tab == dyno) {
            trailing.add(dyno.controls());
        } else if (tab == trends) {
            trailing.add(trends.controls());
        }
        trailing.revalidate();
        trailing.repaint();
    }

    /** The tab whose chart commands are about: the one in hand if it has one, else that of running. */
    JComponent charted() {
        Component tab = tabs.getSelectedComponent();
        return tab == dyno ? dyno : tab == trends ? trends : curves;
    }

    void toggleChart() {
        chart().toggle();
    }

    void copyChart(Consumer<String> say) {
        chart().copy(say);
    }

    private ChartOrTable chart() {
        JComponent tab = charted();
        return tab == dyno ? dyno.charts() : tab == trends ? trends.pane() : curves.chart();
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
