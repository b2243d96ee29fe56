package witnessmark.desktop.bank;

import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.IncomeLine;
import witnessmark.logbook.bank.Reconciled;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Lines of statements that are matched with nothing, what each most likely pays, and costs on no statement. */
final class MatchPage implements Aside {
    private static final String LINES = "lines";
    private static final String LEFT = "left";

    private final Texts texts;
    private final Measures measures;
    private final Work work;
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));
    private final JLabel count = Lettering.cutLine(" ", Styles.SECTION);
    private final JPanel sides = new JPanel(new CardLayout());
    private final JButton other;
    private int leftOver;
    private boolean onLeft;
    private final SheetTable<MatchLine> lines;
    private final SheetTable<LeftOver> left;
    private final FieldBox because;
    private final JButton one;
    private final JButton all;
    private final JButton aside;

    /**
     * What can be done.
     *
     * @param agree matches lines with what is proposed for them
     * @param setAside sets a line aside with a reason
     * @param takeIn asks for another statement
     * @param close takes the page away
     * @param look holds statements against costs again, and shows it here
     */
    record Work(
            Consumer<List<Reconciled.Line>> agree,
            BiConsumer<Reconciled.Line, String> setAside,
            Runnable takeIn,
            Runnable close,
            Runnable look) {}

    MatchPage(SheetTools tools, Measures measures, Work work) {
        this.texts = tools.texts();
        this.measures = measures;
        this.work = work;
        this.because = new FieldBox(Caption.of(texts.get("bank.because")));
        this.one = Buttons.plain(Caption.of(texts.get("bank.match.one")), this::agreeToOne);
        this.all = Styles.as(Styles.MAIN, Buttons.plain(Caption.of(texts.get("bank.match.all")), this::agreeToAll));
        this.aside = Buttons.plain(Caption.of(texts.get("bank.aside")), this::putAside);
        this.lines = new SheetTable<>(
                texts.get("bank.open.lines"),
                List.of(
                        Column.<MatchLine, LocalDate>text(texts.get("bank.day"), MatchLine::day, MatchLine::when)
                                .wide(150),
                        Column.<MatchLine, Long>figure(texts.get("bank.amount"), MatchLine::amount, MatchLine::minor)
                                .wide(130),
                        Column.<MatchLine>text(texts.get("bank.words"), MatchLine::words)
                                .strong()
                                .wide(300)
                                .grow(),
                        Column.<MatchLine>text(texts.get("bank.perhaps"), MatchLine::perhaps)
                                .wide(280)
                                .grow()),
                line -> line.line().bank().id());
        this.left = new SheetTable<>(
                texts.get("bank.left"),
                List.of(
                        Column.<LeftOver, LocalDate>text(texts.get("bank.day"), LeftOver::day, LeftOver::when)
                                .wide(150),
                        Column.<LeftOver, Long>figure(texts.get("bank.amount"), LeftOver::amount, LeftOver::minor)
                                .wide(130),
                        Column.<LeftOver>text(texts.get("bank.what"), LeftOver::what)
                                .strong()
                                .wide(300)
                                .grow()),
                LeftOver::number);
        this.other = Buttons.plain(Caption.of(texts.get("bank.to.left", 0)), this::turn);
        lines.with(tools, "bank.match");
        left.with(tools, "bank.left");
        lines.onOpen(line -> work.agree().accept(List.of(line.line())));
        lines.onSelect(this::chosen);
        because.onEnter(this::putAside);
        page.setOpaque(false);
        page.add(layOut(), "grow");
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "close", work.close());
    }

    @Override
    public String heading() {
        return texts.get("bank.match");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public List<String> help() {
        return List.of("help.match");
    }

    @Override
    public JComponent firstFocus() {
        return lines.table();
    }

    /** A line was matched or set aside, or that was taken back: told once it is written. */
    @Override
    public void changed() {
        work.look().run();
    }

    SheetTable<MatchLine> lines() {
        return lines;
    }

    SheetTable<LeftOver> left() {
        return left;
    }

    FieldBox because() {
        return because;
    }

    /** Shows how it stands now. */
    void show(Reconciled found) {
        List<MatchLine> open = found.lines().stream()
                .filter(line -> !line.settled())
                .map(this::line)
                .toList();
        lines.show(open);
        List<LeftOver> over = leftOver(found);
        left.show(over);
        leftOver = over.size();
        say();
        all.setEnabled(open.stream().anyMatch(line -> line.line().proposed()));
        if (!open.isEmpty() && lines.selected() == null) {
            lines.table().setRowSelectionInterval(0, 0);
        }
        chosen(lines.selected());
    }

    private MatchLine line(Reconciled.Line line) {
        return new MatchLine(line, measures.date(line.bank().fact().day()), measures.money(line.left()), perhaps(line));
    }

    private String perhaps(Reconciled.Line line) {
        Entry<CostLine> cost = line.cost();
        if (cost != null) {
            return texts.get(
                    "bank.perhaps.what",
                    cost.fact().what(),
                    measures.date(cost.fact().day()));
        }
        Entry<IncomeLine> earning = line.earning();
        return earning == null
                ? ""
                : texts.get(
                        "bank.perhaps.what",
                        earning.fact().what(),
                        measures.date(earning.fact().day()));
    }

    private List<LeftOver> leftOver(Reconciled found) {
        List<LeftOver> over = new ArrayList<>();
        found.costs()
                .forEach(cost -> over.add(leftOver(
                        over.size() + 1,
                        cost.fact().day(),
                        cost.fact().paid().negated(),
                        cost.fact().what())));
        found.income()
                .forEach(income -> over.add(leftOver(
                        over.size() + 1,
                        income.fact().day(),
                        income.fact().amount(),
                        income.fact().what())));
        return over;
    }

    private LeftOver leftOver(int number, LocalDate day, Money amount, String what) {
        return new LeftOver(number, measures.date(day), day, measures.money(amount), amount.minor(), what);
    }

    private Sheet layOut() {
        Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "");
        sheet.add(count, "wmin 0, wrap");
        sheet.add(Lettering.paragraph(texts.get("bank.match.about"), Styles.FIELD_LABEL), "growx, wmin 0, wrap 4");
        sides.setOpaque(false);
        sides.add(linesSide(), LINES);
        sides.add(left, LEFT);
        sheet.add(sides, "grow, push, wrap");
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8, fillx", "[][grow,right][]", ""));
        foot.setOpaque(false);
        foot.add(other);
        foot.add(Buttons.plain(Caption.of(texts.get("bank.another")), work.takeIn()), "cell 1 0");
        foot.add(Buttons.plain(Caption.of(texts.get("bank.close")), work.close()), "cell 2 0");
        sheet.add(foot, "growx");
        return sheet;
    }

    private JPanel linesSide() {
        JPanel side = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill][]"));
        side.setOpaque(false);
        side.add(lines, "grow, push, hmin 120, wrap");
        JPanel ways =
                new JPanel(new FormLayout("insets 0, gap 8, fillx", "[0:320:,grow 0][][grow,right][]", "[bottom]"));
        ways.setOpaque(false);
        ways.add(because, "growx");
        ways.add(aside, "aligny top, gaptop 20");
        ways.add(one, "cell 2 0, aligny top, gaptop 20");
        ways.add(all, "cell 3 0, aligny top, gaptop 20");
        side.add(ways, "growx");
        return side;
    }

    /** One of the two lists at a time: both would be too low to read on a small screen. */
    private void turn() {
        onLeft = !onLeft;
        ((CardLayout) sides.getLayout()).show(sides, onLeft ? LEFT : LINES);
        say();
        (onLeft ? left : lines).table().requestFocusInWindow();
    }

    private void say() {
        int open = lines.shown().size();
        count.setText(onLeft ? texts.get("bank.left.count", leftOver) : texts.get("bank.open", open));
        other.setText(Caption.of(onLeft ? texts.get("bank.to.lines", open) : texts.get("bank.to.left", leftOver))
                .text());
    }

    private void chosen(@Nullable MatchLine line) {
        one.setEnabled(line != null && line.line().proposed());
        aside.setEnabled(line != null);
    }

    private void agreeToOne() {
        MatchLine line = lines.selected();
        if (line != null) {
            work.agree().accept(List.of(line.line()));
        }
    }

    private void agreeToAll() {
        work.agree().accept(lines.shown().stream().map(MatchLine::line).toList());
    }

    /** With a reason: a line that is set aside without one cannot be understood next year. */
    private void putAside() {
        MatchLine line = lines.selected();
        if (line == null) {
            return;
        }
        if (because.text().isBlank()) {
            because.stop(texts.get("bank.because.needed"));
            because.takeFocus();
            return;
        }
        because.note("");
        work.setAside().accept(line.line(), because.text().strip());
        because.load("");
    }
}
