package witnessmark.desktop.shell.gallery;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.wording.Texts;

/** An invented list: figures right, marks centred, blanks, a chosen row. */
public final class GalleryList implements Place {
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));
    private final SheetTable<Row> table;

    /** One part of an engine. */
    public record Row(String part, String serial, String since, Double ran, Double limit, SeamState state) {
        String ranText() {
            return ran == null ? "not known" : "%.1f".formatted(ran);
        }

        String limitText() {
            return limit == null ? "none" : "%.0f".formatted(limit);
        }
    }

    public static final List<Row> ROWS = List.of(
            new Row("Valve springs", "VS-03", "4 Oct", 12.87, 12.0, SeamState.OVER),
            new Row("Big-end shells", "BE-22", "4 Oct", 6.1, 10.0, SeamState.DUE),
            new Row("Pistons", "P-09", "4 Oct", 16.2, 40.0, SeamState.WITHIN),
            new Row("Rods", "R-04", "12 Jun", null, null, SeamState.NOT_KNOWN),
            new Row("Rings", "RS-12", "4 Oct", 16.2, 20.0, SeamState.WITHIN),
            new Row("Head gasket", "G-31", "4 Oct", 16.2, 30.0, SeamState.RUN_ON),
            new Row("Oil pump", "OP-02", "1 Mar", 41.0, 60.0, SeamState.WITHIN));

    public GalleryList(Texts texts) {
        StateWords words = new StateWords(texts);
        page.setOpaque(false);
        table = new SheetTable<>(
                "Build as fitted",
                List.of(
                        Column.mark("Mark", Row::state, words::of).wide(54),
                        Column.<Row>text("Part", Row::part).strong().grow(),
                        Column.<Row>text("Serial", Row::serial),
                        Column.<Row>text("Since", Row::since),
                        Column.<Row, Double>figure("Run, h", Row::ranText, Row::ran),
                        Column.<Row, Double>figure("Limit, h", Row::limitText, Row::limit),
                        Column.<Row>text("State", row -> words.of(row.state())).inked(Row::state)),
                Row::serial);
        table.show(ROWS);
        table.select("P-09");
        Sheet sheet = new Sheet("fill", "[0::,grow,fill]", "[]6[grow,fill]");
        sheet.add(Lettering.line("Build as fitted", Styles.SECTION), "wrap");
        sheet.add(table, "grow");
        page.add(sheet, "grow");
    }

    public SheetTable<Row> table() {
        return table;
    }

    @Override
    public PlaceId id() {
        return PlaceId.ENGINES;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return table.table();
    }

    @Override
    public void refresh() {
        page.repaint();
    }
}
