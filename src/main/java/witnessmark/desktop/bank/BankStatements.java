package witnessmark.desktop.bank;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.BankLine;
import witnessmark.domain.BankMatch;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.StatementForm;
import witnessmark.logbook.bank.GuessForm;
import witnessmark.logbook.bank.Reconcile;
import witnessmark.logbook.bank.Reconciled;
import witnessmark.logbook.bank.Statement;
import witnessmark.logbook.bank.TakeStatement;
import witnessmark.logbook.port.StatementRows;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Texts;

/** Takes statements in and matches their lines. What was read is shown before anything of it is taken. */
public final class BankStatements {
    private static final Logger LOG = LoggerFactory.getLogger(BankStatements.class);

    private final BankContext context;
    private final Texts texts;
    private final Latest looking;
    private @Nullable MatchPage open;

    /** @param context what the pages stand on */
    public BankStatements(BankContext context) {
        this.context = context;
        this.texts = context.tools().texts();
        this.looking = new Latest(context.tools().tasks());
    }

    /** Asks for a statement and shows what is in it. */
    public void takeIn() {
        context.choose().get().ifPresent(this::read);
    }

    /** Reads a statement and shows what is in it. */
    void read(Path file) {
        String reading = texts.get("bank.reading", String.valueOf(file.getFileName()));
        context.window().say(reading);
        context.tools().tasks().run(reading, () -> look(file), this::shown, this::failed);
    }

    /**
     * A statement as far as it could be read.
     *
     * @param form how its columns are read, or null when nothing says
     * @param statement as it reads so, or null
     */
    private record Looked(
            Outcome<StatementRows> rows,
            @Nullable StatementForm form,
            @Nullable Statement statement) {}

    private Looked look(Path file) {
        Outcome<StatementRows> read = context.files().read(file);
        if (!read.didWork()) {
            return new Looked(read, null, null);
        }
        StatementRows rows = read.orThrow();
        Facts facts = context.logbook().view().facts();
        return GuessForm.of(facts, rows, lastAccount(facts))
                .map(form -> new Looked(read, form, TakeStatement.read(facts, rows, form, form.name())))
                .orElse(new Looked(read, null, null));
    }

    private void shown(Looked looked) {
        if (!looked.rows().didWork()) {
            context.refused().accept(looked.rows().problems());
            return;
        }
        StatementRows rows = looked.rows().orThrow();
        StatementForm form = looked.form();
        Statement statement = looked.statement();
        if (form == null || statement == null) {
            context.window()
                    .say(texts.get(
                            "bank.noForm", rows.file(), context.measures().row(rows.headings())));
            return;
        }
        context.window().say(texts.get("bank.read"));
        context.show().accept(new StatementPage(context, rows, form, statement, this::take));
    }

    /** The account the last statement was of. */
    private String lastAccount(Facts facts) {
        return facts.of(BankLine.class)
                .inForce()
                .map(line -> line.fact().account())
                .reduce((earlier, later) -> later)
                .orElse(texts.get("bank.account.usual"));
    }

    private void take(StatementRows rows, Statement statement, String account) {
        String why = texts.get("bank.why.taken", rows.file(), account);
        context.tools()
                .tasks()
                .write(
                        why,
                        () -> TakeStatement.write(context.logbook(), context.ids(), statement, why),
                        written -> taken(statement, written),
                        this::failed);
    }

    private void taken(Statement statement, Outcome<Written> written) {
        if (!written.didWork()) {
            context.refused().accept(written.problems());
            return;
        }
        context.window().changed();
        match();
        undoable("bank.taken", statement.fresh().size());
    }

    /** Shows what is matched with nothing. */
    public void match() {
        MatchPage page = new MatchPage(
                context.tools(),
                context.measures(),
                new MatchPage.Work(this::agree, this::setAside, this::takeIn, context.dismiss(), () -> look(() -> {})));
        open = page;
        look(() -> context.show().accept(page));
    }

    /** Holds statements against costs off the event thread, and shows it on the page in hand. */
    private void look(Runnable after) {
        looking.run(
                texts.get("bank.match"),
                () -> Reconcile.of(context.logbook().view()),
                found -> {
                    if (open != null) {
                        open.show(found);
                    }
                    after.run();
                },
                this::failed);
    }

    /** Matches lines with what is proposed for them. */
    private void agree(List<Reconciled.Line> lines) {
        List<Entry<BankMatch>> matches = lines.stream()
                .flatMap(line -> Reconcile.agreed(line, context.ids()).stream())
                .toList();
        if (!matches.isEmpty()) {
            write(texts.get("bank.why.matched", matches.size()), matches, "bank.matched", matches.size());
        }
    }

    /** Sets a line aside: it is no business of this logbook. */
    private void setAside(Reconciled.Line line, String because) {
        write(
                texts.get("bank.why.aside", line.bank().fact().text()),
                List.of(Reconcile.aside(line, because)),
                "bank.aside.done",
                line.bank().fact().text());
    }

    private void write(String why, List<? extends Entry<?>> entries, String said, Object blank) {
        context.tools()
                .tasks()
                .write(
                        why,
                        () -> context.logbook().write(why, entries),
                        written -> {
                            if (!written.didWork()) {
                                context.refused().accept(written.problems());
                                return;
                            }
                            context.window().changed(); // the page looks again
                            undoable(said, blank);
                        },
                        this::failed);
    }

    private void undoable(String key, Object blank) {
        context.window().say(texts.get(key, blank), Caption.of(texts.get("beforewego.undo")), context.undo());
    }

    private void failed(Throwable failure) {
        LOG.error("something about a statement did not work", failure);
        context.window().say(texts.get("beforewego.start.failed"));
    }
}
