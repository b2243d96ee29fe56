package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.domain.Car;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.CostShare;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Id;

/** The money of one car at one event: what is written there, and what its last event before took. */
final class CarWeekend {
    private final SheetSight sight;
    private final Entry<Event> event;
    private final Id<Car> car;

    CarWeekend(SheetSight sight, Entry<Event> event, Id<Car> car) {
        this.sight = sight;
        this.event = event;
        this.car = car;
    }

    /**
     * What a kind of cost took last time.
     *
     * @param shares of the cars that shared it; empty when it was the car's own
     */
    record Before(Entry<CostLine> line, List<CostShare> shares) {
        Before {
            shares = List.copyOf(shares);
        }

        boolean shared() {
            return !shares.isEmpty();
        }

        /** "41: 1/2, 57: 1/2". */
        String said(SheetSight sight) {
            int sum = shares.stream().mapToInt(CostShare::parts).sum();
            return SharesTyped.said(
                    shares.stream()
                            .flatMap(share -> sight.find(Car.class, share.car().text()).stream()
                                    .map(found -> new SharesTyped.Share(found, share.parts())))
                            .toList(),
                    sum);
        }
    }

    /** The car's own lines at this event, without what an incident brought. */
    List<Entry<CostLine>> own() {
        return at(event.id()).filter(line -> car.equals(line.fact().car())).toList();
    }

    /** What is written at this event of a kind of cost, for the car alone or shared with it. */
    List<Entry<CostLine>> of(CostCategory kind) {
        return at(event.id())
                .filter(line -> line.fact().category() == kind && concerns(line))
                .toList();
    }

    /**
     * What a kind of cost took at the car's last event before this one, its own before what it shared; nothing where it took
     * none there. What is shared and written for this event already is not brought again.
     */
    Optional<Before> before(CostCategory kind) {
        LocalDate first = event.fact().firstDay();
        List<Entry<CostLine>> all = sight
                .facts()
                .of(CostLine.class)
                .where(line -> line.incident() == null
                        && line.basis() != CostBasis.VALUED
                        && line.event() != null
                        && line.paid().minor() > 0
                        && line.paid().currency().equals(sight.currency())
                        && begins(line).isBefore(first))
                .stream()
                .filter(this::concerns)
                .toList();
        LocalDate latest = all.stream()
                .map(line -> begins(line.fact()))
                .max(Comparator.naturalOrder())
                .orElse(first);
        boolean sharedHere = of(kind).stream().anyMatch(line -> line.fact().car() == null);
        return all.stream()
                .filter(line -> line.fact().category() == kind
                        && begins(line.fact()).equals(latest)
                        && (line.fact().car() != null || !sharedHere))
                .min(Comparator.comparing(line -> line.fact().car() == null))
                .map(line -> new Before(line, line.fact().car() == null ? shares(line) : List.of()));
    }

    private Stream<Entry<CostLine>> at(Id<Event> there) {
        return sight
                .facts()
                .of(CostLine.class)
                .where(line -> there.equals(line.event()) && line.incident() == null)
                .stream();
    }

    private boolean concerns(Entry<CostLine> line) {
        return line.fact().car() == null
                ? shares(line).stream().anyMatch(share -> share.car().equals(car))
                : car.equals(line.fact().car());
    }

    private List<CostShare> shares(Entry<CostLine> line) {
        return sight.facts().of(CostShare.class).where(share -> share.line().equals(line.id())).stream()
                .map(Entry::fact)
                .toList();
    }

    private LocalDate begins(CostLine line) {
        Id<Event> there = line.event();
        return there == null
                ? LocalDate.MAX
                : sight.facts().of(Event.class).get(there).firstDay();
    }
}
