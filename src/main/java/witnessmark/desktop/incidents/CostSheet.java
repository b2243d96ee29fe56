package witnessmark.desktop.incidents;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** What an incident cost in its columns. Each opens to its lines, the total to all that is in it. */
final class CostSheet extends JPanel {
    private static final int COLUMNS = 5;

    private final Texts texts;
    private final List<JButton> names = new ArrayList<>();
    private final List<JLabel> figures = new ArrayList<>();
    private final JPanel notes = new JPanel(new FormLayout("insets 0, gap 0 2, fillx, wrap", "[0::,grow,fill]"));
    private final JLabel which = Lettering.cutLine("", Styles.FIELD_LABEL);
    private final SheetTable<PageLines.PieceLine> pieces;
    private List<PageLines.Amounts> shown = List.of();
    private int column = COLUMNS - 1;

    /** @param correct opens a cost, by the text form of its identity */
    CostSheet(SheetTools tools, Consumer<String> correct) {
        super(new FormLayout("insets 0, gap 4 2, fillx", "[0::,grow,fill]".repeat(COLUMNS), "[]1[]6[]8[]2[]"));
        this.texts = tools.texts();
        setOpaque(false);
        notes.setOpaque(false);
        this.pieces = new SheetTable<>(texts.get("incidents.pieces"), columns(texts), PageLines.PieceLine::id);
        pieces.with(tools, "incidents.pieces");
        pieces.whenEmpty(Lettering.paragraph(texts.get("incidents.pieces.none"), Styles.QUIET_INK));
        pieces.onOpen(piece -> correct.accept(piece.cost()));
        pieces.table().setToolTipText(texts.get("incidents.pieces.tip"));
        for (int i = 0; i < COLUMNS; i++) {
            int at = i;
            JButton name = Buttons.link(Caption.of(" "), () -> open(at));
            name.setHorizontalAlignment(SwingConstants.TRAILING);
            names.add(name);
            add(name, "cell " + i + " 0, wmin 0");
            JLabel figure = Lettering.figure("", Styles.STRONG);
            figures.add(figure);
            add(figure, "cell " + i + " 1, wmin 0, gapright 6");
        }
        add(notes, "cell 0 2 5 1, growx, wmin 0");
        add(which, "cell 0 3 5 1, growx, wmin 0");
        add(pieces, "cell 0 4 5 1, growx, w 0:0:, h 150!");
    }

    void show(List<PageLines.Amounts> columns, List<String> said) {
        shown = columns;
        column = COLUMNS - 1;
        for (int i = 0; i < COLUMNS; i++) {
            names.get(i).setText(columns.get(i).name());
            names.get(i)
                    .getAccessibleContext()
                    .setAccessibleName(texts.get(
                            "incidents.column.opens",
                            columns.get(i).name(),
                            columns.get(i).amount()));
            names.get(i).setToolTipText(names.get(i).getAccessibleContext().getAccessibleName());
            figures.get(i).setText(columns.get(i).amount());
            figures.get(i).setToolTipText(columns.get(i).amount());
        }
        notes.removeAll();
        said.forEach(each -> {
            JTextArea note = Lettering.paragraph(each, Styles.NOTE);
            note.setToolTipText(texts.get("money.rests.tip"));
            notes.add(note, "growx, wmin 0");
        });
        open(column);
    }

    private void open(int at) {
        column = at;
        PageLines.Amounts now = shown.get(at);
        which.setText(texts.get("incidents.lines_of", now.name(), now.pieces().size()));
        pieces.show(now.pieces());
    }

    SheetTable<PageLines.PieceLine> pieces() {
        return pieces;
    }

    List<JButton> names() {
        return names;
    }

    private static List<Column<PageLines.PieceLine>> columns(Texts texts) {
        return List.of(
                Column.<PageLines.PieceLine, LocalDate>text(
                                texts.get("incidents.column.day"), PageLines.PieceLine::date, PageLines.PieceLine::day)
                        .wide(62),
                Column.<PageLines.PieceLine>text(texts.get("incidents.column.counted"), PageLines.PieceLine::column)
                        .wide(110)
                        .onAsking(),
                Column.<PageLines.PieceLine>text(texts.get("incidents.column.category"), PageLines.PieceLine::category)
                        .wide(110),
                Column.<PageLines.PieceLine>text(texts.get("incidents.column.for"), PageLines.PieceLine::what)
                        .wide(220)
                        .grow(),
                Column.<PageLines.PieceLine, Long>figure(
                                texts.get("incidents.column.amount"),
                                PageLines.PieceLine::amount,
                                PageLines.PieceLine::minor)
                        .wide(104));
    }
}
