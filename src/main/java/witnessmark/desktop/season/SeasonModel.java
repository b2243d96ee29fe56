package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Decision;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.logbook.View;
import witnessmark.logbook.money.BudgetRow;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonAsked;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.logbook.money.SeeSeason;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words a season. The same answer always gives the same lines. */
final class SeasonModel {
    /** The columns of failures in their order. */
    static final List<Place> COLUMNS = Switches.ALL.columns();

    private static final long MINUTE = 60_000;

    private final Texts texts;
    private final Measures measures;
    private final HeadModel head;
    private final BarModel bars;
    private final TimelineModel timeline;
    private final DecisionModel decisions;
    private final BesideModel beside;

    SeasonModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.head = new HeadModel(texts, measures);
        this.bars = new BarModel(texts, measures);
        this.timeline = new TimelineModel(texts, measures);
        this.decisions = new DecisionModel(texts, measures);
        this.beside = new BesideModel(texts, measures);
    }

    /** Reads and words what is asked; off the event thread. */
    SeasonLines lines(View view, SeasonAsked asked) {
        SeasonPage page = SeeSeason.of(view, asked);
        Facts facts = view.facts();
        CostRows rows = new CostRows(texts, measures, facts, page);
        var kinds = SeeSeason.of(view, page.cost().season(), page.switches(), BarsBy.PART_KIND)
                .bars();
        List<BarLine> barLines = bars.lines(page, facts, rows);
        SettleModel settle = new SettleModel(texts, measures, facts);
        var line = timeline.line(page, facts, rows);
        Currency home = page.total().currency();
        return new SeasonLines(
                asked,
                page.cost().season().name(),
                page.beside().stream().map(each -> each.season().name()).toList(),
                texts.get("season.heading", page.cost().season().name(), measures.date(view.day())),
                home.getCurrencyCode(),
                page.failures().isEmpty()
                        && page.budget().isEmpty()
                        && page.cost().spent().isNone()
                        && page.decisions().isEmpty(),
                head.finding(page, kinds, facts),
                head.notes(page, facts),
                head.money(page),
                page.failures().stream()
                        .map(failure -> failure(failure, page, rows))
                        .toList(),
                barLines,
                page.kinds().stream().anyMatch(kind -> kind.kind() != null)
                        ? new KindModel(texts, measures).lines(page, rows)
                        : List.of(),
                barLines.stream().anyMatch(bar -> !bar.perHour().isEmpty()),
                line,
                timeline.words(line, page, rows),
                page.budget().stream().map(row -> budget(row, rows)).toList(),
                page.decisions().stream()
                        .map(each -> decisions.line(each, page.switches(), facts))
                        .toList(),
                settle.lines(page),
                settle.notes(page),
                page.income().stream()
                        .map(each -> rows.of(each.id(), each.fact()))
                        .toList(),
                beside.lines(page),
                minor -> measures.amount(new Money(minor, home)));
    }

    private FailureLine failure(Failure failure, SeasonPage page, CostRows rows) {
        var day = failure.incident().fact().at().day();
        return new FailureLine(
                failure.incident().id().text(),
                measures.shortDate(day),
                day,
                rows.name(failure.incident().id()),
                COLUMNS.stream()
                        .map(place -> rows.column(place, failure.cost(), page.switches()))
                        .toList(),
                rows.together(failure.cost(), page.switches()),
                prevention(failure.prevention()),
                measures(failure.cameOf()),
                rows.of(failure.cost(), page.switches()));
    }

    private String measures(List<Entry<Decision>> cameOf) {
        return cameOf.isEmpty()
                ? ""
                : measures.row(cameOf.stream().map(each -> each.fact().mark()).toList());
    }

    private String prevention(Failure.Kept kept) {
        if (kept.count() == 0) {
            return texts.get("season.prevention.none");
        }
        List<String> price = new ArrayList<>();
        if (!kept.money().isNone()) {
            price.add(measures.money(kept.money()));
        }
        if (kept.minutes() > 0) {
            price.add(measures.roughHours(new RunningTime(kept.minutes() * MINUTE)));
        }
        String all = price.isEmpty() ? texts.get("season.prevention.nothing") : measures.all(price);
        return texts.get("season.prevention", kept.count(), kept.complete() ? all : measures.atLeast(all));
    }

    private BudgetLine budget(BudgetRow row, CostRows rows) {
        Money left = row.planned().minus(row.spent());
        String event = row.event() == null
                ? texts.get("season.noEvent")
                : row.event().fact().name();
        return new BudgetLine(
                event,
                row.event() == null ? "" : row.event().fact().firstDay().toString(),
                row.car() == null
                        ? texts.get("season.allCars")
                        : row.car().fact().name(),
                rows.amount(row.planned()),
                rows.amount(row.spent()),
                rows.amount(left),
                behind(row, event, rows),
                left.minor() < 0 && !row.planned().isNone());
    }

    private Behind behind(BudgetRow row, String event, CostRows rows) {
        List<String> name = new ArrayList<>(List.of(event));
        if (row.car() != null) {
            name.add(texts.get("season.forCar", row.car().fact().name()));
        }
        if (row.pieces().isEmpty()) {
            name.add(texts.get("season.line.toSpend"));
            return new Behind(
                    measures.row(name),
                    rows.amount(row.planned()),
                    row.lines().stream().map(rows::of).toList());
        }
        return new Behind(
                measures.row(name),
                rows.amount(row.spent()),
                row.pieces().stream().map(rows::of).toList());
    }
}
