package witnessmark.desktop.cases;

import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Speaks;
import witnessmark.logbook.proof.Evidence;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Texts;

/** Findings against causes on the page, with what is in hand under them and the field that asks why. */
final class EvidenceSection extends JPanel {
    private final Texts texts;
    private final transient CaseDoing doing;
    private final transient WeighActions actions;
    private final EvidenceTable table;
    private final JTextArea none = Lettering.paragraph("", Styles.QUIET_INK);
    private final JTextArea inHand = Lettering.paragraph("", Styles.NOTE);
    private final FieldBox why;
    /** The cell whose why is asked for, and what it is about; it stays that cell whatever is shown meanwhile. */
    private transient Evidence.@Nullable Pair asked;

    private transient Object[] about = {};
    private String was = "";
    /** What was typed and could not be written: it stands in the field again when that cell's why is asked for. */
    private final transient Map<Evidence.Pair, String> notWritten = new HashMap<>();

    private transient CaseLines shown = CaseLines.NONE;

    EvidenceSection(CaseDoing doing) {
        super(new FormLayout("insets 0, gap 0 3, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        this.doing = doing;
        this.texts = doing.tools().texts();
        this.actions = new WeighActions(doing);
        setOpaque(false);
        table = new EvidenceTable(texts, new Asks(), this::reads);
        why = new FieldBox(Caption.of(texts.get("cases.why")));
        why.onEnter(() -> {
            because(true);
            table.requestFocusInWindow();
        });
        why.onLeave(() -> because(false));
        FormKeys.bind(why.field(), Keys.plain(KeyEvent.VK_ESCAPE), "wm-escape", this::leaves);
        why.setVisible(false);
        add(new Hairline(), "growx, wmin 0, gaptop 6");
        add(head(), "growx, wmin 0");
        add(none, "growx, wmin 0");
        add(table, "growx, wmin 0, gaptop 2");
        add(why, "growx, wmin 0, gaptop 4");
        add(inHand, "growx, wmin 0, gaptop 2");
    }

    private JPanel head() {
        JPanel head = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[0::,grow,fill]8[]4[]", "[baseline]"));
        head.setOpaque(false);
        JLabel heading = Lettering.cutLine(texts.get("cases.evidence"), Styles.SECTION);
        head.add(heading, "wmin 0");
        head.add(link("cases.evidence.add.finding", Prefilled::findingOf));
        head.add(link("cases.evidence.add.cause", Prefilled::causeOf));
        return head;
    }

    private JButton link(String key, Function<Id<Incident>, Prefilled> sheet) {
        return Buttons.link(
                Caption.of(texts.get(key)), () -> doing.write().accept(sheet.apply(Id.parse(shown.incident()))));
    }

    void show(CaseLines lines) {
        boolean another = !lines.incident().equals(shown.incident());
        shown = lines;
        EvidenceLines evidence = lines.evidence();
        boolean noRows = evidence.rows().isEmpty();
        boolean noHeads = evidence.heads().isEmpty();
        none.setText(texts.get(
                noRows && noHeads
                        ? "cases.evidence.none"
                        : noRows ? "cases.evidence.no_findings" : "cases.evidence.no_causes"));
        none.setVisible(noRows || noHeads);
        table.show(evidence, another);
        table.setVisible(!evidence.isEmpty());
        inHand.setVisible(!noHeads);
        if (another) {
            because(false);
            inHand.setText(texts.get("cases.evidence.keys"));
        } else if (!inHand.getText().equals(texts.get("cases.evidence.keys"))) {
            reads(table.inHand());
        }
        revalidate();
    }

    private void reads(String said) {
        inHand.setText(said.isEmpty() ? texts.get("cases.evidence.keys") : said);
    }

    private void asksWhy() {
        EvidenceLines.Cell cell =
                shown.evidence().rows().get(table.row()).cells().get(table.column());
        if (cell.speaks() == null) {
            inHand.setText(texts.get("cases.why.first"));
            return;
        }
        asksWhy(pair(table.row(), table.column()), about(table.row(), table.column()), cell.why());
    }

    private void asksWhy(Evidence.Pair pair, Object[] ofPair, String before) {
        because(false);
        asked = pair;
        about = ofPair;
        was = before;
        why.note("");
        opens(notWritten.getOrDefault(asked, was));
        why.takeFocus();
    }

    private void opens(String text) {
        why.load(text);
        why.setVisible(true);
        revalidate();
        validate();
    }

    private void leaves() {
        notWritten.remove(asked);
        ends();
        table.requestFocusInWindow();
    }

    /**
     * Whatever stands in the field is written when it is left, so that none of it is lost; Escape leaves it as it was.
     *
     * @param entered by Enter, so that the focus comes back where it could not be written
     */
    private void because(boolean entered) {
        Evidence.Pair pair = asked;
        if (!why.isVisible() || pair == null) {
            return;
        }
        String typed = why.text().strip();
        boolean changed = !typed.equals(was);
        ends();
        notWritten.remove(pair);
        if (changed) {
            actions.because(pair, typed, said -> again(pair, typed, said, entered), about);
        }
    }

    /** It could not be written: the field stands there again with what was typed, unless another cell is looked at by now. */
    private void again(Evidence.Pair pair, String typed, String said, boolean entered) {
        notWritten.put(pair, typed);
        if (!why.isVisible() && pair.equals(asked) && shows(pair)) {
            why.stop(said);
            opens(typed);
            if (entered) {
                why.takeFocus();
            }
        }
    }

    private boolean shows(Evidence.Pair pair) {
        return shown.evidence().rows().stream().anyMatch(row -> row.finding().equals(pair.finding()));
    }

    private void ends() {
        why.setVisible(false);
        revalidate();
    }

    private Object[] about(int row, int column) {
        return new Object[] {
            shown.mark(),
            shown.evidence().rows().get(row).lead(),
            shown.evidence().heads().get(column).statement()
        };
    }

    private Evidence.Pair pair(int row, int column) {
        return new Evidence.Pair(
                shown.evidence().rows().get(row).finding(),
                shown.evidence().heads().get(column).cause());
    }

    /** What the table asks for. */
    private final class Asks implements EvidenceTable.Asked {
        @Override
        public void towards(int row, int column, Speaks way) {
            actions.towards(pair(row, column), way, about(row, column));
        }

        @Override
        public void takeAway(int row, int column) {
            actions.takeAway(pair(row, column), about(row, column));
        }

        @Override
        public void open(int row, int column) {
            int rows = shown.evidence().rows().size();
            EvidenceLines.Head head = shown.evidence().heads().get(column);
            if (row < rows) {
                asksWhy();
            } else if (row == rows) {
                doing.write().accept(Prefilled.calling(head.cause()));
            } else {
                doing.write().accept(Prefilled.testing(head.cause()));
            }
        }

        @Override
        public void menu(int row, int column, Rectangle at) {
            menuOf(row, column).show(table, at);
        }
    }

    WeighMenu menuOf(int row, int column) {
        EvidenceLines.Head head = shown.evidence().heads().get(column);
        WeighMenu menu = new WeighMenu(texts);
        if (row < shown.evidence().rows().size()) {
            EvidenceLines.Row finding = shown.evidence().rows().get(row);
            EvidenceLines.Cell cell = finding.cells().get(column);
            boolean weighed = cell.speaks() != null;
            Evidence.Pair pair = pair(row, column); // now: another incident may be shown when an item is chosen
            Object[] of = about(row, column);
            menu.weigh(speaks -> actions.speaks(pair, speaks, of));
            menu.way("cases.menu.why", weighed, () -> asksWhy(pair, of, cell.why()));
            menu.way("cases.menu.away", weighed, () -> actions.takeAway(pair, of));
            menu.way(
                    "cases.menu.finding",
                    true,
                    () -> doing.correct().accept(finding.finding().text()));
        }
        menu.way("cases.menu.call", true, () -> doing.write().accept(Prefilled.calling(head.cause())));
        menu.way("cases.menu.test", true, () -> doing.write().accept(Prefilled.testing(head.cause())));
        menu.way(
                "cases.menu.cause",
                true,
                () -> doing.correct().accept(head.cause().text()));
        return menu;
    }
}
