package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.CostLine;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.quantity.Money;
import witnessmark.wording.MoneyWords;

/** What one incident cost, line by line, and what would have prevented it. */
final class IncidentMoney {
    private final Tools tools;
    private final MoneyWords words;

    IncidentMoney(Tools tools) {
        this.tools = tools;
        this.words = new MoneyWords(tools.texts(), tools.measures());
    }

    void print(Consumer<String> out, Facts facts, IncidentPage page) {
        CostText text = new CostText(tools);
        out.accept("");
        out.accept(
                tools.texts().get("incidents.section.cost", page.cost().home().getCurrencyCode()));
        out.accept(text.heading(Switches.ALL.columns()));
        out.accept(text.failure(Switches.ALL.columns(), failure(page), Switches.USUAL));
        if (page.cost().hasTotal(Switches.USUAL)) {
            out.accept("  " + words.span(page.cost().span(Switches.USUAL)));
            out.accept("  " + words.restsOn(Switches.USUAL));
        } else {
            out.accept("  " + tools.words().label(words.whole(page.cost(), Switches.USUAL)));
        }
        for (Place column : Switches.ALL.columns()) {
            lines(out, facts, page, column);
        }
        out.accept("");
        out.accept(prevention(page));
    }

    private void lines(Consumer<String> out, Facts facts, IncidentPage page, Place column) {
        List<Piece> pieces = page.cost().pieces().stream()
                .filter(piece -> piece.place() == column)
                .toList();
        if (pieces.isEmpty()) {
            return;
        }
        out.accept("");
        out.accept(words.column(column));
        for (Piece piece : pieces) {
            CostLine line = facts.of(CostLine.class).get(piece.line());
            out.accept("  %-16s %-14s %-40s%14s"
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

    /** What it cost, and the lines behind that. */
    void put(ObjectNode root, Facts facts, IncidentPage page) {
        root.put("currency", page.cost().home().getCurrencyCode());
        add(root, failure(page), Switches.USUAL);
        boolean known = page.cost().hasTotal(Switches.USUAL);
        put(root, "lowest", known, page.cost().span(Switches.USUAL).low());
        put(root, "highest", known, page.cost().span(Switches.USUAL).high());
        ArrayNode lines = root.putArray("lines");
        for (Piece piece : page.cost().pieces()) {
            CostLine line = facts.of(CostLine.class).get(piece.line());
            ObjectNode node = lines.addObject();
            node.put("day", piece.day().toString())
                    .put("column", piece.place().name().toLowerCase(java.util.Locale.ROOT))
                    .put("category", line.category().code())
                    .put("what", line.what())
                    .put("dueAnyway", piece.planned())
                    .put("spentEitherWay", piece.allocated());
            Cost.put(node, "amount", piece.amount());
        }
    }

    /** An amount, or null where there is none. */
    private static void put(ObjectNode node, String name, boolean known, Money amount) {
        if (known) {
            Cost.put(node, name, amount);
        } else {
            node.putNull(name);
        }
    }

    private static String name(Place column) {
        return column.name().toLowerCase(java.util.Locale.ROOT);
    }

    /**
     * An incident in its columns. What nothing is written of is null and named under {@code unwritten}; where something is
     * and all of that is left out, it is null and named under {@code leftOut}.
     */
    static void add(ObjectNode node, Failure failure, Switches switches) {
        Incident incident = failure.incident().fact();
        node.put("incident", incident.mark())
                .put("title", incident.title())
                .put("at", incident.at().text())
                .put("severity", incident.severity().code());
        IncidentCost cost = failure.cost();
        List<String> unwritten = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (Place column : Switches.ALL.columns()) {
            boolean nothing = MoneyWords.isUnwritten(column, cost);
            boolean left = !nothing && cost.isLeftOut(column, switches);
            put(node, name(column), !nothing && !left, cost.column(column, switches));
            if (nothing || left) {
                (nothing ? unwritten : leftOut).add(name(column));
            }
        }
        put(node, "total", cost.hasTotal(switches), cost.total(switches));
        if (!cost.hasTotal(switches)) {
            (cost.isUnwritten() ? unwritten : leftOut).add("total");
        }
        unwritten.forEach(node.putArray("unwritten")::add);
        leftOut.forEach(node.putArray("leftOut")::add);
        Cost.put(node, "prevention", failure.prevention().money());
        node.put("preventionMinutes", failure.prevention().minutes())
                .put("preventionComplete", failure.prevention().complete());
    }
}
