package witnessmark.wording;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Span;
import witnessmark.cost.result.Switches;
import witnessmark.domain.CostLine;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.quantity.Money;

/** Words a season in money, the same on the screen and on paper. */
public final class SeasonWords {
    /** So many kinds of part are named in the sentence. */
    private static final int NAMED = 2;

    private final Texts texts;
    private final Measures measures;
    private final MoneyWords money;

    public SeasonWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.money = new MoneyWords(texts, measures);
    }

    /**
     * One figure of a season.
     *
     * @param label what it is
     * @param amount how much
     * @param within whether it is a part of the one above it
     */
    public record Figure(String label, Money amount, boolean within) {}

    /** Where all money spent went, whatever the total of failures takes in. Parts of a figure stand under it. */
    public List<Figure> figures(SeasonCost cost) {
        List<Figure> figures = new ArrayList<>();
        figures.add(figure("planned", cost.budget(), false));
        figures.add(figure("spent", cost.spent(), false));
        figures.add(figure("failures", cost.cash(), true));
        figures.add(figure("missed", cost.missed(), true));
        figures.add(figure("spoiled", cost.spoiled(), true));
        figures.add(figure("running", cost.runningCosts(), true));
        figures.add(figure("kept", cost.kept(), true));
        if (!cost.broughtIn().isNone()) {
            figures.add(figure("brought", cost.broughtIn().negated(), true));
        }
        figures.add(figure("committed", cost.committed(), false));
        figures.add(figure("income", cost.income(), false));
        return figures;
    }

    private Figure figure(String key, Money amount, boolean within) {
        return new Figure(texts.get("season.money." + key), amount, within);
    }

    /** {@code INC-05 Big end no. 3 again}. */
    public String name(Incident incident) {
        return new IncidentWords(texts, measures).name(incident);
    }

    /** {@code INC-05}, or what it was where it has no mark. */
    public String mark(Incident incident) {
        return incident.mark().isBlank() ? incident.title() : incident.mark();
    }

    /** A day, without its year where that is the season's. */
    public String day(SeasonSpan season, LocalDate day) {
        return season.first().getYear() == season.last().getYear()
                        && day.getYear() == season.last().getYear()
                ? measures.shortDate(day)
                : measures.date(day);
    }

    /** Who was paid, and the invoice; empty where neither is written down. */
    public String whom(CostLine line) {
        return line.invoice().isBlank()
                ? line.supplier()
                : line.supplier().isBlank()
                        ? line.invoice()
                        : texts.get("season.line.whom", line.supplier(), line.invoice());
    }

    /**
     * The season in a sentence.
     *
     * @param costs what each failure cost
     * @param switches what their total takes in
     * @param cost the season's own figures
     * @param kinds failures by the part that failed, dearest first
     */
    public String finding(List<IncidentCost> costs, Switches switches, SeasonCost cost, List<Bar> kinds, Facts facts) {
        String all = measures.money(cost.spent());
        List<Piece> pieces = pieces(costs);
        if (pieces.isEmpty() || switches.leaveOutAll(pieces)) {
            return texts.get(pieces.isEmpty() ? "season.finding.none" : "season.finding.leftOut", all);
        }
        Money none = Money.none(cost.spent().currency());
        Money total = sum(pieces.stream().filter(switches::takes)).orElse(none);
        Money labour = sum(pieces.stream().filter(switches::takes).filter(piece -> piece.place() == Place.LABOUR))
                .orElse(none);
        List<Bar> named =
                kinds.stream().filter(bar -> bar.subject() != null).limit(NAMED).toList();
        String head = labour.isNone()
                ? texts.get("season.finding", measures.money(total), all)
                : texts.get("season.finding.labour", measures.money(total), measures.amount(labour), all);
        if (named.isEmpty() || total.minor() <= 0) { // of what was got back whole there is no share
            return head;
        }
        Money together = named.stream().map(Bar::amount).reduce(none, Money::plus);
        return texts.get(
                "season.finding.parts",
                head,
                new RecordWords(texts)
                        .label(measures.all(named.stream()
                                .map(bar -> money.subject(facts, bar))
                                .toList())),
                money.share(together, total));
    }

    private static List<Piece> pieces(List<IncidentCost> costs) {
        return costs.stream().flatMap(cost -> cost.pieces().stream()).toList();
    }

    private static Optional<Money> sum(Stream<Piece> pieces) {
        return pieces.map(Piece::amount).reduce(Money::plus);
    }

    /** Failures that nobody has written own labour of; nothing where it is not counted anyway. */
    public Optional<String> unwritten(Facts facts, List<IncidentCost> costs, Switches switches) {
        List<String> names = costs.stream()
                .filter(cost -> switches.labour() && cost.unwritten().contains(Place.LABOUR))
                .map(cost -> mark(facts.of(Incident.class).get(cost.incident())))
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(texts.get("money.unwritten.labour", measures.all(names)));
    }

    /** What failures cost that a total leaves out, by columns; nothing where it leaves out none. */
    public Optional<String> leftOut(List<IncidentCost> costs, Switches switches) {
        List<String> left = new ArrayList<>();
        for (Place place : Switches.ALL.columns()) {
            sum(pieces(costs).stream().filter(piece -> piece.place() == place && !switches.takes(piece)))
                    .filter(sum -> !sum.isNone())
                    .ifPresent(sum -> left.add(money.columnOf(place, sum)));
        }
        return left.isEmpty() ? Optional.empty() : Optional.of(texts.get("season.leftOut", measures.row(left)));
    }

    /**
     * What a total rests on, how far it could lie apart, what it is for an hour run, and what is in no total; of one that
     * leaves out all that is written, only the first and the last.
     */
    public List<String> notes(List<IncidentCost> costs, Span span, Switches switches, SeasonCost cost) {
        List<String> notes = new ArrayList<>();
        Money total = sum(pieces(costs).stream().filter(switches::takes))
                .orElse(Money.none(cost.spent().currency()));
        if (!switches.leaveOutAll(pieces(costs))) {
            notes.add(texts.get("season.total.span", measures.money(total), money.span(span)));
        }
        notes.add(money.restsOn(switches));
        if (cost.running().millis() > 0 && !total.isNone()) {
            String each = money.perHour(total, cost.running());
            notes.add(
                    cost.provision() == null
                            ? texts.get("season.perHour", each, measures.hours(cost.running()))
                            : texts.get(
                                    "season.perHour.provision",
                                    each,
                                    measures.hours(cost.running()),
                                    measures.money(cost.provision())));
        }
        if (!cost.noRate().isEmpty()) {
            notes.add(texts.get(
                    "money.no_rate",
                    measures.row(cost.noRate().stream().map(measures::money).toList())));
        }
        return notes;
    }
}
