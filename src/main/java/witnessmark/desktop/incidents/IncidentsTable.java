package witnessmark.desktop.incidents;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Kept;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetMenu;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Moment;
import witnessmark.wording.Texts;

/** Every incident, the open ones first, and what can be written of the one in hand. */
final class IncidentsTable {
    private final Texts texts;
    private final IncidentsAsked asked;
    private final SheetTable<IncidentLine> sheet;
    private final SheetMenu<IncidentLine> menu;
    private final JButton report;
    private final JButton write;
    private final JPanel empty;
    private boolean shown;

    IncidentsTable(SheetTools tools, IncidentsAsked asked) {
        this.texts = tools.texts();
        this.asked = asked;
        this.sheet = new SheetTable<>(texts.get("incidents.list"), columns(texts), IncidentLine::id)
                .with(tools, "incidents.list");
        this.menu = sheet.menu(this::ways);
        this.report = Buttons.plain(Caption.of(texts.get("incidents.report")), asked.report());
        this.write = Buttons.plain(Caption.of(texts.get("incidents.write")), this::showMenu);
        write.setToolTipText(texts.get("incidents.write.tip"));
        write.setEnabled(false);
        sheet.filterStays(report, write);
        sheet.onSelect(line -> write.setEnabled(line != null));
        sheet.onOpen(line -> asked.correct().accept(line.id()));
        sheet.table().setToolTipText(texts.get("incidents.list.tip"));
        empty = new JPanel(new FormLayout("insets 10 0 10 0, fillx", "[0::,grow,fill]"));
        empty.setOpaque(false);
        empty.add(Lettering.paragraph(texts.get("incidents.empty"), Styles.QUIET_INK), "growx, wmin 0");
        Kept.leaves(empty);
    }

    SheetTable<IncidentLine> sheet() {
        return sheet;
    }

    JButton report() {
        return report;
    }

    JButton write() {
        return write;
    }

    void show(IncidentsLines lines) {
        sheet.show(lines.all());
        if (!shown) {
            shown = true;
            Kept.returns(empty);
            sheet.whenEmpty(empty); // not before rows are there: they take the focus on arrival, and keep it
        }
        if (sheet.selected() == null && !lines.all().isEmpty()) {
            sheet.select(lines.all().get(0).id());
        }
        write.setEnabled(sheet.selected() != null);
    }

    /** What can be done with an incident, in the menu's order. */
    List<SheetMenu.Way> ways(IncidentLine line) {
        List<SheetMenu.Way> ways = new ArrayList<>();
        for (Prefilled about : line.sheets()) {
            ways.add(new SheetMenu.Way(
                    Caption.of(texts.get("incidents.do." + about.sheet())),
                    () -> asked.write().accept(about)));
        }
        ways.add(new SheetMenu.Way(
                Caption.of(texts.get("incidents.do.correct")),
                () -> asked.correct().accept(line.id())));
        return ways;
    }

    private void showMenu() {
        menu.under(write);
    }

    private static List<Column<IncidentLine>> columns(Texts texts) {
        return List.of(
                Column.<IncidentLine>text(texts.get("incidents.column.mark"), IncidentLine::mark)
                        .strong()
                        .wide(58),
                Column.<IncidentLine>text(texts.get("incidents.column.what"), IncidentLine::title)
                        .wide(150)
                        .grow(),
                Column.<IncidentLine>text(texts.get("incidents.column.on"), IncidentLine::on)
                        .wide(62),
                Column.<IncidentLine, Moment>text(
                                texts.get("incidents.column.day"), IncidentLine::day, IncidentLine::at)
                        .wide(62),
                Column.<IncidentLine>text(texts.get("incidents.column.stands"), IncidentLine::stands)
                        .inked(IncidentLine::state)
                        .wide(100),
                Column.<IncidentLine, Long>figure(
                                texts.get("incidents.column.cost"), IncidentLine::cost, IncidentLine::amount)
                        .wide(98));
    }
}
