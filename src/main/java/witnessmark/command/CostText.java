package witnessmark.command;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.KindCost;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.SeasonWords;

/** Lines of costs on a terminal. */
final class CostText {
    private static final int NAME = 44;
    private static final String KINDS = "%19s%19s%19s%17s";

    private final Tools tools;
    private final MoneyWords words;
    private final SeasonWords season;

    CostText(Tools tools) {
        this.tools = tools;
        this.words = new MoneyWords(tools.texts(), tools.measures());
        this.season = new SeasonWords(tools.texts(), tools.measures());
    }

    /** The season's own figures, as on its page. */
    List<String> figures(SeasonCost cost) {
        return season.figures(cost).stream()
                .map(figure -> "%-36s%17s"
                        .formatted(
                                (figure.within() ? "  " : "") + figure.label(),
                                tools.measures().amount(figure.amount())))
                .toList();
    }

    /**
     * The season in a sentence, and what its total rests on, as on its page.
     *
     * @param kinds failures by the part that failed, dearest first
     */
    List<String> said(SeasonPage page, List<Bar> kinds, Facts facts) {
        List<String> lines = new ArrayList<>();
        lines.add(season.finding(page.costs(), page.switches(), page.cost(), kinds, facts));
        List<String> notes = new ArrayList<>(season.notes(page.costs(), page.span(), page.switches(), page.cost()));
        season.leftOut(page.costs(), page.switches()).ifPresent(notes::add);
        season.unwritten(facts, page.costs(), page.switches()).ifPresent(notes::add);
        notes.forEach(note -> lines.add("  " + note));
        return lines;
    }

    /** What a bar stands for. */
    String subject(Facts facts, Bar bar) {
        return words.subject(facts, bar);
    }

    String heading(List<Place> columns) {
        StringBuilder line = new StringBuilder(" ".repeat(NAME));
        columns.forEach(column -> line.append("%17s".formatted(words.column(column))));
        return line.append("%17s".formatted(tools.texts().get("money.column.total")))
                .toString();
    }

    /** An incident in the columns of {@link #heading}. */
    String failure(List<Place> columns, Failure failure, Switches switches) {
        Incident incident = failure.incident().fact();
        StringBuilder line = new StringBuilder(fit(incident.mark() + "  " + incident.title()));
        for (Place column : columns) {
            line.append("%17s".formatted(words.in(column, failure.cost(), switches)));
        }
        return line.append("%17s".formatted(words.together(failure.cost(), switches)))
                .toString();
    }

    String bar(Facts facts, Bar bar, Money whole) {
        return (fit(tools.words().label(words.subject(facts, bar)))
                        + "%16s%8s  %s"
                                .formatted(
                                        tools.measures().amount(bar.amount()),
                                        words.share(bar.amount(), whole),
                                        words.perHour(bar.amount(), bar.running())))
                .stripTrailing();
    }

    /** What went on each kind of part, and what that is together. */
    List<String> kinds(List<KindCost> kinds) {
        List<String> lines = new ArrayList<>();
        lines.add(fit(words.kinds())
                + KINDS.formatted(
                        words.kindDue(),
                        words.kindBought(),
                        words.kindRest(),
                        tools.texts().get("money.column.total")));
        kinds.forEach(kind -> lines.add(kind(
                tools.words().label(words.kind(kind)),
                kind.sumDue(),
                kind.sumBought(),
                kind.sumRest(),
                kind.together())));
        kinds.stream().map(KindCost::home).findFirst().ifPresent(home -> {
            Money none = Money.none(home);
            lines.add(kind(
                    tools.texts().get("money.column.total"),
                    kinds.stream().map(KindCost::sumDue).reduce(none, Money::plus),
                    kinds.stream().map(KindCost::sumBought).reduce(none, Money::plus),
                    kinds.stream().map(KindCost::sumRest).reduce(none, Money::plus),
                    kinds.stream().map(KindCost::together).reduce(none, Money::plus)));
        });
        return lines;
    }

    private String kind(String name, Money... amounts) {
        Object[] words = Stream.of(amounts).map(tools.measures()::amount).toArray();
        return fit(name) + KINDS.formatted(words);
    }

    private static String fit(String text) {
        return text.length() < NAME ? "%-44s".formatted(text) : text.substring(0, NAME - 2) + "… ";
    }
}
