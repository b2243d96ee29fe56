package witnessmark.wording;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Metal;
import witnessmark.domain.PlacedAt;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Contradiction;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Pattern;
import witnessmark.fit.result.Proposal;
import witnessmark.fit.result.SheetCounts;
import witnessmark.fit.result.StrongerLink;
import witnessmark.fit.result.Term;
import witnessmark.fit.result.ToTwenty;
import witnessmark.fit.result.Work;
import witnessmark.quantity.Dimension;

/** What the checks of a build sheet say, the answer first. */
public final class FitWords {
    private final Texts texts;
    private final Measures measures;
    private final MeasureWords figures;
    private final RecordWords records;

    public FitWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.figures = new MeasureWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /** Where: {@code cylinder 1, thrust side}. */
    public String where(MeasurePlace place) {
        String number = place.number() == null
                ? ""
                : texts.get(
                        place.kind().placedAt() == PlacedAt.MAIN ? "fit.place.main" : "fit.place.cylinder",
                        place.number());
        String spot = place.spot() == null ? "" : records.word(place.spot());
        return number.isEmpty()
                ? spot.isEmpty() ? texts.get("fit.place.all") : spot
                : spot.isEmpty() ? number : texts.get("fit.place.spot", number, spot);
    }

    /** What and where: {@code deck clearance, cylinder 1, thrust side}. */
    public String of(MeasurePlace place) {
        return place.number() == null && place.spot() == null
                ? records.word(place.kind())
                : texts.get("fit.of", records.word(place.kind()), where(place));
    }

    /** A figure of a kind with its unit, as closely as the kind is read. */
    public String figure(MeasureKind kind, long parts) {
        return unit(kind, figures.bare(kind, parts));
    }

    /** A figure that somebody set, with every digit of it. */
    public String set(MeasureKind kind, long parts) {
        return unit(kind, figures.exact(kind, parts));
    }

    /** A figure beside what it may be: with every digit where a rounded one would seem to stand otherwise. */
    public String figure(MeasureKind kind, long parts, Bounds bounds) {
        return unit(kind, bare(kind, parts, bounds));
    }

    /** The same without its unit, for a row or a box that says the unit. */
    public String bare(MeasureKind kind, long parts, Bounds bounds) {
        return bounds.verdict(figures.rounded(kind, parts)) == bounds.verdict(parts)
                ? figures.bare(kind, parts)
                : figures.exact(kind, parts);
    }

    private String unit(MeasureKind kind, String bare) {
        return texts.get("measures.figure", bare, figures.sign(kind.dimension()));
    }

    /** How a kind of figure stands, in one line: its worst place, its figure, its limit. */
    public String answer(Answer answer) {
        Check nearest = answer.nearest();
        String name = records.label(records.word(answer.kind()));
        if (nearest == null || nearest.value() == null) {
            return texts.get("fit.not_measured", name);
        }
        boolean one = answer.checks().size() == 1
                && nearest.place().number() == null
                && nearest.place().spot() == null;
        String what = one ? name : texts.get("fit.at", name, where(nearest.place()));
        return stands(what, nearest);
    }

    /** How one figure stands, in one line. */
    public String check(Check check) {
        String what = records.label(where(check.place()));
        return check.value() == null ? texts.get("fit.not_measured", what) : stands(what, check);
    }

    private String stands(String what, Check check) {
        long value = Objects.requireNonNull(check.value());
        MeasureKind kind = check.place().kind();
        Bounds bounds = check.bounds();
        String figure = figure(kind, value, bounds);
        return switch (check.verdict()) {
            case OUTSIDE -> outside(what, kind, value, bounds);
            case OFF_AIM -> texts.get("fit.off_aim", texts.get("fit.pair", what, figure), aim(kind, bounds));
            case INSIDE -> texts.get("fit.inside", what, figure, bounds(kind, bounds));
            case NO_LIMIT, NOT_MEASURED -> texts.get("fit.free", what, figure);
        };
    }

    private String outside(String what, MeasureKind kind, long value, Bounds bounds) {
        Bound least = bounds.least();
        if (least != null && value < least.value()) {
            return texts.get(
                    "fit.outside.under",
                    texts.get("fit.pair", what, figure(kind, value, bounds)),
                    figure(kind, least.value() - value),
                    bound(kind, least));
        }
        Bound most = Objects.requireNonNull(bounds.most());
        return texts.get(
                "fit.outside.over",
                texts.get("fit.pair", what, figure(kind, value, bounds)),
                figure(kind, value - most.value()),
                bound(kind, most));
    }

    /** A limit with whose it is. */
    public String bound(MeasureKind kind, Bound bound) {
        return bound.rank() == null
                ? texts.get("fit.bound.trade", set(kind, bound.value()))
                : texts.get("fit.bound", set(kind, bound.value()), records.word(bound.rank()), bound.source());
    }

    /** What a figure may be: {@code not under 1.00 mm}; empty when nothing is set. */
    public String bounds(MeasureKind kind, Bounds bounds) {
        Bound least = bounds.least();
        Bound most = bounds.most();
        if (least != null && most != null) {
            return texts.get("fit.bounds.both", set(kind, least.value()), set(kind, most.value()));
        }
        if (least != null) {
            return texts.get("fit.bounds.least", set(kind, least.value()));
        }
        return most == null ? aim(kind, bounds) : texts.get("fit.bounds.most", set(kind, most.value()));
    }

    private String aim(MeasureKind kind, Bounds bounds) {
        Long least = bounds.aimLeast();
        Long most = bounds.aimMost();
        if (least == null && most == null) {
            return "";
        }
        String range = least == null
                ? texts.get("fit.bounds.most", set(kind, Objects.requireNonNull(most)))
                : most == null || most.equals(least)
                        ? set(kind, least)
                        : texts.get("fit.bounds.both", set(kind, least), set(kind, most));
        return texts.get("fit.bounds.aim", range);
    }

    /** What else is to be known of a figure: what it lacks, what it rests on, how near the limit is. */
    public List<String> beside(Check check) {
        List<String> lines = new ArrayList<>();
        if (!check.missing().isEmpty()) {
            lines.add(lacks(check.missing()));
        }
        if (check.tooNearToTell()) {
            lines.add(texts.get(
                    "fit.too_near",
                    figures.margin(check.place().kind().dimension(), Objects.requireNonNull(check.margin()))));
        }
        if (check.restsOnDesign()) {
            lines.add(texts.get("fit.rests_on_design"));
        }
        lines.addAll(asRead(check));
        return lines;
    }

    /** What was not brought to 20 °C, and what nobody wrote down to do so. */
    private List<String> asRead(Check check) {
        List<String> lines = new ArrayList<>();
        Map<Boolean, List<String>> kinds = check.terms().stream()
                .map(Term::given)
                .filter(given -> given.toTwenty() != null && given.toTwenty().lacks())
                .collect(Collectors.partitioningBy(
                        given -> Objects.requireNonNull(given.toTwenty()).at() == null,
                        Collectors.mapping(given -> records.word(given.place().kind()), Collectors.toList())));
        kinds.forEach((temperature, of) -> {
            if (!of.isEmpty()) {
                lines.add(texts.get(
                        temperature ? "fit.twenty.no_temperature" : "fit.twenty.no_metal",
                        measures.row(of.stream().distinct().toList())));
            }
        });
        return lines;
    }

    /** All that the checks of a kind lack, each kind of figure once with its places; empty when nothing is missing. */
    public String lacks(Answer answer) {
        List<MeasurePlace> missing = answer.checks().stream()
                .flatMap(check -> check.missing().stream())
                .distinct()
                .toList();
        return missing.isEmpty() ? "" : lacks(missing);
    }

    private String lacks(List<MeasurePlace> missing) {
        Map<MeasureKind, List<String>> byKind = new LinkedHashMap<>();
        for (MeasurePlace place : missing) {
            boolean one = place.number() == null && place.spot() == null;
            byKind.computeIfAbsent(place.kind(), kind -> new ArrayList<>()).add(one ? "" : inShort(place));
        }
        return texts.get(
                "fit.missing",
                measures.row(byKind.entrySet().stream()
                        .map(each -> each.getValue().contains("")
                                ? records.word(each.getKey())
                                : texts.get(
                                        "fit.of_places", records.word(each.getKey()), measures.row(each.getValue())))
                        .toList()));
    }

    /** A place in few letters where its kind is said: {@code 1}, {@code 1 bolt A}, {@code front, inlet side}. */
    private String inShort(MeasurePlace place) {
        String spot = place.spot() == null ? "" : records.word(place.spot());
        return place.number() == null
                ? spot
                : spot.isEmpty()
                        ? texts.get("fit.place.number", place.number())
                        : texts.get("fit.place.number_spot", place.number(), spot);
    }

    /**
     * A line of a column.
     *
     * @param what of which figure, and how much of it
     * @param figure what it adds
     * @param basis what it rests on
     */
    public record Line(String what, String figure, String basis) {}

    /** The column a check adds up, its sum last; a ratio names its two volumes and then itself. */
    public List<Line> column(Check check) {
        List<Line> lines = new ArrayList<>();
        boolean ratio = check.place().kind() == MeasureKind.COMPRESSION_RATIO;
        Dimension dimension = ratio ? Dimension.VOLUME : check.place().kind().dimension();
        Long value = check.value();
        List<Added> added = check.terms().stream().flatMap(this::added).toList();
        List<Long> parts = new ArrayList<>(added.stream().map(Added::parts).toList());
        if (value != null && !ratio) {
            parts.add(value);
        }
        List<String> even =
                figures.column(dimension, ratio ? 0 : check.place().kind().decimals(), parts);
        for (int at = 0; at < added.size(); at++) {
            lines.add(new Line(
                    added.get(at).what(),
                    texts.get("measures.figure", even.get(at), figures.sign(dimension)),
                    added.get(at).basis()));
        }
        if (value != null) {
            lines.add(new Line(
                    texts.get(ratio ? "fit.ratio" : "fit.sum"),
                    ratio
                            ? figure(check.place().kind(), value)
                            : texts.get("measures.figure", even.get(even.size() - 1), figures.sign(dimension)),
                    ""));
        }
        return lines;
    }

    /** What a line of a column adds, in words and in whole parts. */
    private record Added(String what, long parts, String basis) {}

    /** A term as one line; a size that was brought to 20 °C as it was read, and what brings it there. */
    private Stream<Added> added(Term term) {
        Given given = term.given();
        ToTwenty brought = given.toTwenty();
        String what = texts.get("fit.part." + term.part().name().toLowerCase(Locale.ROOT), of(given.place()));
        if (brought == null || brought.by() == 0 || term.part() == Term.Part.AS_VOLUME) {
            return Stream.of(new Added(what, term.counts(), basis(given)));
        }
        long read = Term.of(given.asRead(), term.part()).counts();
        Metal metal = Objects.requireNonNull(brought.metal());
        return Stream.of(
                new Added(
                        texts.get("fit.twenty.read", what, measures.temperature(Objects.requireNonNull(brought.at()))),
                        read,
                        basis(given)),
                new Added(
                        texts.get("fit.twenty.to"),
                        term.counts() - read,
                        texts.get(
                                "fit.twenty.by",
                                records.word(metal),
                                measures.number(perMillion(brought.alpha()), 1),
                                measures.number(perMillion(brought.gauge()), 1))));
    }

    private static BigDecimal perMillion(double alpha) {
        return BigDecimal.valueOf(alpha * 1e6);
    }

    private String basis(Given given) {
        String key = "fit.basis." + given.basis().name().toLowerCase(Locale.ROOT);
        return given.source().isEmpty() ? texts.get(key) : texts.get(key + ".by", given.source());
    }

    public String pattern(Pattern pattern) {
        String key = "fit.pattern." + pattern.shape().name().toLowerCase(Locale.ROOT);
        return pattern.cylinder() == null ? texts.get(key) : texts.get(key, pattern.cylinder());
    }

    public String contradiction(Contradiction found) {
        return texts.get(
                "fit.contradiction." + found.what().name().toLowerCase(Locale.ROOT),
                measures.all(found.places().stream().map(this::of).toList()));
    }

    /** What a stronger gasket asks before it is signed. */
    public String strongerLink(StrongerLink link) {
        return texts.get(
                link.clean() + link.worse() == 0
                        ? "fit.stronger.unread"
                        : link.worse() == 0 ? "fit.stronger.clean" : "fit.stronger.worse",
                records.word(link.now()),
                records.word(link.before()),
                link.clean(),
                link.worse());
    }

    /** What a sheet comes to, in counts: outside, not measured, accepted, accepted though not measured. */
    public String headline(SheetCounts counts) {
        List<String> parts = new ArrayList<>();
        if (counts.lessons() > 0) {
            parts.add(texts.get("fit.headline.lessons", counts.lessons()));
        }
        if (counts.outside() > 0) {
            parts.add(outside(counts.outside()));
        }
        if (counts.missing() > 0) {
            parts.add(missing(counts.missing()));
        }
        if (parts.isEmpty()) {
            parts.add(texts.get("fit.headline.clear"));
        }
        if (counts.accepted() > 0) {
            parts.add(texts.get("fit.headline.accepted", counts.accepted()));
        }
        if (counts.acceptedUnmeasured() > 0) {
            parts.add(texts.get("fit.headline.accepted_unmeasured", counts.acceptedUnmeasured()));
        }
        return measures.row(parts);
    }

    /** {@code 2 figures outside}. */
    public String outside(int figures) {
        return texts.get("fit.headline.outside", figures);
    }

    /** {@code 64 figures not measured}. */
    public String missing(int figures) {
        return texts.get("fit.headline.missing", figures);
    }

    /** A way to a wanted figure, with what it comes to or what stands against it. */
    public String way(Proposal way) {
        String work = work(way.work());
        if (!way.possible()) {
            return texts.get(
                    "fit.way.shut",
                    work,
                    measures.row(way.against().stream()
                            .map(this::obstacle)
                            .distinct()
                            .toList()));
        }
        Check reached = Objects.requireNonNull(way.reached());
        return texts.get(
                "fit.way.possible",
                work,
                texts.get(
                        "fit.pair.is",
                        of(reached.place()),
                        figure(reached.place().kind(), Objects.requireNonNull(reached.value()))));
    }

    private String work(Work work) {
        return switch (work.kind()) {
            case CROWN_CUT ->
                work.cuts().isEmpty()
                        ? texts.get("fit.work.none")
                        : texts.get(
                                "fit.work.crown_cut",
                                measures.row(work.cuts().entrySet().stream()
                                        .map(cut -> texts.get(
                                                "fit.work.crown_cut.each",
                                                cut.getKey(),
                                                figures.figure(Dimension.LENGTH, cut.getValue())))
                                        .toList()));
            case DECK_SKIM -> texts.get("fit.work.deck_skim", figures.figure(Dimension.LENGTH, work.depth()));
            case HEAD_SKIM -> texts.get("fit.work.head_skim", figures.figure(Dimension.LENGTH, work.depth()));
            case OTHER_GASKET -> texts.get("fit.work.other_gasket", work.gasket());
        };
    }

    private String obstacle(Proposal.Obstacle obstacle) {
        String key = "fit.against." + obstacle.why().name().toLowerCase(Locale.ROOT);
        Check check = obstacle.check();
        @Nullable Long value = check == null ? null : check.value();
        return switch (obstacle.why()) {
            case OUTSIDE_AFTER ->
                texts.get(
                        key,
                        of(Objects.requireNonNull(check).place()),
                        figure(obstacle.kind(), Objects.requireNonNull(value)),
                        bounds(obstacle.kind(), Objects.requireNonNull(check).bounds()));
            case NOT_REACHED -> texts.get(key, figure(obstacle.kind(), Objects.requireNonNull(value)));
            case MORE_THAN_ALLOWED, NOT_KNOWN -> texts.get(key, records.word(obstacle.kind()));
            case ADDS_MATERIAL, NOT_ALLOWED -> texts.get(key);
        };
    }

    /** The word for how a figure stands. */
    public String verdict(FitVerdict verdict) {
        return records.word(verdict);
    }
}
