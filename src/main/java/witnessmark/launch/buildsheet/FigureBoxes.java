package witnessmark.launch.buildsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.BuildStep;
import witnessmark.domain.Entry;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.PlacedAt;
import witnessmark.domain.Spot;
import witnessmark.domain.Tool;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Check;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.report.BuildSheet.Block;
import witnessmark.report.BuildSheet.ByHand;
import witnessmark.report.BuildSheet.Cell;
import witnessmark.report.BuildSheet.Kind;
import witnessmark.report.BuildSheet.Line;
import witnessmark.report.BuildSheet.Look;
import witnessmark.report.BuildSheet.Step;
import witnessmark.wording.FitWords;
import witnessmark.wording.MeasureWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/**
 * Lays the places of a sheet out as paper has them: a line for each kind or each spot of it, a box for each cylinder or
 * bearing; what the engine has once, a box for each spot.
 */
final class FigureBoxes {
    /** As many boxes as stand beside each other: more cylinders go on below. */
    private static final int BESIDE = 8;

    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final RecordWords records;
    private final MeasureWords figures;
    private final HowTaken taken;

    FigureBoxes(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.fit = new FitWords(texts, measures);
        this.records = new RecordWords(texts);
        this.figures = new MeasureWords(texts, measures);
        this.taken = new HowTaken(texts, measures);
    }

    /** What is measured, step by step; a figure at a place nobody asks for stands after those of its kind. */
    List<Step> measured(SheetPage page, List<Entry<Tool>> tools) {
        Set<MeasurePlace> places = new LinkedHashSet<>(page.order());
        page.figures().forEach(figure -> places.add(figure.fact().place()));
        Map<BuildStep, List<MeasurePlace>> steps = new LinkedHashMap<>();
        places.stream()
                .sorted(Comparator.comparing(place -> place.kind().step()))
                .forEach(place -> steps.computeIfAbsent(place.kind().step(), step -> new ArrayList<>())
                        .add(place));
        List<Step> all = new ArrayList<>();
        steps.forEach((step, of) -> {
            boolean empty = of.stream().noneMatch(place -> page.figure(place).isPresent());
            all.add(new Step(
                    records.label(records.word(step)),
                    blocks(of, page::bounds, place -> cell(page, place), kind -> taken.notes(page, kind, tools)),
                    empty ? toWrite() : null));
        });
        return all;
    }

    private ByHand toWrite() {
        return new ByHand(
                List.of(
                        texts.get("bench.how.stood"),
                        texts.get("bench.how.tool"),
                        texts.get("bench.how.temperature"),
                        texts.get("bench.how.by")),
                "");
    }

    /** What is worked out of the figures, at every place; null where nothing is. */
    @Nullable
    Step workedOut(SheetPage page) {
        Map<MeasurePlace, Check> checks = new LinkedHashMap<>();
        page.answers().stream()
                .filter(answer -> answer.checks().stream().anyMatch(FigureBoxes::isWorkedOut))
                .flatMap(answer -> answer.checks().stream())
                .filter(check -> check.place().kind().workedOut() || isWorkedOut(check))
                .forEach(check -> checks.put(check.place(), check));
        if (checks.isEmpty()) {
            return null;
        }
        return new Step(
                texts.get("buildsheet.workedOut"),
                blocks(
                        checks.keySet().stream()
                                .sorted(Comparator.comparing(
                                        place -> place.kind().placedAt() == PlacedAt.ENGINE))
                                .toList(),
                        place -> Optional.ofNullable(checks.get(place))
                                .map(Check::bounds)
                                .orElse(Bounds.NONE),
                        place -> cell(checks.get(place)),
                        kind -> List.of()),
                null);
    }

    private static boolean isWorkedOut(Check check) {
        return check.value() != null
                && (check.place().kind().workedOut() || check.terms().size() > 1);
    }

    private Cell cell(SheetPage page, MeasurePlace place) {
        return page.figure(place)
                .map(figure -> figure(
                        verdict(page, place, figure.value()),
                        place.kind(),
                        figure.value(),
                        figures.bare(
                                place.kind(),
                                place.kind().sided() ? Math.abs(figure.value()) : figure.value(),
                                figure.typed())))
                .orElse(Cell.TO_WRITE);
    }

    private Cell cell(@Nullable Check check) {
        if (check == null) {
            return Cell.NOT_ASKED;
        }
        return check.value() == null
                ? new Cell(Look.FIGURE, fit.verdict(FitVerdict.NOT_MEASURED))
                : figure(
                        check.verdict(),
                        check.place().kind(),
                        check.value(),
                        fit.bare(check.place().kind(), check.value(), check.bounds()));
    }

    /** How a figure as it was read stands: by its own check where that has one, since a size is judged at 20 °C. */
    private static FitVerdict verdict(SheetPage page, MeasurePlace place, long value) {
        return page.answer(place.kind()).stream()
                .flatMap(answer -> answer.checks().stream())
                .filter(check -> check.place().equals(place) && check.terms().size() == 1)
                .map(Check::verdict)
                .findFirst()
                .orElse(page.bounds(place).verdict(value));
    }

    private Cell figure(FitVerdict verdict, MeasureKind kind, long value, String bare) {
        return new Cell(
                verdict == FitVerdict.OUTSIDE ? Look.OUTSIDE : Look.FIGURE,
                kind.sided() && value != 0 ? texts.get(value < 0 ? "bench.far.proud" : "bench.far.down", bare) : bare);
    }

    /** Kinds one after the other that are taken at the same places share a block. */
    private List<Block> blocks(
            List<MeasurePlace> places,
            Function<MeasurePlace, Bounds> bounds,
            Function<MeasurePlace, Cell> cells,
            Function<MeasureKind, List<String>> notes) {
        Map<MeasureKind, List<MeasurePlace>> kinds = places.stream()
                .collect(Collectors.groupingBy(MeasurePlace::kind, LinkedHashMap::new, Collectors.toList()));
        List<OneBlock> runs = new ArrayList<>();
        kinds.forEach((kind, at) -> {
            List<Object> columns =
                    at.stream().map(FigureBoxes::column).distinct().toList();
            OneBlock last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last == null || last.at() != kind.placedAt() || !last.columns().equals(columns)) {
                runs.add(new OneBlock(kind.placedAt(), columns, new LinkedHashMap<>()));
            }
            runs.get(runs.size() - 1).kinds().put(kind, at);
        });
        List<Block> all = new ArrayList<>();
        for (OneBlock run : runs) {
            for (int from = 0; from < run.columns().size(); from += BESIDE) {
                int to = Math.min(run.columns().size(), from + BESIDE);
                List<Object> columns = run.columns().subList(from, to);
                boolean last = to == run.columns().size();
                all.add(new Block(
                        counted(run.at()),
                        columns.stream().map(this::title).toList(),
                        run.kinds().entrySet().stream()
                                .map(kind -> kind(
                                        kind.getKey(),
                                        kind.getValue(),
                                        columns,
                                        bounds,
                                        cells,
                                        last ? notes : none -> List.of()))
                                .toList()));
            }
        }
        return all;
    }

    /** Kinds by their places, and the columns these have in common. */
    private record OneBlock(PlacedAt at, List<Object> columns, Map<MeasureKind, List<MeasurePlace>> kinds) {}

    /** Its number; its spot where the engine has one of it; its kind where there is one figure. */
    private static Object column(MeasurePlace place) {
        return place.number() != null ? place.number() : place.spot() != null ? place.spot() : PlacedAt.ENGINE;
    }

    private String title(Object column) {
        return column instanceof Integer number
                ? texts.get("bench.row", number)
                : column instanceof Spot spot ? records.word(spot) : "";
    }

    private String counted(PlacedAt at) {
        return switch (at) {
            case CYLINDER -> texts.get("buildsheet.counted.cylinder");
            case MAIN -> texts.get("bench.counted.main");
            case ENGINE -> "";
        };
    }

    private Kind kind(
            MeasureKind kind,
            List<MeasurePlace> places,
            List<Object> columns,
            Function<MeasurePlace, Bounds> bounds,
            Function<MeasurePlace, Cell> cells,
            Function<MeasureKind, List<String>> notes) {
        Map<String, List<MeasurePlace>> may = places.stream()
                .collect(Collectors.groupingBy(
                        place -> fit.bounds(kind, bounds.apply(place)), LinkedHashMap::new, Collectors.toList()));
        boolean alike = may.size() == 1;
        List<Line> lines = new ArrayList<>();
        Map<String, List<MeasurePlace>> rows = places.stream()
                .collect(Collectors.groupingBy(FigureBoxes::spot, LinkedHashMap::new, Collectors.toList()));
        rows.forEach((spot, at) -> {
            String limit = alike ? "" : fit.bounds(kind, bounds.apply(at.get(0)));
            String where = spot.isEmpty()
                    ? ""
                    : records.word(Objects.requireNonNull(at.get(0).spot()));
            lines.add(new Line(
                    limit.isEmpty() || where.isEmpty() ? where : texts.get("bench.field", where, limit),
                    columns.stream()
                            .map(column -> at.stream()
                                    .filter(place -> column(place).equals(column))
                                    .findFirst()
                                    .map(cells)
                                    .orElse(Cell.NOT_ASKED))
                            .toList()));
        });
        return new Kind(records.label(records.word(kind)), may(kind, may), lines, notes.apply(kind));
    }

    /** The line a place stands in: that of its spot where its column is a number. */
    private static String spot(MeasurePlace place) {
        return place.number() == null || place.spot() == null
                ? ""
                : place.spot().code();
    }

    /** {@code mm, 0.04 mm to 0.06 mm}; what holds at one spot alone stands beside it, or is named here. */
    private String may(MeasureKind kind, Map<String, List<MeasurePlace>> may) {
        List<String> parts = new ArrayList<>(List.of(figures.sign(kind.dimension())));
        if (kind.sided()) {
            parts.add(texts.get("buildsheet.sided"));
        }
        if (may.size() == 1) {
            parts.addAll(may.keySet());
        } else if (kind.placedAt() == PlacedAt.ENGINE) {
            may.forEach((limit, at) -> {
                if (!limit.isEmpty()) {
                    parts.add(texts.get(
                            "fit.pair", measures.row(at.stream().map(fit::where).toList()), limit));
                }
            });
        }
        parts.removeIf(String::isBlank);
        return measures.row(parts);
    }
}
