package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.StatementForm;
import witnessmark.logbook.Desk;
import witnessmark.logbook.bank.GuessForm;
import witnessmark.logbook.bank.Statement;
import witnessmark.logbook.bank.TakeStatement;
import witnessmark.logbook.port.StatementRows;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** Takes the lines of a bank's or bookkeeper's file into a logbook. */
@Command(name = "statement", mixinStandardHelpOptions = true)
final class TakeInStatement implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "command.statement.file")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path file;

    @Option(names = "--account", paramLabel = "NAME", descriptionKey = "command.statement.account")
    private @Nullable String account;

    @Option(names = "--keep-good-rows", descriptionKey = "command.keepgood")
    private boolean keepGoodRows;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    TakeInStatement(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.toWrite(new Answer(tools, "statement", json), this::work);
    }

    private int work(Desk desk, Answer answer) {
        Outcome<StatementRows> read = tools.statements().read(file);
        if (!read.didWork()) {
            return answer.didNot(read.problems());
        }
        StatementRows rows = read.orThrow();
        String named = account == null ? tools.texts().get("command.statement.account.usual") : account;
        Optional<StatementForm> form = GuessForm.of(desk.view().facts(), rows, named);
        if (form.isEmpty()) {
            return answer.refuse(
                    tools.texts()
                            .get(
                                    "command.statement.noForm",
                                    rows.file(),
                                    tools.measures().row(rows.headings())),
                    Exit.DID_NOT);
        }
        Statement statement = TakeStatement.read(desk.view().facts(), rows, form.get(), named);
        boolean held = !statement.unread().isEmpty() && !keepGoodRows;
        if (!held && !statement.fresh().isEmpty()) {
            Outcome<Written> written = TakeStatement.write(
                    desk, tools.ids(), statement, tools.texts().get("command.why.statement", rows.file(), named));
            if (!written.didWork()) {
                return answer.didNot(written.problems());
            }
        }
        say(answer, rows, statement, held);
        return held ? Exit.DID_NOT : statement.unread().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }

    private void say(Answer answer, StatementRows rows, Statement statement, boolean held) {
        if (json) {
            ObjectNode root = answer.node();
            root.put("taken", held ? 0 : statement.fresh().size())
                    .put("known", statement.known())
                    .put("linesOutsideTheTable", statement.odd().size());
            ArrayNode unread = root.putArray("unread");
            statement
                    .unread()
                    .forEach(row -> unread.addObject()
                            .put("line", row.line())
                            .put("heading", row.heading())
                            .put("text", row.text()));
            answer.print(root);
            return;
        }
        StatementForm form = statement.form();
        String amounts = form.amountColumn().isEmpty()
                ? tools.texts().get("command.statement.pair", form.inColumn(), form.outColumn())
                : form.amountColumn();
        Statement.DayRead day = statement.firstDay();
        answer.line(
                day == null
                        ? tools.texts()
                                .get("command.statement.form.noDay", form.dayColumn(), amounts, form.decimalSign())
                        : tools.texts()
                                .get(
                                        "command.statement.form",
                                        form.dayColumn(),
                                        day.written(),
                                        tools.measures().date(day.day()),
                                        amounts,
                                        form.decimalSign()));
        for (Statement.Unread row : statement.unread()) {
            answer.line(tools.texts().get("command.statement.unread", row.line(), row.text(), row.heading()));
        }
        answer.line(
                held
                        ? tools.texts()
                                .get("command.statement.held", statement.fresh().size())
                        : tools.texts()
                                .get(
                                        "command.statement.done",
                                        statement.fresh().size(),
                                        rows.file(),
                                        statement.known()));
    }
}
