package witnessmark.cost;

import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.Season;

/** Which season a day is of: one that was written down, or else its calendar year. */
public final class Seasons {
    private static final int LAST_DAY = 31;

    private Seasons() {}

    /** The season of a day. */
    public static SeasonSpan of(Facts facts, LocalDate day) {
        return facts.of(Season.class)
                .inForce()
                .filter(season -> season.fact().has(day))
                .findFirst()
                .map(Seasons::span)
                .orElseGet(() -> new SeasonSpan(
                        Integer.toString(day.getYear()),
                        LocalDate.of(day.getYear(), Month.JANUARY, 1),
                        LocalDate.of(day.getYear(), Month.DECEMBER, LAST_DAY),
                        null));
    }

    /** The season that goes by a name: a written one, or a calendar year. */
    public static Optional<SeasonSpan> named(Facts facts, String name) {
        Optional<SeasonSpan> written = facts.of(Season.class).named(name).map(Seasons::span);
        return written.isPresent() || !name.matches("[0-9]{4}")
                ? written
                : Optional.of(new SeasonSpan(
                        name,
                        LocalDate.of(Integer.parseInt(name), Month.JANUARY, 1),
                        LocalDate.of(Integer.parseInt(name), Month.DECEMBER, LAST_DAY),
                        null));
    }

    /** Every season with an event, money or an entry of its own, and that of a day; the earliest first. */
    public static List<SeasonSpan> all(Facts facts, LocalDate today) {
        Stream<LocalDate> days = Stream.of(
                        Stream.of(today),
                        facts.of(Event.class)
                                .inForce()
                                .map(event -> event.fact().firstDay()),
                        facts.of(CostLine.class)
                                .inForce()
                                .map(line -> line.fact().day()),
                        facts.of(BudgetLine.class)
                                .inForce()
                                .map(line -> line.fact().day()),
                        facts.of(IncomeLine.class)
                                .inForce()
                                .map(line -> line.fact().day()))
                .flatMap(each -> each);
        return Stream.concat(
                        facts.of(Season.class).inForce().map(Seasons::span),
                        days.distinct().map(day -> of(facts, day)))
                .distinct()
                .sorted(Comparator.comparing(SeasonSpan::first))
                .toList();
    }

    private static SeasonSpan span(Entry<Season> season) {
        return new SeasonSpan(
                season.fact().name(), season.fact().firstDay(), season.fact().lastDay(), season.id());
    }
}
