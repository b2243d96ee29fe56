package witnessmark.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Grade;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.domain.Warmth;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.Call;
import witnessmark.study.result.GradeLine;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.Neighbours;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Read;
import witnessmark.study.result.Slope;
import witnessmark.study.result.Trend;

/** Words where readings are going: the finding, what it rests on, and when a limit will be met. */
public final class TrendWords {
    private static final double PER_HOUR = 3_600_000;

    /** So many readings are told one by one; what came before is left to the chart. */
    private static final int TOLD = 7;

    /** And so many where there is a short line only. */
    private static final int BRIEFLY = 4;

    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final ReadingWords readings;
    private final RecordWords records;

    public TrendWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.readings = new ReadingWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    // Names

    /** What readings are of: "Leak-down", "Spring force". */
    public String kind(KindTrends of) {
        return records.label(records.word(of.kind()));
    }

    /** Where: "cylinder 4", "exhaust 4A"; the kind's own word where there is one place only. */
    public String place(ReadingKind kind, String place) {
        if (place.isEmpty()) {
            return records.word(kind);
        }
        boolean number = place.chars().allMatch(Character::isDigit);
        return number ? texts.get("trends.place.cylinder", place) : place;
    }

    /** On what: the mark of the part, else the number of the engine. */
    public String on(KindTrends of) {
        if (of.part() != null) {
            return of.part().fact().mark();
        }
        return of.engine() == null ? "" : of.engine().fact().number();
    }

    // Figures

    /** A figure with its unit; of oil counted by the hour, that too. */
    public String figure(KindTrends of, double figure) {
        String plain = readings.figure(of.kind(), Math.round(figure));
        return of.perHour() ? texts.get("trends.perHour", plain) : plain;
    }

    /** A figure without its unit. */
    public String bare(KindTrends of, double figure) {
        return readings.bare(of.kind(), Math.round(figure));
    }

    /** {@code 3 → 7 → 6 → 8 %}: the last few in their order. */
    public String figures(KindTrends of, List<Read> reads) {
        return figures(of, reads, TOLD);
    }

    private String figures(KindTrends of, List<Read> reads, int most) {
        int from = Math.max(0, reads.size() - most);
        String row = "";
        for (Read read : reads.subList(from, reads.size())) {
            boolean last = read == reads.get(reads.size() - 1);
            String one = last ? figure(of, read.figure()) : bare(of, read.figure());
            row = row.isEmpty() ? one : texts.get("trends.arrow", row, one);
        }
        return from > 0 ? texts.get("trends.earlier", row) : row;
    }

    /** {@code clean → few specks → flakes}. */
    public String grades(GradeLine line) {
        int from = Math.max(0, line.readings().size() - TOLD);
        String row = "";
        for (Read read : line.readings().subList(from, line.readings().size())) {
            String one = grade(read);
            row = row.isEmpty() ? one : texts.get("trends.arrow", row, one);
        }
        return from > 0 ? texts.get("trends.earlier", row) : row;
    }

    /** Running, to a tenth of an hour. */
    public String hours(double hours) {
        return amounts.rough(Counter.RUNNING, Math.round(hours * PER_HOUR));
    }

    /** Running without its unit. */
    public String bareHours(double hours) {
        int decimals = Math.abs(hours - Math.rint(hours)) < 1e-6 ? 0 : 1;
        return measures.number(new RunningTime(Math.max(0, Math.round(hours * PER_HOUR))).hours(decimals), decimals);
    }

    /** The unit of the figures; of oil counted by the hour, that too. */
    public String unit(KindTrends of) {
        String sign = readings.sign(of.kind().unit());
        return of.perHour() ? texts.get("trends.perHour", sign) : sign;
    }

    /** What was given for a grade. */
    public String grade(Read read) {
        return readings.of(read.reading().fact());
    }

    public String grade(Grade grade) {
        return records.word(grade);
    }

    // Verdicts

    /** "rising", "no trend". */
    public String verdict(Trend trend) {
        return texts.get("trends.verdict." + code(trend));
    }

    /** "worse twice" where it did. */
    public String verdict(GradeLine line) {
        return texts.get(line.worseTwice() ? "trends.verdict.worse_twice" : "trends.verdict.graded");
    }

    public String call(Call call) {
        return texts.get("trends.call." + code(call));
    }

    /** What one place comes to, and when it meets its limit: what somebody wants to know first. */
    public String answer(KindTrends of, PlaceTrend place) {
        String finding = records.label(finding(of, place));
        LimitAhead next = place.next();
        return next == null ? finding : texts.get("trends.two", sentence(finding), sentence(ahead(of, next)));
    }

    /** What one place comes to; where too few are compared, with what is not. */
    public String finding(KindTrends of, PlaceTrend place) {
        String found = found(of, place);
        return fewFor(place) ? texts.get("trends.few.apart", found, apart(place)) : found;
    }

    /** Whether few are compared, and others not: what the place comes to says so. */
    private static boolean fewFor(PlaceTrend place) {
        return place.trend() == Trend.TOO_FEW
                && place.last() != null
                && !place.apart().isEmpty();
    }

    private String found(KindTrends of, PlaceTrend place) {
        String where = place(of.kind(), place.place());
        Read last = place.last();
        if (last == null) {
            return texts.get("trends.unread", where);
        }
        String figures = figures(of, place.counted());
        Neighbours beside = place.neighbours();
        if (place.call() == Call.LOOK && beside != null) {
            return texts.get(
                    "trends.look",
                    goes(of, place),
                    figures,
                    beside.others(),
                    figure(of, beside.middle()),
                    figure(of, Math.abs(beside.off())),
                    beside.off() > 0 ? 1 : 0,
                    where);
        }
        if (place.call() == Call.PAST_LIMIT) {
            return past(of, place, last);
        }
        return switch (place.trend()) {
            case RISING, FALLING -> texts.get("trends.going", goes(of, place), figures);
            case NONE ->
                texts.get("trends.none", where, figures, place.counted().size());
            case TOO_FEW ->
                texts.get("trends.few", where, figures, place.counted().size(), Trend.FEWEST);
        };
    }

    /** What one place comes to, without what stands beside it. */
    public String heading(KindTrends of, PlaceTrend place) {
        boolean goes = place.trend() == Trend.RISING || place.trend() == Trend.FALLING;
        return records.label(
                goes ? texts.get("trends.going", goes(of, place), figures(of, place.counted())) : finding(of, place));
    }

    /** What was read on what, at the head of a report: "K06, leak-down"; of a part in it, its mark too. */
    public String where(String engine, KindTrends of) {
        String kind = records.word(of.kind());
        return of.part() == null
                ? texts.get("trends.where", engine, kind)
                : texts.get("trends.where.part", engine, on(of), kind);
    }

    /** What was read there last, with what the others read, in a line. */
    public String brief(KindTrends of, PlaceTrend place) {
        String figures = figures(of, place.counted(), BRIEFLY);
        Neighbours beside = place.neighbours();
        return beside == null ? figures : texts.get("trends.brief", figures, figure(of, beside.middle()));
    }

    /** When it meets a limit, in a line; where none is ahead, on how many readings that rests. */
    public String briefAhead(KindTrends of, PlaceTrend place) {
        LimitAhead next = place.next();
        Double likely = next == null ? null : next.likely();
        Double soonest = next == null ? null : next.soonest();
        return next == null || likely == null || soonest == null || likely <= 0
                ? since(place)
                : texts.get("trends.ahead.brief", figure(of, next.figure()), hours(likely), hours(soonest));
    }

    /** What it rests on beside the readings themselves, and when a limit will be met. */
    public String rests(KindTrends of, PlaceTrend place) {
        List<String> rests = new ArrayList<>();
        Neighbours beside = place.neighbours();
        if (beside != null) {
            rests.add(texts.get("trends.beside", beside.others(), figure(of, beside.middle())));
        }
        rests.add(since(place));
        String basis = sentence(records.label(measures.row(rests)));
        LimitAhead next = place.next();
        return next == null ? basis : texts.get("trends.two", basis, sentence(ahead(of, next)));
    }

    /** What was graded at one place. */
    public String finding(KindTrends of, GradeLine line) {
        return records.label(texts.get(
                line.worseTwice() ? "trends.grades.worse" : "trends.grades",
                place(of.kind(), line.place()),
                grades(line)));
    }

    private String goes(KindTrends of, PlaceTrend place) {
        return texts.get("trends.goes." + code(of.kind()) + "." + code(place.trend()), place(of.kind(), place.place()));
    }

    private String past(KindTrends of, PlaceTrend place, Read last) {
        LimitAhead limit = place.limits().stream()
                .filter(LimitAhead::passed)
                .min(Comparator.comparing((LimitAhead passed) -> !passed.over()))
                .orElseThrow();
        Entry<RunOn> runOn = limit.runOn();
        String said = past(of, place, last, limit);
        return runOn == null
                ? said
                : texts.get(
                        "trends.past.runOn",
                        said,
                        measures.running(new RunningTime(runOn.fact().upTo())),
                        runOn.fact().by(),
                        measures.shortDate(runOn.fact().at().day()));
    }

    private String past(KindTrends of, PlaceTrend place, Read last, LimitAhead limit) {
        String where = place(of.kind(), place.place());
        String read = figure(of, last.figure());
        String off = figure(of, Math.abs(last.figure() - place.baseline().figure()));
        String base = figure(of, place.baseline().figure());
        return switch (limit.what()) {
            case AT_MOST -> texts.get("trends.past.most", where, read, figure(of, limit.figure()));
            case AT_LEAST -> texts.get("trends.past.least", where, read, figure(of, limit.figure()));
            case ABOVE_BASELINE -> texts.get("trends.past.above", where, read, off, base);
            case BELOW_BASELINE -> texts.get("trends.past.below", where, read, off, base);
        };
    }

    // Limits

    /** "At this rate 10 % in about 4.5 h, not before 1.7 h". */
    public String ahead(KindTrends of, LimitAhead limit) {
        String figure = figure(of, limit.figure());
        Double likely = limit.likely();
        Double soonest = limit.soonest();
        return likely == null || soonest == null || likely <= 0
                ? texts.get("trends.ahead.now", figure)
                : texts.get("trends.ahead", figure, hours(likely), hours(soonest));
    }

    /** The same for a cell: "about 4.5 h", "past"; empty where nothing is known. */
    public String aheadShort(PlaceTrend place) {
        if (place.limits().stream().anyMatch(LimitAhead::passed) && place.next() == null) {
            boolean over = place.limits().stream().anyMatch(LimitAhead::over);
            return texts.get(over ? "trends.few.limit.past" : "trends.few.limit.runOn");
        }
        LimitAhead next = place.next();
        Double likely = next == null ? null : next.likely();
        return likely == null
                ? ""
                : likely <= 0 ? texts.get("trends.few.limit.now") : texts.get("trends.few.limit", hours(likely));
    }

    /** What a figure of a limit is: "at most 10 %". */
    public String limit(KindTrends of, LimitAhead limit) {
        String key = switch (limit.what()) {
            case AT_MOST -> "trends.limit.most";
            case AT_LEAST -> "trends.limit.least";
            case ABOVE_BASELINE -> "trends.limit.above";
            case BELOW_BASELINE -> "trends.limit.below";
        };
        ReadingLimit said = limit.limit().fact();
        return texts.get(
                key,
                switch (limit.what()) {
                    case AT_MOST, AT_LEAST -> figure(of, limit.figure());
                    case ABOVE_BASELINE, BELOW_BASELINE ->
                        said.changeAtMost() != null
                                ? figure(of, said.changeAtMost())
                                : readings.percent(said.fallAtMost() == null ? 0 : said.fallAtMost());
                });
    }

    /** A reading by itself: "Cylinder 4, Tue 6 Oct 2026, 14.9 h: 8 %". */
    public String read(KindTrends of, Read read) {
        Reading fact = read.reading().fact();
        return records.label(texts.get(
                "trends.read",
                place(of.kind(), fact.place()),
                measures.date(fact.at().day()),
                hours(read.hours()),
                readings.of(fact)));
    }

    // What it rests on

    /** Since when, how steep, how likely by chance, what stands beside it and what is left out; in that order. */
    public List<String> basis(KindTrends of, PlaceTrend place) {
        List<String> basis = new ArrayList<>();
        basis.add(since(place));
        Slope slope = place.slope();
        boolean goes = place.trend() == Trend.RISING || place.trend() == Trend.FALLING;
        if (slope != null && goes) {
            basis.add(slope(of, slope));
        }
        if (place.chance() != null && goes) {
            basis.add(chance(place.chance()));
        }
        Neighbours beside = place.neighbours();
        if (beside != null && place.call() != Call.LOOK) {
            basis.add(texts.get("trends.beside", beside.others(), figure(of, beside.middle())));
        }
        if (!place.apart().isEmpty() && !fewFor(place)) {
            basis.add(apart(place));
        }
        if (of.about()) {
            basis.add(texts.get("trends.about"));
        }
        return basis;
    }

    /** What is compared with nothing: "3 readings made hot not compared". */
    private String apart(PlaceTrend place) {
        Warmth now = Stream.of(place.counted(), place.before(), List.of(place.baseline()))
                .filter(reads -> !reads.isEmpty())
                .map(reads -> reads.get(reads.size() - 1).reading().fact().warmth())
                .findFirst()
                .orElse(Warmth.NOT_SAID);
        Map<String, Integer> apart = new TreeMap<>();
        for (Read read : place.apart()) {
            Warmth made = read.reading().fact().warmth();
            apart.merge(made == now ? "tester" : code(made), 1, Integer::sum);
        }
        List<String> said = new ArrayList<>();
        apart.forEach((why, count) -> said.add(texts.get("trends.apart." + why, count)));
        return measures.row(said);
    }

    /** The spread between places, or null where there is none. */
    public @Nullable String spread(KindTrends of) {
        Double spread = of.spread();
        return spread == null ? null : texts.get("trends.spread", figure(of, spread));
    }

    private String since(PlaceTrend place) {
        int count = place.counted().size();
        if (place.since() != null && place.since().fact().closed() != null) {
            return texts.get(
                    "trends.since.build",
                    count,
                    place.since().fact().number(),
                    measures.shortDate(place.since().fact().closed().day()));
        }
        Reading first = (count == 0 ? place.baseline() : place.counted().get(0))
                .reading()
                .fact();
        return texts.get(
                first.baseline() ? "trends.since.baseline" : "trends.since.first",
                count,
                measures.shortDate(first.at().day()));
    }

    private String slope(KindTrends of, Slope slope) {
        Double least = slope.least();
        Double most = slope.most();
        if (least == null || most == null || slope.mayBeLevel()) {
            return texts.get("trends.slope.either");
        }
        double low = Math.min(Math.abs(least), Math.abs(most));
        double high = Math.max(Math.abs(least), Math.abs(most));
        return texts.get(
                slope.perHour() > 0 ? "trends.slope.rises" : "trends.slope.falls",
                figure(of, rough(slope.perHour())),
                bare(of, rough(low)),
                figure(of, rough(high)));
    }

    /** A rate, to the two digits that mean anything. */
    private static double rough(double rate) {
        return BigDecimal.valueOf(Math.abs(rate)).round(new MathContext(2)).doubleValue();
    }

    private String chance(double chance) {
        long times = Math.round(chance * 100);
        return times < 1 ? texts.get("trends.chance.rare") : texts.get("trends.chance", times);
    }

    private static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
