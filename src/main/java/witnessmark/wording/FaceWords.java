package witnessmark.wording;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FaceLine;
import witnessmark.domain.Spot;
import witnessmark.fit.result.face.Comeback;
import witnessmark.fit.result.face.FacePlace;
import witnessmark.fit.result.face.Flat;
import witnessmark.fit.result.face.LowZone;
import witnessmark.fit.result.face.Range;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.quantity.Length;

/** Low zones of a face, how flat it is and what goes under a straightedge, in the words of the trade. */
public final class FaceWords {
    private static final int RATE_DECIMALS = 4;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    public FaceWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** {@code between 2 and 3, exhaust side}. */
    public String place(FacePlace place) {
        String kind = place.kind().name().toLowerCase(Locale.ROOT);
        String side = place.side().name().toLowerCase(Locale.ROOT);
        return texts.get("faces.place." + kind + "." + side, place.number(), place.number() + 1);
    }

    /** {@code 0.08 mm low between 2 and 3, exhaust side}. */
    public String zone(LowZone zone) {
        String kind = zone.place().kind().name().toLowerCase(Locale.ROOT);
        return texts.get("faces.zone." + kind, measures.length(zone.deepest().depth()), place(zone.place()));
    }

    /** The one word of what a zone is. */
    public String state(ZoneFinding.State state) {
        return texts.get("faces.state." + state.name().toLowerCase(Locale.ROOT));
    }

    /** What a zone is, in a sentence. */
    public String finding(ZoneFinding finding) {
        LowZone before = finding.before();
        Comeback comeback = finding.comeback();
        Double hours = comeback == null ? null : comeback.hours();
        return texts.get(
                "faces.finding." + finding.state().name().toLowerCase(Locale.ROOT),
                zone(finding.zone()),
                before == null ? "" : measures.length(before.deepest().depth()),
                hours == null ? texts.get("faces.hours.not_known") : decimal(hours, 2));
    }

    /** What such a finding usually points to; empty where it points to nothing. */
    public String cause(ZoneFinding finding) {
        return switch (finding.state()) {
            case COMING_BACK, AGAIN -> texts.get("faces.cause.coming_back");
            case NEW -> texts.get("faces.cause.new");
            case STILL, FIRST_LOOK -> "";
        };
    }

    /** How fast it comes back and until when, line by line. */
    public List<String> comeback(@Nullable Comeback comeback) {
        List<String> lines = new ArrayList<>();
        if (comeback == null) {
            return lines;
        }
        lines.add(texts.get(
                "faces.comeback", measures.length(comeback.from()), measures.length(comeback.now()), run(comeback)));
        if (comeback.now().compareTo(comeback.from()) <= 0) {
            lines.add(texts.get("faces.comeback.no_growth"));
        } else {
            rate("faces.comeback.per_hour", comeback.perHour(), lines);
            rate("faces.comeback.per_cycle", comeback.perCycle(), lines);
        }
        lines.addAll(left(comeback));
        return lines;
    }

    private String run(Comeback comeback) {
        Double hours = comeback.hours();
        Long cycles = comeback.cycles();
        if (hours == null) {
            return texts.get("faces.comeback.no_run");
        }
        return cycles == null
                ? texts.get("faces.comeback.hours", decimal(hours, 2))
                : texts.get("faces.comeback.run", decimal(hours, 2), cycles);
    }

    private void rate(String key, @Nullable Range rate, List<String> lines) {
        if (rate != null) {
            lines.add(texts.get(
                    key,
                    decimal(rate.likely(), RATE_DECIMALS),
                    decimal(rate.low(), RATE_DECIMALS),
                    decimal(rate.high(), RATE_DECIMALS)));
        }
    }

    private List<String> left(Comeback comeback) {
        Length limit = comeback.limit();
        Range left = comeback.hoursLeft();
        if (limit == null) {
            return List.of(texts.get("faces.comeback.no_limit"));
        }
        if (comeback.now().compareTo(limit) >= 0) {
            return List.of(texts.get("faces.comeback.met", measures.length(limit)));
        }
        if (left == null) {
            return List.of();
        }
        return List.of(
                Double.isInfinite(left.high())
                        ? texts.get(
                                "faces.comeback.left.open",
                                measures.length(limit),
                                decimal(left.likely(), 1),
                                decimal(left.low(), 1))
                        : texts.get(
                                "faces.comeback.left",
                                measures.length(limit),
                                decimal(left.likely(), 1),
                                decimal(left.low(), 1),
                                decimal(left.high(), 1)));
    }

    /** How flat a face is by its grid. */
    public String flat(Flat flat) {
        Length leastSquares = flat.leastSquares();
        if (leastSquares == null) {
            return texts.get("faces.flat.few");
        }
        return texts.get("faces.flat.least_squares", step(leastSquares, flat.finest()), flat.points());
    }

    /** The same by the nearest two planes; empty with too few readings. */
    public String minimumZone(Flat flat) {
        Length zone = flat.minimumZone();
        return zone == null ? "" : texts.get("faces.flat.minimum_zone", step(zone, flat.finest()));
    }

    /** What the tool of a look can tell. */
    public String finest(Flat flat) {
        return texts.get("faces.flat.finest", measures.length(flat.finest()));
    }

    /** A figure no finer than the step it was read with. */
    private String step(Length figure, Length finest) {
        long steps = Math.round((double) figure.nanometres() / finest.nanometres());
        return measures.length(new Length(steps * finest.nanometres()));
    }

    /** {@code along the exhaust side: goes 0.05 mm, not 0.06 mm}. */
    public String line(FaceLine line) {
        String where = line.line() == Spot.BETWEEN_BORES && line.number() != null
                ? texts.get("faces.line.between", line.number(), line.number() + 1)
                : records.word(line.line());
        return interval(records.label(where), line);
    }

    private String interval(String where, FaceLine line) {
        Length stops = line.stops();
        boolean none = line.goes().nanometres() == 0;
        if (stops == null) {
            return none
                    ? texts.get("faces.line.none.open", where)
                    : texts.get("faces.line.open", where, measures.length(line.goes()));
        }
        return none
                ? texts.get("faces.line.none", where, measures.length(stops))
                : texts.get("faces.line.interval", where, measures.length(line.goes()), measures.length(stops));
    }

    private String decimal(double figure, int decimals) {
        return measures.number(BigDecimal.valueOf(figure), decimals);
    }
}
