package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Money;
import witnessmark.wording.MoneyWords;

/** What one incident cost, line by line, and what would have prevented it. */
@Command(name = "incident", mixinStandardHelpOptions = true)
final class IncidentCostOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "INCIDENT", descriptionKey = "command.incident.mark")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String mark;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    IncidentCostOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "incident", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        Optional<IncidentPage> page =
                view.facts().of(Incident.class).named(mark).map(Entry::id).flatMap(id -> SeeIncident.of(view, id));
        if (page.isEmpty()) {
            return answer.didNot(
                    List.of(Problem.of(ProblemKind.NOT_FOUND, tools.words().one(Incident.class), mark)));
        }
        if (json) {
            answer.print(asJson(answer, view, page.get()));
        } else {
            print(answer, view, page.get());
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, View view, IncidentPage page) {
        CostText text = new CostText(tools);
        MoneyWords words = new MoneyWords(tools.texts(), tools.measures());
        Incident incident = page.incident().fact();
        answer.line(tools.texts()
                .get(
                        "command.incident.heading",
                        incident.mark(),
                        incident.title(),
                        tools.measures().fullMoment(incident.at()),
                        tools.words().word(incident.severity())));
        answer.line("");
        answer.line(text.heading(Switches.ALL.columns()));
        answer.line(text.failure(Switches.ALL.columns(), failure(page), Switches.USUAL));
        if (page.cost().isUnwritten(Switches.USUAL)) {
            answer.line("  " + tools.words().label(words.whole(page.cost(), Switches.USUAL)));
        } else {
            answer.line("  " + words.span(page.cost().span(Switches.USUAL)));
            answer.line("  " + words.restsOn(Switches.USUAL));
        }
        for (Place column : Switches.ALL.columns()) {
            lines(answer, view, page, words, column);
        }
        answer.line("");
        answer.line(prevention(page));
    }

    private void lines(Answer answer, View view, IncidentPage page, MoneyWords words, Place column) {
        List<Piece> pieces = page.cost().pieces().stream()
                .filter(piece -> piece.place() == column)
                .toList();
        if (pieces.isEmpty()) {
            return;
        }
        answer.line("");
        answer.line(words.column(column));
        for (Piece piece : pieces) {
            CostLine line = view.facts().of(CostLine.class).get(piece.line());
            answer.line("  %-16s %-14s %-40s%14s"
                    .formatted(
                            tools.measures().date(piece.day()),
                            tools.words().word(line.category()),
                            line.what(),
                            tools.measures().amount(piece.amount())));
        }
    }

    private String prevention(IncidentPage page) {
        Failure.Kept kept = page.kept();
        if (kept.count() == 0) {
            return tools.words().label(tools.texts().get("money.prevention.none"));
        }
        return tools.texts()
                .get(
                        kept.complete() ? "money.prevention" : "money.prevention.least",
                        kept.count(),
                        tools.measures().money(kept.money()),
                        tools.measures()
                                .number(
                                        java.math.BigDecimal.valueOf(kept.minutes())
                                                .divide(
                                                        java.math.BigDecimal.valueOf(60),
                                                        1,
                                                        java.math.RoundingMode.HALF_UP),
                                        1));
    }

    private static Failure failure(IncidentPage page) {
        return new Failure(page.incident(), page.cost(), page.kept(), List.of());
    }

    private ObjectNode asJson(Answer answer, View view, IncidentPage page) {
        ObjectNode root = answer.node();
        root.put("asOf", view.day().toString());
        root.put("currency", page.cost().home().getCurrencyCode());
        add(root, failure(page), Switches.USUAL);
        boolean known = !page.cost().isUnwritten(Switches.USUAL);
        put(root, "lowest", known, page.cost().span(Switches.USUAL).low());
        put(root, "highest", known, page.cost().span(Switches.USUAL).high());
        ArrayNode lines = root.putArray("lines");
        for (Piece piece : page.cost().pieces()) {
            CostLine line = view.facts().of(CostLine.class).get(piece.line());
            ObjectNode node = lines.addObject();
            node.put("day", piece.day().toString())
                    .put("column", piece.place().name().toLowerCase(java.util.Locale.ROOT))
                    .put("category", line.category().code())
                    .put("what", line.what())
                    .put("dueAnyway", piece.planned())
                    .put("spentEitherWay", piece.allocated());
            Cost.put(node, "amount", piece.amount());
        }
        return root;
    }

    /** An amount, or null where nobody wrote anything of it. */
    private static void put(ObjectNode node, String name, boolean written, Money amount) {
        if (written) {
            Cost.put(node, name, amount);
        } else {
            node.putNull(name);
        }
    }

    private static String name(Place column) {
        return column.name().toLowerCase(java.util.Locale.ROOT);
    }

    /** An incident in its columns; what nothing is written of is null and named under {@code unwritten}. */
    static void add(ObjectNode node, Failure failure, Switches switches) {
        Incident incident = failure.incident().fact();
        node.put("incident", incident.mark())
                .put("title", incident.title())
                .put("at", incident.at().text())
                .put("severity", incident.severity().code());
        IncidentCost cost = failure.cost();
        Switches.ALL.columns()
                .forEach(column ->
                        put(node, name(column), !MoneyWords.isUnwritten(column, cost), cost.column(column, switches)));
        put(node, "total", !cost.isUnwritten(switches), cost.total(switches));
        ArrayNode unwritten = node.putArray("unwritten");
        Switches.ALL.columns().stream()
                .filter(column -> MoneyWords.isUnwritten(column, cost))
                .forEach(column -> unwritten.add(name(column)));
        if (cost.isUnwritten(switches)) {
            unwritten.add("total");
        }
        Cost.put(node, "prevention", failure.prevention().money());
        node.put("preventionMinutes", failure.prevention().minutes())
                .put("preventionComplete", failure.prevention().complete());
    }
}
