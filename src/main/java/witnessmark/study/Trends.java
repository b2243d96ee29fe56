package witnessmark.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.ReadingLimits;
import witnessmark.ledger.ReadingSeries;
import witnessmark.ledger.result.Life;
import witnessmark.study.Judging.Sorted;
import witnessmark.study.result.GradeLine;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Read;

/**
 * What is read again and again over the life of an engine or a part, and where it is going.
 *
 * <p>Readings are few, four to six to a build, so everything goes by their order: is there a trend
 * ({@link witnessmark.statistics.MannKendall}), how steep ({@link witnessmark.statistics.TheilSen}), and does the place
 * stand off the middle of those beside it. A place is to be looked at only when both say so: a trend alone may be the whole
 * engine's, and what stands off may always have done.
 */
public final class Trends {
    private final LifeLedger ledger;
    private final List<ReadingSeries> series;

    public Trends(LifeLedger ledger) {
        this.ledger = ledger;
        this.series = ReadingSeries.all(ledger);
    }

    /** Of an engine and the parts now in it: what asks for most first, then in the order of kinds. */
    public List<KindTrends> ofEngine(Id<Engine> id) {
        Entry<Engine> engine = ledger.facts().of(Engine.class).find(id).orElse(null);
        if (engine == null) {
            return List.of();
        }
        List<KindTrends> all = new ArrayList<>(of(ReadOn.engine(ledger, engine)));
        for (Entry<Fitment> fitment : ledger.fittedAt(id, ledger.asOf().last()).values()) {
            all.addAll(ofPart(fitment.fact().part()));
        }
        all.sort(Comparator.comparing(KindTrends::call)); // stable: what asks for the same stays in its order
        return all;
    }

    /** Of one part. */
    public List<KindTrends> ofPart(Id<Part> id) {
        return ledger.facts()
                .of(Part.class)
                .find(id)
                .map(part -> of(ReadOn.part(ledger, part)))
                .orElse(List.of());
    }

    private List<KindTrends> of(ReadOn on) {
        Map<ReadingKind, List<ReadingSeries>> kinds = new EnumMap<>(ReadingKind.class);
        for (ReadingSeries each : series) {
            if (each.on().equals(on.id())) {
                kinds.computeIfAbsent(each.kind(), kind -> new ArrayList<>()).add(each);
            }
        }
        List<KindTrends> trends = new ArrayList<>();
        kinds.forEach((kind, places) -> {
            places.sort(Comparator.comparing(ReadingSeries::place, Places.ORDER));
            trends.add(kind.graded() ? graded(on, kind, places) : figures(on, kind, places));
        });
        return trends;
    }

    private KindTrends graded(ReadOn on, ReadingKind kind, List<ReadingSeries> places) {
        List<GradeLine> grades = places.stream()
                .map(each -> new GradeLine(each.place(), graded(on, each), each.worseTwice()))
                .toList();
        return kind(on, kind, false, null, List.of(), grades);
    }

    private List<Read> graded(ReadOn on, ReadingSeries place) {
        return place.readings().stream()
                .map(each -> new Read(
                        each,
                        on.hoursAt(ledger, each.fact().at()),
                        Objects.requireNonNull(each.fact().grade()).badness()))
                .toList();
    }

    private KindTrends figures(ReadOn on, ReadingKind kind, List<ReadingSeries> places) {
        Figures figures = Figures.of(ledger, on, kind, places);
        List<Sorted> sorted =
                places.stream().map(each -> sort(each, on, figures)).toList();
        // A limit of oil metal is of the sample as it is; figures for each hour are held against none.
        List<Entry<ReadingLimit>> limits = figures.perHour()
                ? List.of()
                : ReadingLimits.of(
                        ledger, kind, on.engine() == null ? null : on.engine().id(), on.design(), on.kind());
        Judging judging = new Judging(limits, limit -> on.runOn(ledger, limit), on.hours(ledger), figures.differ(kind));
        List<PlaceTrend> judged =
                sorted.stream().map(each -> judging.judge(each, sorted)).toList();
        return kind(on, kind, figures.perHour(), judging.spread(sorted), judged, List.of());
    }

    private KindTrends kind(
            ReadOn on,
            ReadingKind kind,
            boolean perHour,
            @Nullable Double spread,
            List<PlaceTrend> places,
            List<GradeLine> grades) {
        Life life = on.life(ledger);
        boolean about = life.about() || !life.complete();
        return new KindTrends(kind, on.engine(), on.part(), on.hours(ledger), about, perHour, spread, places, grades);
    }

    private Sorted sort(ReadingSeries place, ReadOn on, Figures figures) {
        Beginning beginning = Beginning.of(place, on.builds());
        Reading last = place.last().fact();
        List<Read> counted = new ArrayList<>();
        List<Read> before = new ArrayList<>();
        List<Read> apart = new ArrayList<>();
        for (Entry<Reading> reading : place.readings()) {
            List<Read> into =
                    isApart(reading.fact(), last) ? apart : beginning.counts(reading.fact()) ? counted : before;
            into.add(figures.read(reading));
        }
        return new Sorted(place, beginning, counted, before, apart, figures.read(place.baseline()));
    }

    /** Made hot where the last was made cold, or the other way; or with another tester, where both are known. */
    private static boolean isApart(Reading reading, Reading last) {
        boolean otherTester =
                reading.tool() != null && last.tool() != null && !reading.tool().equals(last.tool());
        return reading.warmth() != last.warmth() || otherTester;
    }

    /** Turns readings into figures on their way. */
    private record Figures(
            LifeLedger ledger, ReadOn on, @Nullable OnTheOil oil, double leastHours) {
        /** Oil is counted by the hour only where its age is known of every sample: figures of two kinds are not compared. */
        static Figures of(LifeLedger ledger, ReadOn on, ReadingKind kind, List<ReadingSeries> places) {
            if (kind != ReadingKind.OIL_METAL || on.part() != null) {
                return new Figures(ledger, on, null, 1);
            }
            OnTheOil oil = new OnTheOil(ledger, on, at -> on.hoursAt(ledger, at));
            double least = places.stream()
                    .flatMap(each -> each.readings().stream())
                    .mapToDouble(each -> oil.hours(each.fact()))
                    .min()
                    .orElse(0);
            return new Figures(ledger, on, least > 0 ? oil : null, least);
        }

        boolean perHour() {
            return oil != null;
        }

        /** What two readings differ by: of oil by the hour most where it was youngest. */
        double differ(ReadingKind kind) {
            return Differs.by(kind.unit()) / (oil == null ? 1 : leastHours);
        }

        Read read(Entry<Reading> reading) {
            double value = Objects.requireNonNull(reading.fact().value());
            double figure = oil == null ? value : value / oil.hours(reading.fact());
            return new Read(reading, on.hoursAt(ledger, reading.fact().at()), figure);
        }
    }
}
