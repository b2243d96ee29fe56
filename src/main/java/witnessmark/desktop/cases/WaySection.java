package witnessmark.desktop.cases;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;
import witnessmark.wording.WayLines;

/** The way up to a failure on the page: a band, or the same as a table. */
final class WaySection extends JPanel {
    private final Texts texts;
    private final JLabel heading = Lettering.cutLine("", Styles.SECTION);
    private final JButton toggle;
    private final WayView view;
    private final SheetTable<WayLines.Point> table;
    private final JTextArea said = Lettering.paragraph("", Styles.NOTE);
    private transient WayLines shown = WayLines.NONE;
    private boolean asTable;

    WaySection(SheetTools tools) {
        super(new FormLayout("insets 0, gap 0 3, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        this.texts = tools.texts();
        setOpaque(false);
        view = new WayView(words -> said.setText(words.isEmpty() ? whole() : words));
        table = new SheetTable<>(texts.get("cases.way.table"), columns(), WayLines.Point::day);
        table.whole();
        table.onSelect(point -> said.setText(point == null || !asTable ? whole() : point.whole()));
        toggle = Buttons.link(Caption.of(texts.get("form.chart.asTable")), this::toggle);
        JPanel head = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[0::,grow,fill]8[]", "[baseline]"));
        head.setOpaque(false);
        head.add(heading, "wmin 0");
        head.add(toggle);
        add(new Hairline(), "growx, wmin 0, gaptop 6");
        add(head, "growx, wmin 0");
        add(view, "growx, wmin 0");
        add(table, "growx, w 0:0:");
        add(said, "growx, wmin 0");
        table.setVisible(false);
    }

    private List<Column<WayLines.Point>> columns() {
        return List.of(
                Column.<WayLines.Point>text(texts.get("cases.way.column.day"), WayLines.Point::day)
                        .wide(70),
                Column.<WayLines.Point>text(texts.get("cases.way.column.hours"), WayLines.Point::hours)
                        .wide(64),
                Column.<WayLines.Point>text(texts.get("cases.way.column.before"), WayLines.Point::before)
                        .wide(70),
                Column.<WayLines.Point>text(texts.get("cases.way.column.seen"), WayLines.Point::seen)
                        .wide(140)
                        .grow(),
                Column.<WayLines.Point>text(texts.get("cases.way.column.changed"), WayLines.Point::changed)
                        .wide(140)
                        .grow());
    }

    private void toggle() {
        asTable = !asTable;
        Caption.of(texts.get(asTable ? "form.chart.asChart" : "form.chart.asTable"))
                .on(toggle);
        view.setVisible(!asTable);
        table.setVisible(asTable);
        said.setText(whole());
        revalidate();
    }

    void show(WayLines lines) {
        boolean other = !lines.equals(shown);
        shown = lines;
        setVisible(!lines.points().isEmpty());
        heading.setText(lines.heading());
        view.show(lines);
        if (other) {
            said.setText(whole());
        }
        table.show(lines.points());
        revalidate();
    }

    private String whole() {
        int earlier = view.leftOut();
        return earlier == 0 || asTable ? shown.said() : texts.get("cases.way.earlier", shown.said(), earlier);
    }
}
