package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.KindCost;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Switches;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonAsked;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.logbook.money.SeeSeason;
import witnessmark.quantity.Money;

/** What a season cost, what failures took of it, and what they went on. */
@Command(name = "cost", mixinStandardHelpOptions = true)
final class Cost implements Callable<Integer> {
    private static final Set<String> SWITCHES = new TreeSet<>(Set.of("labour", "missed", "spoiled", "shared", "due"));

    /** What went on kinds of part, which is more than failures. */
    private static final String KIND = "kind";

    @Mixin
    private Open open = new Open();

    @Option(names = "--season", paramLabel = "SEASON", descriptionKey = "command.cost.season")
    private @Nullable String season;

    @Option(names = "--by", paramLabel = "WHAT", descriptionKey = "command.cost.by", defaultValue = "incident")
    @SuppressWarnings("NullAway.Init") // has a default
    private String by;

    @Option(names = "--without", paramLabel = "WHAT", split = ",", descriptionKey = "command.cost.without")
    private List<String> without = List.of();

    @Option(names = "--with", paramLabel = "WHAT", split = ",", descriptionKey = "command.cost.with")
    private List<String> with = List.of();

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--print", paramLabel = "FILE", descriptionKey = "command.cost.print")
    private @Nullable Path print;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    Cost(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "cost", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        Optional<SeasonSpan> asked = season == null ? Optional.of(SeeSeason.now(view)) : SeeSeason.named(view, season);
        Optional<BarsBy> under = by(by);
        Optional<String> odd = odd();
        if (asked.isEmpty()) {
            return refuse(answer, "command.cost.season.unknown", String.valueOf(season));
        }
        if (under.isEmpty()) {
            return refuse(answer, "command.cost.by.unknown", by);
        }
        if (odd.isPresent()) {
            return answer.refuse(
                    tools.texts().get("command.cost.switch.unknown", odd.get(), String.join(", ", SWITCHES)),
                    Exit.USAGE);
        }
        if (print != null) {
            SeasonAsked which = new SeasonAsked(asked.get().name(), switches(), under.get());
            return answer.wrote(tools.seasonSheet().write(desk, which, print), "pages", "command.cost.printed", print);
        }
        SeasonPage page = SeeSeason.of(view, asked.get(), switches(), under.get());
        if (json) {
            answer.print(asJson(answer, view, page));
        } else {
            print(answer, view, page);
        }
        return Exit.WORKED;
    }

    private int refuse(Answer answer, String key, String word) {
        return answer.refuse(tools.texts().get(key, word), Exit.USAGE);
    }

    private static Optional<BarsBy> by(String word) {
        return switch (word) {
            case "incident" -> Optional.of(BarsBy.INCIDENT);
            case "cause" -> Optional.of(BarsBy.CAUSE_AREA);
            case "part" -> Optional.of(BarsBy.PART_KIND);
            case "event" -> Optional.of(BarsBy.EVENT);
            case "car" -> Optional.of(BarsBy.CAR);
            case "engine" -> Optional.of(BarsBy.ENGINE);
            case KIND -> Optional.of(BarsBy.INCIDENT);
            default -> Optional.empty();
        };
    }

    private Optional<String> odd() {
        return java.util.stream.Stream.concat(with.stream(), without.stream())
                .filter(word -> !SWITCHES.contains(word))
                .findFirst();
    }

    private Switches switches() {
        Switches usual = Switches.USUAL;
        return new Switches(
                on("labour", usual.labour()),
                on("missed", usual.missed()),
                on("spoiled", usual.spoiled()),
                on("shared", usual.allocated()),
                on("due", usual.planned()));
    }

    private boolean on(String word, boolean usually) {
        return with.contains(word) || usually && !without.contains(word);
    }

    private void print(Answer answer, View view, SeasonPage page) {
        CostText text = new CostText(tools);
        SeasonCost cost = page.cost();
        answer.line(tools.texts()
                .get(
                        "command.cost.heading",
                        cost.season().name(),
                        tools.measures().date(view.day()),
                        cost.spent().currency().getCurrencyCode()));
        text.figures(cost).forEach(answer::line);
        answer.line("");
        text.said(page, failedParts(view, page), view.facts()).forEach(answer::line);
        answer.line("");
        answer.line(text.heading(page.switches().columns()));
        for (Failure failure : page.failures()) {
            answer.line(text.failure(page.switches().columns(), failure, page.switches()));
        }
        if (by.equals(KIND)) {
            answer.line("");
            text.kinds(page.kinds()).forEach(answer::line);
        }
        if (page.by() != BarsBy.INCIDENT) {
            answer.line("");
            for (Bar bar : page.bars()) {
                answer.line(text.bar(view.facts(), bar, page.total()));
            }
        }
    }

    private static List<Bar> failedParts(View view, SeasonPage page) {
        return page.by() == BarsBy.PART_KIND
                ? page.bars()
                : SeeSeason.of(view, page.cost().season(), page.switches(), BarsBy.PART_KIND)
                        .bars();
    }

    private ObjectNode asJson(Answer answer, View view, SeasonPage page) {
        CostText text = new CostText(tools);
        ObjectNode root = answer.node();
        SeasonCost cost = page.cost();
        root.put("asOf", view.day().toString());
        root.put("season", cost.season().name());
        root.put("currency", cost.spent().currency().getCurrencyCode());
        put(root, "budget", cost.budget());
        put(root, "spent", cost.spent());
        put(root, "committed", cost.committed());
        put(root, "keptForLater", cost.kept());
        put(root, "broughtIn", cost.broughtIn());
        put(root, "income", cost.income());
        put(root, "running", cost.runningCosts());
        ObjectNode counted = root.putObject("counted");
        counted.put("labour", page.switches().labour())
                .put("missed", page.switches().missed())
                .put("spoiled", page.switches().spoiled())
                .put("spentEitherWay", page.switches().allocated())
                .put("dueAnyway", page.switches().planned());
        root.put("runningMillis", cost.running().millis());
        ObjectNode failures = root.putObject("failures");
        put(failures, "cash", cost.cash());
        put(failures, "labour", cost.labour());
        put(failures, "missed", cost.missed());
        put(failures, "spoiled", cost.spoiled());
        put(failures, "total", page.total());
        put(failures, "lowest", page.span().low());
        put(failures, "highest", page.span().high());
        ArrayNode each = root.putArray("incidents");
        page.failures().forEach(failure -> IncidentMoney.add(each.addObject(), failure, page.switches()));
        ArrayNode bars = root.putArray("bars");
        for (Bar bar : page.bars()) {
            ObjectNode node = bars.addObject();
            node.put("of", text.subject(view.facts(), bar));
            put(node, "amount", bar.amount());
        }
        ArrayNode kinds = root.putArray("kinds");
        for (KindCost kind : page.kinds()) {
            ObjectNode node = kinds.addObject();
            node.put("kind", kind.kind() == null ? null : kind.kind().code());
            put(node, "due", kind.sumDue());
            put(node, "atFailures", kind.sumBought());
            put(node, "restOfFailures", kind.sumRest());
            put(node, "together", kind.together());
        }
        ArrayNode noRate = root.putArray("withoutRate");
        cost.noRate().forEach(missing -> noRate.add(missing.text()));
        root.put("by", by.equals(KIND) ? KIND : page.by().name().toLowerCase(Locale.ROOT));
        return root;
    }

    /** An amount as its decimal text, exact in every reader. */
    static void put(ObjectNode node, String name, Money money) {
        node.put(name, money.units().toPlainString());
    }
}
