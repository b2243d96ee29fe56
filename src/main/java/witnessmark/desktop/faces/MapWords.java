package witnessmark.desktop.faces;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceLine;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FacePoint;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.FaceText;
import witnessmark.logbook.faces.LookLine;
import witnessmark.quantity.Length;
import witnessmark.wording.FaceWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Makes the face map of a look, with another laid over it, and of what is typed. */
final class MapWords {
    private static final double MILLIMETRE = 1_000_000;
    private static final int DECIMALS = 2;

    private final Texts texts;
    private final Measures measures;
    private final FaceWords faces;
    private final RecordWords records;

    MapWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.faces = new FaceWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /** {@code Head HD-06, seen from the face: 0.08 mm low between 2 and 3, exhaust side}. */
    String title(FacePage page, @Nullable LookLine look) {
        String part = texts.get(
                "facemap.part",
                records.label(records.word(page.kind())),
                page.part().fact().mark());
        if (look == null) {
            return texts.get("facemap.title.none", part);
        }
        Optional<String> zone = look.findings().stream()
                .map(finding -> finding.zone())
                .max(Comparator.comparing(found -> found.deepest().depth()))
                .map(faces::zone);
        if (zone.isPresent()) {
            return texts.get("facemap.title.low", part, zone.get());
        }
        Optional<FaceLine> widest = look.lines().stream()
                .map(line -> line.fact())
                .filter(line -> line.goes().nanometres() > 0)
                .max(Comparator.comparing(FaceLine::goes));
        if (widest.isPresent()) {
            return texts.get("facemap.title.low", part, lower(faces.line(widest.get())));
        }
        return look.low().isEmpty() && look.lines().isEmpty()
                ? texts.get("facemap.title.marks", part, look.marks().size())
                : texts.get("facemap.title.flat", part);
    }

    private String lower(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toLowerCase(texts.locale()) + sentence.substring(1);
    }

    /** When and how it was looked at, and what it may be. */
    String note(FacePage page, LookLine look) {
        Length limit = page.limits().flat();
        List<String> parts = new ArrayList<>();
        parts.add(measures.date(look.look().fact().at().day()));
        parts.add(records.word(look.look().fact().method()));
        parts.add(look.look().fact().by());
        parts.add(look.look().fact().note());
        if (limit != null) {
            parts.add(texts.get("facemap.limit", measures.length(limit)));
        }
        return measures.row(parts.stream().filter(part -> !part.isBlank()).toList());
    }

    /** How the face lies, in words. */
    String turn(FaceKind kind, FaceTurn turn) {
        String key = turn.mirrored() ? "facemap.turn.mirrored" : "facemap.turn.straight";
        boolean fromBelow = kind == FaceKind.HEAD || kind == FaceKind.GASKET_TO_BLOCK;
        String other = texts.get(fromBelow ? "facemap.turn.other.above" : "facemap.turn.other.below");
        return turn.endForEnd() ? texts.get("facemap.turn.end", texts.get(key, other)) : texts.get(key, other);
    }

    /**
     * The map of a look.
     *
     * @param then a look it is held against, or null
     * @param typed what is typed and not written yet
     */
    MapModel model(
            FacePage page,
            Face face,
            FaceKind kind,
            @Nullable LookLine look,
            @Nullable LookLine then,
            List<FaceText.Line> typed) {
        List<MapModel.Value> values = new ArrayList<>();
        List<MapModel.Area> areas = new ArrayList<>();
        List<MapModel.Edge> edges = new ArrayList<>();
        if (look != null) {
            look.points().forEach(point -> values.add(value(page, look, face, point.fact(), then)));
            look.marks().forEach(mark -> areas.add(area(mark.fact(), false)));
            look.lines().forEach(line -> edge(face, line.fact()).ifPresent(edges::add));
        }
        if (then != null) {
            then.marks().forEach(mark -> areas.add(area(mark.fact(), true)));
            if (edges.isEmpty()) {
                then.lines().forEach(line -> edge(face, line.fact()).ifPresent(edges::add));
            }
            if (look == null || look.points().isEmpty()) {
                then.points().forEach(point -> values.add(old(face, point.fact(), then)));
            }
        }
        for (FaceText.Line line : typed) {
            FacePoint point = line.point();
            FaceMark mark = line.mark();
            FaceLine edge = line.edge();
            if (point != null) {
                values.add(typed(face, point));
            } else if (mark != null) {
                areas.add(area(mark, false));
            } else if (edge != null) {
                edge(face, edge).ifPresent(edges::add);
            }
        }
        return new MapModel(face, kind, values, areas, edges, shading(face, look, typed), told(page, look));
    }

    private static @Nullable Shading shading(Face face, @Nullable LookLine look, List<FaceText.Line> typed) {
        List<LowPoint> points = Stream.concat(
                        look == null ? Stream.empty() : look.low().stream(),
                        typed.stream()
                                .map(FaceText.Line::point)
                                .flatMap(Stream::ofNullable)
                                .map(point -> face.point(point.x(), point.y(), point.depth())))
                .toList();
        return Shading.of(
                points,
                face.outline().length().nanometres(),
                face.outline().width().nanometres());
    }

    private String told(FacePage page, @Nullable LookLine look) {
        return look == null ? title(page, null) : texts.get("facemap.told", title(page, look), note(page, look));
    }

    private MapModel.Value value(FacePage page, LookLine look, Face face, FacePoint point, @Nullable LookLine then) {
        Length limit = page.limits().flat();
        boolean deepest = look.findings().stream()
                .anyMatch(finding -> finding.zone().deepest().x().equals(point.x())
                        && finding.zone().deepest().y().equals(point.y()));
        boolean low = look.findings().stream()
                .flatMap(finding -> finding.zone().points().stream())
                .anyMatch(each -> each.x().equals(point.x()) && each.y().equals(point.y()));
        MapModel.Level level = limit != null && point.depth().compareTo(limit) > 0
                ? MapModel.Level.OVER
                : low ? MapModel.Level.LOW : MapModel.Level.HEALTHY;
        String before = then == null ? "" : then(face, point, then);
        return new MapModel.Value(
                mm(point.x()),
                mm(point.y()),
                figure(point.depth()),
                before,
                level,
                deepest,
                readout(face, point, before));
    }

    /** What the other look read there, or nearest within a quarter of a bore pitch. */
    private String then(Face face, FacePoint point, LookLine then) {
        LowPoint here = face.point(point.x(), point.y(), point.depth());
        double near = face.pitch().orElse(face.outline().length().nanometres() / 4) / 4.0;
        return then.low().stream()
                .filter(other -> other.from(here) <= near)
                .min(Comparator.comparingDouble(other -> other.from(here)))
                .map(other -> texts.get("facemap.then", figure(other.depth())))
                .orElse("");
    }

    private MapModel.Value old(Face face, FacePoint point, LookLine then) {
        String before = texts.get("facemap.then", figure(point.depth()));
        return new MapModel.Value(
                mm(point.x()),
                mm(point.y()),
                before,
                "",
                MapModel.Level.HEALTHY,
                false,
                readout(face, point, measures.date(then.look().fact().at().day())));
    }

    private MapModel.Value typed(Face face, FacePoint point) {
        return new MapModel.Value(
                mm(point.x()),
                mm(point.y()),
                figure(point.depth()),
                "",
                MapModel.Level.TYPED,
                false,
                readout(face, point, texts.get("facemap.typed")));
    }

    private String readout(Face face, FacePoint point, String beside) {
        String place = faces.place(face.place(point.x(), point.y()));
        String depth = texts.get(
                point.depth().nanometres() < 0 ? "facemap.proud" : "facemap.low",
                measures.length(new Length(Math.abs(point.depth().nanometres()))));
        String said = texts.get("facemap.readout", records.label(place), depth, whole(point.x()), whole(point.y()));
        return beside.isEmpty() ? said : measures.row(List.of(said, beside));
    }

    private String whole(Length length) {
        return measures.number(length.inMillimetres(), 0);
    }

    /** Low is below nothing, as a dial shows it. */
    private String figure(Length depth) {
        BigDecimal shown = depth.inMillimetres().negate();
        return shown.signum() == 0 ? measures.number(BigDecimal.ZERO, 0) : measures.number(shown, DECIMALS);
    }

    private MapModel.Area area(FaceMark mark, boolean other) {
        String word = records.word(mark.kind());
        Length depth = mark.depth();
        return new MapModel.Area(
                mark.kind(),
                mm(mark.x()),
                mm(mark.y()),
                mark.along() == null ? 0 : mm(mark.along()),
                mark.across() == null ? 0 : mm(mark.across()),
                mark.corners().all().stream()
                        .map(corner -> new double[] {mm(corner.x()), mm(corner.y())})
                        .toList(),
                depth == null ? word : texts.get("facemap.mark", word, figure(depth)),
                other);
    }

    private Optional<MapModel.Edge> edge(Face face, FaceLine line) {
        double length = mm(face.outline().length());
        double width = mm(face.outline().width());
        double off = 0.1 * width;
        double end = 0.03 * length;
        double[] at = switch (line.line()) {
            case EXHAUST_SIDE -> new double[] {end, width - off, length - end, width - off};
            case INLET_SIDE -> new double[] {end, off, length - end, off};
            case FRONT_END -> new double[] {end, off, end, width - off};
            case REAR_END -> new double[] {length - end, off, length - end, width - off};
            case DIAGONAL_FRONT_EXHAUST -> new double[] {end, width - off, length - end, off};
            case DIAGONAL_FRONT_INLET -> new double[] {end, off, length - end, width - off};
            case BETWEEN_BORES -> between(face, line.number(), off, width);
            default -> null;
        };
        return at == null
                ? Optional.empty()
                : Optional.of(new MapModel.Edge(
                        at[0], at[1], at[2], at[3], interval(line), line.goes().nanometres() > 0));
    }

    private static double @Nullable [] between(Face face, @Nullable Integer number, double off, double width) {
        var bores = face.bores();
        if (number == null || number < 1 || number >= bores.size()) {
            return null;
        }
        double x = (mm(bores.get(number - 1).x()) + mm(bores.get(number).x())) / 2;
        return new double[] {x, off, x, width - off};
    }

    /** An interval stays one: {@code 0.05, not 0.06}. */
    private String interval(FaceLine line) {
        Length stops = line.stops();
        String goes = measures.number(line.goes().inMillimetres(), DECIMALS);
        if (stops == null) {
            return texts.get("facemap.edge.open", goes);
        }
        String not = measures.number(stops.inMillimetres(), DECIMALS);
        return line.goes().nanometres() == 0
                ? texts.get("facemap.edge.none", not)
                : texts.get("facemap.edge", goes, not);
    }

    /** The word of an edge or a bore. */
    String word(String key) {
        return texts.get("facemap.word." + key.toLowerCase(Locale.ROOT));
    }

    private static double mm(Length length) {
        return length.nanometres() / MILLIMETRE;
    }
}
