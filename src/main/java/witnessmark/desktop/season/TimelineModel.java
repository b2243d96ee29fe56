package witnessmark.desktop.season;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import witnessmark.chart.SeasonLine;
import witnessmark.chart.SeasonLine.Size;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Puts events and incidents of a season on a line for each car. */
final class TimelineModel {
    /** Of the dearest failure. */
    private static final double LARGE = 0.5;

    private static final double MIDDLE = 0.1;

    private final Texts texts;
    private final Measures measures;

    TimelineModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    SeasonLine line(SeasonPage page, Facts facts, CostRows rows) {
        SeasonSpan season = page.cost().season();
        List<Entry<Event>> events = facts.of(Event.class)
                .inForce()
                .filter(event -> season.has(event.fact().firstDay()))
                .sorted(Comparator.comparing(event -> event.fact().firstDay()))
                .toList();
        Map<Id<Car>, List<Failure>> by = new HashMap<>();
        List<Failure> none = new ArrayList<>();
        for (Failure failure : page.failures()) {
            Id<Car> car = failure.incident().fact().car();
            if (season.has(failure.incident().fact().at().day())) {
                (car == null ? none : by.computeIfAbsent(car, id -> new ArrayList<>())).add(failure);
            }
        }
        List<SeasonLine.Row> all = new ArrayList<>();
        for (Entry<Car> car : facts.of(Car.class).inForce().toList()) {
            List<SeasonLine.Band> bands = bands(events, car.id(), facts);
            List<Failure> failures = by.getOrDefault(car.id(), List.of());
            if (!bands.isEmpty() || !failures.isEmpty()) {
                all.add(new SeasonLine.Row(
                        texts.get("season.car", car.fact().name()), bands, marks(failures, page, rows)));
            }
        }
        if (!none.isEmpty()) {
            all.add(new SeasonLine.Row(texts.get("season.noCar"), List.of(), marks(none, page, rows)));
        }
        return new SeasonLine(season.first().toEpochDay(), season.last().toEpochDay(), months(season), all);
    }

    /** The same in two sentences. */
    String words(SeasonLine line, SeasonPage page, CostRows rows) {
        long events = line.rows().stream()
                .flatMap(row -> row.bands().stream())
                .map(SeasonLine.Band::name)
                .distinct()
                .count();
        return page.failures().isEmpty()
                ? texts.get("season.line.none", (int) events)
                : texts.get(
                        "season.line.words",
                        (int) events,
                        page.failures().size(),
                        rows.name(page.failures().get(0).incident().id()));
    }

    private static List<SeasonLine.Band> bands(List<Entry<Event>> events, Id<Car> car, Facts facts) {
        return events.stream()
                .filter(event -> goes(facts, event.id(), car))
                .map(event -> new SeasonLine.Band(
                        event.fact().firstDay().toEpochDay(),
                        event.fact().lastDay().toEpochDay(),
                        event.fact().name().split(",", 2)[0]))
                .toList();
    }

    /** A car goes where it is entered; where no car is entered yet, all go. */
    private static boolean goes(Facts facts, Id<Event> event, Id<Car> car) {
        List<Entry<EventEntry>> entries =
                facts.of(EventEntry.class).where(entry -> entry.event().equals(event));
        return entries.isEmpty()
                || entries.stream().anyMatch(entry -> entry.fact().car().equals(car));
    }

    private List<SeasonLine.Mark> marks(List<Failure> failures, SeasonPage page, CostRows rows) {
        long dearest = page.failures().stream()
                .mapToLong(failure -> failure.cost().total(page.switches()).minor())
                .max()
                .orElse(0);
        return failures.stream()
                .sorted(Comparator.comparing(
                        failure -> failure.incident().fact().at()))
                .map(failure -> mark(failure, page.switches(), dearest, rows))
                .toList();
    }

    private SeasonLine.Mark mark(Failure failure, Switches switches, long dearest, CostRows rows) {
        Money total = failure.cost().total(switches);
        Incident incident = failure.incident().fact();
        Size size = size(total.minor(), dearest);
        LocalDate day = incident.at().day();
        String words = texts.get(
                "season.line.mark",
                measures.date(day),
                rows.name(failure.incident().id()),
                rows.whole(failure.cost(), switches));
        return new SeasonLine.Mark(
                day.toEpochDay(),
                size,
                size == Size.LARGE
                        ? texts.get(
                                "season.line.large",
                                rows.mark(failure.incident().id()),
                                measures.amount(total))
                        : "",
                words,
                failure.incident().id().text());
    }

    private static Size size(long total, long dearest) {
        return total > 0 && total >= LARGE * dearest
                ? Size.LARGE
                : total > 0 && total >= MIDDLE * dearest ? Size.MIDDLE : Size.SMALL;
    }

    private List<SeasonLine.Month> months(SeasonSpan season) {
        List<SeasonLine.Month> months = new ArrayList<>();
        LocalDate day = season.first();
        while (!day.isAfter(season.last())) {
            months.add(new SeasonLine.Month(
                    day.toEpochDay(), day.getMonth().getDisplayName(TextStyle.SHORT, texts.locale())));
            day = day.withDayOfMonth(1).plusMonths(1);
        }
        return months;
    }
}
