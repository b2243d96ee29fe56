package witnessmark.desktop.bank;

import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
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
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.BankLine;
import witnessmark.domain.StatementForm;
import witnessmark.logbook.bank.Statement;
import witnessmark.logbook.bank.TakeStatement;
import witnessmark.logbook.port.StatementRows;
import witnessmark.wording.Texts;

/** What a statement holds, how it was read, and what of it is new. Nothing is taken before somebody says so. */
final class StatementPage implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(StatementPage.class);

    private final BankContext context;
    private final Texts texts;
    private final StatementRows rows;
    private final StatementForm form;
    private final Take take;
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));
    private final FieldBox account;
    private final JTextArea comesTo = Lettering.paragraph(" ", Styles.FIELD_LABEL);
    private final SheetTable<StatementLine> table;
    private final JButton takeIn;
    private final Latest reading;
    private Statement statement;
    /** What is shown is not of the account that is typed. */
    private boolean rereads;

    private boolean wanted;

    /** Takes what was read. */
    @FunctionalInterface
    interface Take {
        void take(StatementRows rows, Statement statement, String account);
    }

    /** @param statement as it reads for the account of the form */
    StatementPage(BankContext context, StatementRows rows, StatementForm form, Statement statement, Take take) {
        this.context = context;
        this.texts = context.tools().texts();
        this.rows = rows;
        this.form = form;
        this.take = take;
        this.account = new FieldBox(Caption.of(texts.get("bank.account")));
        this.table = new SheetTable<>(
                texts.get("bank.lines"),
                List.of(
                        Column.<StatementLine, LocalDate>text(
                                        texts.get("bank.day"), StatementLine::day, StatementLine::when)
                                .wide(170),
                        Column.<StatementLine, Long>figure(
                                        texts.get("bank.amount"), StatementLine::amount, StatementLine::minor)
                                .wide(130),
                        Column.<StatementLine>text(texts.get("bank.words"), StatementLine::words)
                                .strong()
                                .wide(520)
                                .grow()),
                StatementLine::number);
        this.reading = new Latest(context.tools().tasks());
        this.statement = statement;
        String all = statement.unread().isEmpty() ? "bank.take" : "bank.take.good";
        this.takeIn = Styles.as(Styles.MAIN, Buttons.plain(Caption.of(texts.get(all)), this::taking));
        table.with(context.tools(), "bank.statement");
        account.load(form.name());
        account.note(texts.get("bank.account.note"));
        account.onChange(this::reread);
        account.onEnter(this::taking);
        page.setOpaque(false);
        page.add(layOut(), "grow");
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "close", context.dismiss());
        FormKeys.bindWithin(page, Keys.menu(KeyEvent.VK_ENTER), "take", this::takeIfAny);
        show();
    }

    /** As the main button does, while there is anything to take. */
    private void takeIfAny() {
        if (takeIn.isEnabled()) {
            taking();
        }
    }

    @Override
    public String heading() {
        return texts.get("bank.statement");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public List<String> help() {
        return List.of("help.statement");
    }

    @Override
    public JComponent firstFocus() {
        return account.field();
    }

    private Sheet layOut() {
        Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "");
        sheet.add(Lettering.cutLine(rows.file(), Styles.SECTION), "wmin 0, wrap");
        sheet.add(Lettering.paragraph(howRead(), Styles.FIELD_LABEL), "growx, wmin 0, wrap 8");
        sheet.add(account, "growx 0, w 320!, wrap 8");
        sheet.add(comesTo, "growx, wmin 0, wrap 4");
        sheet.add(table, "grow, pushy, hmin 160, wrap");
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8, alignx right"));
        foot.setOpaque(false);
        foot.add(Buttons.plain(Caption.of(texts.get("bank.leave")), context.dismiss()));
        foot.add(takeIn);
        sheet.add(foot, "growx");
        return sheet;
    }

    private String howRead() {
        String amounts = form.amountColumn().isEmpty()
                ? texts.get("bank.form.pair", form.inColumn(), form.outColumn())
                : form.amountColumn();
        Statement.DayRead day = statement.firstDay();
        return day == null
                ? texts.get("bank.form.noDay", form.dayColumn(), amounts, form.decimalSign())
                : texts.get(
                        "bank.form",
                        form.dayColumn(),
                        day.written(),
                        context.measures().date(day.day()),
                        amounts,
                        form.decimalSign());
    }

    /** Every letter of another account reads its rows anew; what was read for another is dropped. */
    private void reread() {
        String account = named();
        rereads = true;
        reading.run(
                texts.get("bank.reading", rows.file()),
                () -> TakeStatement.read(context.logbook().view().facts(), rows, form, account),
                this::reread,
                failure -> {
                    LOG.error("a statement could not be read again", failure);
                    context.window().say(texts.get("beforewego.start.failed"));
                });
    }

    private void reread(Statement now) {
        statement = now;
        rereads = false;
        show();
        if (wanted) {
            wanted = false;
            taking();
        }
    }

    /** The account as typed; the one it had when nothing stands there. */
    private String named() {
        return account.text().isBlank() ? form.name() : account.text().strip();
    }

    private void show() {
        List<StatementLine> lines = new ArrayList<>();
        for (Statement.Unread row : statement.unread()) {
            lines.add(new StatementLine(
                    lines.size() + 1,
                    texts.get("bank.unread.line", row.line()),
                    LocalDate.MIN,
                    "",
                    Long.MIN_VALUE,
                    texts.get("bank.unread", row.text(), row.heading())));
        }
        for (BankLine line : statement.fresh()) {
            lines.add(new StatementLine(
                    lines.size() + 1,
                    context.measures().date(line.day()),
                    line.day(),
                    context.measures().money(line.amount()),
                    line.amount().minor(),
                    line.text()));
        }
        table.show(lines);
        String words = texts.get(
                statement.unread().isEmpty() ? "bank.comesTo" : "bank.comesTo.unread",
                statement.fresh().size(),
                statement.known(),
                statement.unread().size());
        comesTo.setText(words);
        comesTo.getAccessibleContext().setAccessibleName(words);
        takeIn.setToolTipText(Keys.words(Keys.menu(KeyEvent.VK_ENTER)));
        takeIn.setEnabled(!statement.fresh().isEmpty());
    }

    private void taking() {
        if (rereads) {
            wanted = true; // Enter came before its rows were read for this account
        } else if (!statement.fresh().isEmpty()) {
            take.take(rows, statement, named());
        }
    }
}
