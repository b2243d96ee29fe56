package witnessmark.desktop.engines;

import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.history.HistoryLine;
import witnessmark.desktop.history.HistoryTable;
import witnessmark.quantity.Moment;
import witnessmark.wording.Texts;

/** Beside the engine: a figure with every entry behind it, what can be done to one, and the history of one. */
final class BehindPane extends JPanel {
    private static final String ENTRIES = "entries";
    private static final String HISTORY = "history";
    private static final int THROUGH = 2;

    private final Texts texts;
    private final JLabel title = Lettering.cutLine("", Styles.SECTION);
    private final JLabel of = Lettering.cutLine("", Styles.QUIET_INK);
    private final JTextArea basis = Lettering.paragraph("", Styles.NOTE);
    private final CardLayout cards = new CardLayout();
    private final JPanel body = new JPanel(cards);
    private final SheetTable<BehindLine> entries;
    private final SheetTable<HistoryLine> history;
    private final JTextArea historyOf = Lettering.paragraph("", Styles.STRONG);
    private final JLabel inHand = Lettering.cutLine(" ", Styles.ECHO);
    private final EntryActions actions;
    private final Runnable close;
    private final JButton back;
    private boolean entriesBehind;
    private Runnable openShown = () -> {};
    private Function<List<BehindLine>, BehindLines.Sum> sum = shown -> new BehindLines.Sum("", "");

    /** @param close run when the pane is to be put away */
    BehindPane(SheetTools tools, EntryWork work, Runnable close) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]2[]4[fill,grow]"));
        this.texts = tools.texts();
        this.close = close;
        back = Buttons.link(Caption.of(texts.get("engines.history.back")), this::backToEntries);
        setOpaque(false);
        entries = madeEntries().with(tools, "engines.behind");
        history = HistoryTable.of(texts).with(tools, "engines.history");
        actions = new EntryActions(texts, work, entries::selected);
        entries.onSelect(this::follow);
        entries.onOpen(work::open);
        add(top(), "growx, wrap");
        add(basis, "wmin 0, growx, wrap");
        body.setOpaque(false);
        body.add(entriesCard(), ENTRIES);
        body.add(historyCard(), HISTORY);
        add(body, "grow, w 0:0:");
        FormKeys.bindWithin(this, Keys.plain(KeyEvent.VK_ESCAPE), "wm-close", this::escape);
    }

    void show(BehindLines lines, boolean readOnly, boolean entriesToo) {
        title.setText(lines.title());
        of.setText(lines.of());
        String known = lines.notCounted().isEmpty()
                ? lines.basis()
                : texts.get("engines.comma", lines.basis(), lines.notCounted());
        basis.setText(known);
        basis.setVisible(true);
        basis.getAccessibleContext().setAccessibleName(known);
        actions.readOnly(readOnly);
        // The column says nothing of an engine's own figure.
        entries.offer(
                THROUGH, lines.rows().stream().anyMatch(line -> !line.through().isEmpty()));
        sum = lines.sum();
        entries.show(lines.rows());
        follow(entries.selected());
        if (entriesToo) {
            cards.show(body, ENTRIES);
        }
        getAccessibleContext().setAccessibleName(texts.get("engines.comma", lines.title(), lines.of()));
        revalidate();
    }

    /**
     * Shows the history of an entry.
     *
     * @param ofFigure whether it stands in place of the entries behind a figure, to which there is a way back
     * @param open opens the entry on its sheet
     */
    void showHistory(String entry, List<HistoryLine> lines, boolean ofFigure, Runnable open) {
        openShown = open;
        entriesBehind = ofFigure;
        back.setVisible(ofFigure);
        if (!ofFigure) {
            title.setText(texts.get("history.title"));
            of.setText("");
        }
        basis.setVisible(ofFigure);
        historyOf.setText(texts.get("history.of", entry));
        historyOf.getAccessibleContext().setAccessibleName(historyOf.getText());
        history.show(lines);
        cards.show(body, HISTORY);
        history.table().requestFocusInWindow();
    }

    void takeFocus() {
        if (entries.selected() == null && entries.table().getRowCount() > 0) {
            int last = entries.table().getRowCount() - 1;
            entries.table().setRowSelectionInterval(last, last);
            entries.table().scrollRectToVisible(entries.table().getCellRect(last, 0, true));
        }
        entries.table().requestFocusInWindow();
    }

    SheetTable<BehindLine> entries() {
        return entries;
    }

    SheetTable<HistoryLine> history() {
        return history;
    }

    String historyOf() {
        return historyOf.getText();
    }

    EntryActions actions() {
        return actions;
    }

    private void follow(@Nullable BehindLine line) {
        actions.follow(line);
        inHand.setText(line == null ? " " : line.words());
    }

    private void escape() {
        if (actions.asking()) {
            actions.stopAsking();
        } else if (history.isShowing() && entriesBehind) {
            backToEntries();
        } else {
            close.run();
        }
    }

    private void backToEntries() {
        cards.show(body, ENTRIES);
        entries.table().requestFocusInWindow();
    }

    private JComponent top() {
        JPanel top = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[]10[0::,grow,fill]8[]", "[baseline]"));
        top.setOpaque(false);
        top.add(title, "wmin 0");
        top.add(of, "wmin 0");
        top.add(Buttons.link(Caption.of(texts.get("engines.behind.close")), close));
        return top;
    }

    private JComponent entriesCard() {
        JPanel card = new JPanel(
                new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill][]", "[fill,grow]3[]3[]"));
        card.setOpaque(false);
        card.add(entries, "span, grow, w 0:0:, hmin 120, wrap");
        card.add(inHand, "span, growx, wmin 0, wrap");
        card.add(actions, "span, growx, w 0:0:");
        return card;
    }

    private JComponent historyCard() {
        JPanel card = new JPanel(
                new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill][]12[]", "[]4[fill,grow]"));
        card.setOpaque(false);
        card.add(historyOf, "wmin 0");
        card.add(Buttons.link(Caption.of(texts.get("engines.history.correct")), () -> openShown.run()));
        card.add(back, "wrap");
        card.add(history, "span, grow, w 0:0:, hmin 120");
        return card;
    }

    private SheetTable<BehindLine> madeEntries() {
        return new SheetTable<>(
                texts.get("engines.behind"),
                List.of(
                        Column.<BehindLine, Moment>text(
                                        texts.get("engines.behind.column.day"), BehindLine::day, BehindLine::at)
                                .wide(120),
                        Column.<BehindLine>text(texts.get("engines.behind.column.what"), BehindLine::what)
                                .inked(BehindPane::ink)
                                .totalled(shown -> sum.apply(shown).entries())
                                .wide(150)
                                .grow(),
                        Column.<BehindLine>text(texts.get("engines.behind.column.through"), BehindLine::through)
                                .wide(112),
                        Column.<BehindLine>text(texts.get("engines.behind.column.how"), BehindLine::how)
                                .wide(90),
                        Column.<BehindLine, Long>figure(
                                        texts.get("engines.behind.column.adds"), BehindLine::adds, BehindLine::amount)
                                .totalled(shown -> sum.apply(shown).adds())
                                .wide(84)),
                BehindLine::id);
    }

    /** What is not counted is written in the ink of what is not known. */
    private static SeamState ink(BehindLine line) {
        return line.counts() ? SeamState.WITHIN : SeamState.NOT_KNOWN;
    }
}
