package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Incident;
import witnessmark.quantity.RunningTime;

/** Words what was decided, the other ways with what they would have cost, and what came of it. */
public final class DecisionWords {
    private static final long MINUTE = 60_000;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final SeasonWords season;

    public DecisionWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.season = new SeasonWords(texts, measures);
    }

    /** What was decided and by whom, with its price; that it is open. */
    public String taken(Decision decision, List<DecisionOption> options) {
        if (decision.decided() == null) {
            return texts.get("season.decision.open");
        }
        String option = options.stream()
                .filter(DecisionOption::taken)
                .findFirst()
                .map(this::priced)
                .orElseGet(() -> texts.get("season.decision.noOption"));
        return decision.decidedBy().isBlank() ? option : texts.get("season.decision.by", option, decision.decidedBy());
    }

    /** The ways that were not taken, each with its price. */
    public List<String> others(List<DecisionOption> options) {
        return options.stream()
                .filter(option -> !option.taken())
                .map(this::priced)
                .toList();
    }

    /** Who was asked, or that nobody was. */
    public String asked(Decision decision) {
        return decision.adviser().isBlank() ? texts.get("season.decision.nobody") : decision.adviser();
    }

    /** {@code renew 272.00 EUR and 6 h}. */
    private String priced(DecisionOption option) {
        List<String> price = new ArrayList<>();
        if (option.money() != null && !option.money().isNone()) {
            price.add(measures.money(option.money()));
        }
        Integer minutes = option.minutes();
        if (minutes != null && minutes > 0) {
            price.add(measures.roughHours(new RunningTime(minutes * MINUTE)));
        }
        return price.isEmpty()
                ? option.name()
                : texts.get("season.decision.priced", option.name(), measures.all(price));
    }

    /**
     * What came of it; empty while it is open and nothing has.
     *
     * @param led the incident it led to, or null
     * @param cost what that cost, or null
     * @param switches what its total takes in
     */
    public String cameOf(Decision decision, @Nullable Incident led, @Nullable IncidentCost cost, Switches switches) {
        List<String> said = new ArrayList<>();
        if (decision.verdict() != null) {
            said.add(records.word(decision.verdict()));
        }
        if (led != null && cost != null) {
            said.add(
                    cost.hasTotal(switches)
                            ? texts.get("season.decision.cost", season.mark(led), measures.money(cost.total(switches)))
                            : texts.get(
                                    cost.isUnwritten() ? "season.decision.unwritten" : "season.decision.leftOut",
                                    season.mark(led)));
        }
        if (!decision.outcome().isBlank()) {
            said.add(decision.outcome());
        }
        if (said.isEmpty()) {
            return decision.decided() == null ? "" : texts.get("season.decision.notYet");
        }
        String all = said.get(0);
        for (String each : said.subList(1, said.size())) {
            all = texts.get("season.colon", all, each);
        }
        return all;
    }
}
