package witnessmark.desktop.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.BuildStep;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.PlacedAt;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Bounds;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.wording.FitWords;
import witnessmark.wording.MeasureWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Lays the places of a sheet out as on paper: a box for each kind, a row for each cylinder or bearing. */
final class GridWords {
    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final MeasureWords figures;
    private final RecordWords records;

    GridWords(Texts texts, Measures measures, FitWords fit) {
        this.texts = texts;
        this.measures = measures;
        this.fit = fit;
        this.figures = new MeasureWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    List<BenchLines.Step> steps(SheetPage page) {
        Map<BuildStep, Map<MeasureKind, List<MeasurePlace>>> steps = new LinkedHashMap<>();
        for (MeasurePlace place : page.order()) {
            steps.computeIfAbsent(place.kind().step(), step -> new LinkedHashMap<>())
                    .computeIfAbsent(place.kind(), kind -> new ArrayList<>())
                    .add(place);
        }
        return steps.entrySet().stream()
                .map(step -> new BenchLines.Step(
                        records.label(records.word(step.getKey())),
                        step.getValue().entrySet().stream()
                                .map(kind -> grid(page, kind.getKey(), kind.getValue()))
                                .toList()))
                .toList();
    }

    private BenchLines.Grid grid(SheetPage page, MeasureKind kind, List<MeasurePlace> places) {
        List<Spot> spots = places.stream()
                .map(MeasurePlace::spot)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        boolean once = kind.placedAt() == PlacedAt.ENGINE;
        return new BenchLines.Grid(
                records.label(records.word(kind)),
                unit(page, kind),
                kind.sided(),
                once ? List.of() : spots.stream().map(records::word).toList(),
                once ? spotRows(places) : numberRows(places, spots));
    }

    private List<BenchLines.Row> spotRows(List<MeasurePlace> places) {
        return places.stream()
                .map(place -> new BenchLines.Row(
                        place.spot() == null ? "" : records.word(place.spot()), List.of(cell(place, 0))))
                .toList();
    }

    private List<BenchLines.Row> numberRows(List<MeasurePlace> places, List<Spot> spots) {
        Map<Integer, List<BenchLines.Cell>> rows = new LinkedHashMap<>();
        for (MeasurePlace place : places) {
            int column = place.spot() == null ? 0 : spots.indexOf(place.spot());
            rows.computeIfAbsent(Objects.requireNonNull(place.number()), number -> new ArrayList<>())
                    .add(cell(place, column));
        }
        return rows.entrySet().stream()
                .map(row -> new BenchLines.Row(texts.get("bench.row", row.getKey()), row.getValue()))
                .toList();
    }

    private BenchLines.Cell cell(MeasurePlace place, int column) {
        return new BenchLines.Cell(
                place,
                texts.get(
                        "bench.field",
                        records.label(fit.of(place)),
                        figures.sign(place.kind().dimension())),
                column);
    }

    /** {@code mm, 0.04 mm to 0.06 mm}: said once for all fields of the box. */
    private String unit(SheetPage page, MeasureKind kind) {
        String sign = figures.sign(kind.dimension());
        List<String> limits = page.order().stream()
                .filter(place -> place.kind() == kind)
                .map(page::bounds)
                .filter(Bounds::any)
                .map(bounds -> fit.bounds(kind, bounds))
                .distinct()
                .toList();
        @Nullable String counted = kind.placedAt() == PlacedAt.MAIN ? texts.get("bench.counted.main") : null;
        List<String> parts = new ArrayList<>(List.of(sign));
        parts.addAll(limits);
        if (counted != null) {
            parts.add(counted);
        }
        return measures.row(parts);
    }
}
