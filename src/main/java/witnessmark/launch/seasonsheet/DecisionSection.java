package witnessmark.launch.seasonsheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.IncidentCost;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.money.Decided;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;
import witnessmark.wording.DecisionWords;

/** Words what was decided and what came of it, beside the other ways. */
final class DecisionSection {
    private final SeasonInk ink;
    private final SeasonPage page;
    private final DecisionWords words;

    DecisionSection(SeasonInk ink, SeasonPage page) {
        this.ink = ink;
        this.page = page;
        this.words = new DecisionWords(ink.texts(), ink.measures());
    }

    Section decisions() {
        return new Section(
                ink.say("decisions"),
                List.of(
                        Column.mark(ink.texts().get("season.column.day")),
                        Column.name(ink.texts().get("season.column.question"), 13),
                        Column.words(ink.texts().get("season.column.taken"), 11),
                        Column.words(ink.texts().get("season.column.others"), 13),
                        Column.words(ink.texts().get("season.column.cameOfIt"), 16)),
                page.decisions().stream().map(this::row).toList(),
                List.of());
    }

    private Row row(Decided decided) {
        Decision decision = decided.decision().fact();
        List<DecisionOption> options =
                decided.options().stream().map(Entry::fact).toList();
        @Nullable
        Incident led =
                decision.ledTo() == null ? null : ink.facts().of(Incident.class).get(decision.ledTo());
        @Nullable IncidentCost cost = decided.cost();
        return new Row(
                Weight.LINE,
                List.of(
                        Cell.of(ink.day(decision.asked().day())),
                        Cell.of(decision.question(), ink.say("decisions.asked", words.asked(decision))),
                        Cell.of(words.taken(decision, options)),
                        Cell.of(String.join("; ", words.others(options))),
                        Cell.of(words.cameOf(decision, led, cost, page.switches()))));
    }
}
