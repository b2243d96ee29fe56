package witnessmark.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
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

    /** A figure of a kind with its unit; a ratio to two decimals, as it is spoken of. */
    public String figure(MeasureKind kind, long parts) {
        return texts.get("measures.figure", bare(kind, parts), figures.sign(kind.dimension()));
    }

    /** The same without its unit, for a row or a box that says the unit. */
    public String bare(MeasureKind kind, long parts) {
        return kind.dimension() == Dimension.RATIO
                ? measures.number(kind.dimension().shown(parts), 2)
                : figures.bare(kind.dimension(), parts);
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
        String figure = figure(kind, value);
        Bounds bounds = check.bounds();
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
                    texts.get("fit.pair", what, figure(kind, value)),
                    figure(kind, least.value() - value),
                    bound(kind, least));
        }
        Bound most = Objects.requireNonNull(bounds.most());
        return texts.get(
                "fit.outside.over",
                texts.get("fit.pair", what, figure(kind, value)),
                figure(kind, value - most.value()),
                bound(kind, most));
    }

    /** A limit with whose it is. */
    public String bound(MeasureKind kind, Bound bound) {
        return bound.rank() == null
                ? texts.get("fit.bound.trade", figure(kind, bound.value()))
                : texts.get("fit.bound", figure(kind, bound.value()), records.word(bound.rank()), bound.source());
    }

    /** What a figure may be: {@code not under 1.00 mm}; empty when nothing is set. */
    public String bounds(MeasureKind kind, Bounds bounds) {
        Bound least = bounds.least();
        Bound most = bounds.most();
        if (least != null && most != null) {
            return texts.get("fit.bounds.both", figure(kind, least.value()), figure(kind, most.value()));
        }
        if (least != null) {
            return texts.get("fit.bounds.least", figure(kind, least.value()));
        }
        return most == null ? aim(kind, bounds) : texts.get("fit.bounds.most", figure(kind, most.value()));
    }

    private String aim(MeasureKind kind, Bounds bounds) {
        Long least = bounds.aimLeast();
        Long most = bounds.aimMost();
        if (least == null && most == null) {
            return "";
        }
        String range = least == null
                ? texts.get("fit.bounds.most", figure(kind, Objects.requireNonNull(most)))
                : most == null || most.equals(least)
                        ? figure(kind, least)
                        : texts.get("fit.bounds.both", figure(kind, least), figure(kind, most));
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
        for (Term term : check.terms()) {
            lines.add(new Line(
                    texts.get(
                            "fit.part." + term.part().name().toLowerCase(Locale.ROOT),
                            of(term.given().place())),
                    figures.figure(dimension, term.counts()),
                    basis(term.given())));
        }
        if (check.value() != null) {
            lines.add(new Line(
                    texts.get(ratio ? "fit.ratio" : "fit.sum"),
                    ratio ? figures.figure(Dimension.RATIO, check.value()) : figures.figure(dimension, check.value()),
                    ""));
        }
        return lines;
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
