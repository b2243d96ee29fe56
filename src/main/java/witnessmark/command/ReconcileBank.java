package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.domain.BankLine;
import witnessmark.domain.BankMatch;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.IncomeLine;
import witnessmark.logbook.Desk;
import witnessmark.logbook.bank.Reconcile;
import witnessmark.logbook.bank.Reconciled;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** Holds statements against costs and income, and matches what somebody agrees to. */
@Command(name = "reconcile", mixinStandardHelpOptions = true)
final class ReconcileBank implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Option(names = "--agree", descriptionKey = "command.reconcile.agree")
    private boolean agree;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    ReconcileBank(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "reconcile", json);
        return agree && asOf == null ? open.toWrite(answer, this::work) : open.with(answer, asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        Reconciled found = Reconcile.of(desk.view());
        int agreed = 0;
        if (agree) {
            List<Entry<BankMatch>> matches = found.lines().stream()
                    .flatMap(line -> Reconcile.agreed(line, tools.ids()).stream())
                    .toList();
            if (!matches.isEmpty()) {
                Outcome<Written> written =
                        desk.write(tools.texts().get("command.why.reconcile", matches.size()), matches);
                if (!written.didWork()) {
                    return answer.didNot(written.problems());
                }
            }
            agreed = matches.size();
            found = Reconcile.of(desk.view());
        }
        if (json) {
            answer.print(asJson(answer, found, agreed));
        } else {
            print(answer, found, agreed);
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, Reconciled found, int agreed) {
        if (agree) {
            answer.line(tools.texts().get("command.reconcile.agreed", agreed));
        }
        List<Reconciled.Line> open =
                found.lines().stream().filter(line -> !line.settled()).toList();
        answer.line(tools.texts().get("command.reconcile.lines", open.size()));
        for (Reconciled.Line line : open) {
            BankLine bank = line.bank().fact();
            answer.line("  %-16s %16s  %-40s  %s"
                    .formatted(
                            tools.measures().date(bank.day()),
                            tools.measures().amount(line.left()),
                            bank.text(),
                            proposed(line))
                    .stripTrailing());
        }
        answer.line(tools.texts().get("command.reconcile.costs", found.costs().size()));
        for (Entry<CostLine> cost : found.costs()) {
            answer.line("  %-16s %16s  %s"
                    .formatted(
                            tools.measures().date(cost.fact().day()),
                            tools.measures().amount(cost.fact().paid()),
                            cost.fact().what()));
        }
        answer.line(tools.texts().get("command.reconcile.income", found.income().size()));
        for (Entry<IncomeLine> income : found.income()) {
            answer.line("  %-16s %16s  %s"
                    .formatted(
                            tools.measures().date(income.fact().day()),
                            tools.measures().amount(income.fact().amount()),
                            income.fact().what()));
        }
    }

    private String proposed(Reconciled.Line line) {
        if (line.cost() != null) {
            CostLine cost = line.cost().fact();
            return tools.texts()
                    .get(
                            "command.reconcile.perhaps",
                            cost.what(),
                            tools.measures().date(cost.day()));
        }
        if (line.earning() != null) {
            IncomeLine income = line.earning().fact();
            return tools.texts()
                    .get(
                            "command.reconcile.perhaps",
                            income.what(),
                            tools.measures().date(income.day()));
        }
        return "";
    }

    private static ObjectNode asJson(Answer answer, Reconciled found, int agreed) {
        ObjectNode root = answer.node().put("agreed", agreed);
        ArrayNode lines = root.putArray("unmatchedLines");
        for (Reconciled.Line line : found.lines()) {
            if (!line.settled()) {
                BankLine bank = line.bank().fact();
                ObjectNode node = lines.addObject();
                node.put("account", bank.account())
                        .put("day", bank.day().toString())
                        .put("left", line.left().text())
                        .put("text", bank.text());
                if (line.cost() != null) {
                    node.put("perhaps", line.cost().fact().what());
                } else if (line.earning() != null) {
                    node.put("perhaps", line.earning().fact().what());
                }
            }
        }
        ArrayNode costs = root.putArray("costsOnNoStatement");
        found.costs()
                .forEach(cost -> costs.addObject()
                        .put("day", cost.fact().day().toString())
                        .put("paid", cost.fact().paid().text())
                        .put("what", cost.fact().what()));
        ArrayNode income = root.putArray("incomeOnNoStatement");
        found.income()
                .forEach(line -> income.addObject()
                        .put("day", line.fact().day().toString())
                        .put("amount", line.fact().amount().text())
                        .put("what", line.fact().what()));
        return root;
    }
}
