package witnessmark.desktop.faces;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.FaceMap;
import witnessmark.chart.FaceShading;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceLine;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FacePoint;
import witnessmark.domain.HoleKind;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.LowZone;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.FaceText;
import witnessmark.logbook.faces.LookLine;
import witnessmark.quantity.Length;
import witnessmark.wording.FaceWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Makes the face map of a look, with another laid over it, and of what is typed. The same look always gives the same map. */
public final class MapWords {
    private static final double MILLIMETRE = 1_000_000;
    private static final int DECIMALS = 2;

    private final Texts texts;
    private final Measures measures;
    private final FaceWords faces;
    private final RecordWords records;

    public MapWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.faces = new FaceWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /**
     * {@code Head HD-06, seen from the face: 0.08 mm low between 2 and 3, exhaust side}; what is coming back first.
     *
     * @param then a look it is held against, or null
     */
    public String title(FacePage page, @Nullable LookLine look, @Nullable LookLine then) {
        String part = texts.get(
                "facemap.part",
                records.label(records.word(page.kind())),
                page.part().fact().mark());
        if (look == null) {
            return texts.get("facemap.title.none", part);
        }
        Optional<ZoneFinding> back = look.findings().stream()
                .filter(finding -> finding.state() == ZoneFinding.State.COMING_BACK)
                .findFirst();
        if (back.isPresent()) {
            return texts.get("facemap.title.back", part, faces.zone(back.get().zone()));
        }
        Optional<String> zone = deepest(look);
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
        if (look.low().isEmpty() && look.lines().isEmpty()) {
            return texts.get("facemap.title.marks", part, look.marks().size());
        }
        Optional<String> was = then == null || !isEarlier(then, look) ? Optional.empty() : deepest(then);
        return was.isEmpty()
                ? texts.get("facemap.title.flat", part)
                : texts.get(
                        "facemap.title.flat.then",
                        part,
                        was.get(),
                        measures.date(
                                Objects.requireNonNull(then).look().fact().at().day()));
    }

    private static boolean isEarlier(LookLine then, LookLine look) {
        return then.look().fact().at().isBefore(look.look().fact().at())
                && then.look().fact().part().equals(look.look().fact().part());
    }

    private Optional<String> deepest(LookLine look) {
        return look.findings().stream()
                .map(ZoneFinding::zone)
                .max(Comparator.comparing(found -> found.deepest().depth()))
                .map(faces::zone);
    }

    private String lower(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toLowerCase(texts.locale()) + sentence.substring(1);
    }

    /** When and how it was looked at, and what it may be. */
    public String note(FacePage page, LookLine look) {
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
    public String turn(FaceKind kind, FaceTurn turn) {
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
    public FaceMap model(
            FacePage page, Face face, @Nullable LookLine look, @Nullable LookLine then, List<FaceText.Line> typed) {
        List<FaceMap.Value> values = new ArrayList<>();
        List<FaceMap.Area> areas = new ArrayList<>();
        List<FaceMap.Line> lines = new ArrayList<>();
        if (look != null) {
            look.points().forEach(point -> values.add(value(page, look, face, point.fact(), then)));
            look.marks().forEach(mark -> areas.add(area(mark.fact(), false)));
            look.lines().forEach(line -> edge(face, line.fact()).ifPresent(lines::add));
        }
        if (then != null) {
            then.marks().forEach(mark -> areas.add(area(mark.fact(), true)));
            if (lines.isEmpty()) {
                then.lines().forEach(line -> edge(face, line.fact()).ifPresent(lines::add));
            }
            then.points().stream()
                    .map(point -> point.fact())
                    .filter(point -> look == null || nearest(face, point, look).isEmpty())
                    .forEach(point -> values.add(old(face, point, then)));
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
                edge(face, edge).ifPresent(lines::add);
            }
        }
        return new FaceMap(
                edges(face),
                holes(face),
                values,
                areas,
                lines,
                zones(page, look, then),
                shading(face, look, typed),
                then == null || look == null ? null : shading(face, then, List.of()),
                told(page, look, then));
    }

    /** A face with nothing on it but these. */
    public FaceMap with(Face face, List<FaceMap.Area> areas, String words) {
        return new FaceMap(edges(face), holes(face), List.of(), areas, List.of(), List.of(), null, null, words);
    }

    private FaceMap.Edges edges(Face face) {
        return new FaceMap.Edges(
                mm(face.outline().length()),
                mm(face.outline().width()),
                face.outline().frontEnd(),
                texts.get("facemap.word.inlet"),
                texts.get("facemap.word.exhaust"));
    }

    private List<FaceMap.Hole> holes(Face face) {
        return face.holes().stream()
                .map(hole -> new FaceMap.Hole(
                        mm(hole.x()),
                        mm(hole.y()),
                        mm(hole.diameter()),
                        hole.kind() == HoleKind.BORE && hole.number() != null
                                ? texts.get("facemap.word.bore", hole.number())
                                : "",
                        hole.kind() == HoleKind.BORE))
                .toList();
    }

    /** What its low zones are, and which of those before it would be drawn as low. */
    private List<FaceMap.Zone> zones(FacePage page, @Nullable LookLine look, @Nullable LookLine then) {
        List<FaceMap.Zone> zones = new ArrayList<>();
        if (look != null) {
            look.findings()
                    .forEach(finding -> zones.add(zone(
                            finding.zone(),
                            texts.get("facemap.zone." + finding.state().name().toLowerCase(Locale.ROOT)),
                            isOver(page, finding.zone().deepest().depth()) ? FaceMap.Level.OVER : FaceMap.Level.LOW)));
        }
        if (then != null) {
            then.findings().stream()
                    .map(ZoneFinding::zone)
                    .filter(zone -> mm(zone.deepest().depth()) >= FaceShading.LOW)
                    .forEach(zone -> zones.add(zone(
                            zone,
                            texts.get(
                                    "facemap.zone.then",
                                    measures.date(then.look().fact().at().day())),
                            FaceMap.Level.BEFORE)));
        }
        return zones;
    }

    private static FaceMap.Zone zone(LowZone zone, String word, FaceMap.Level level) {
        return new FaceMap.Zone(mm(zone.deepest().x()), mm(zone.deepest().y()), word, level);
    }

    private static boolean isOver(FacePage page, Length depth) {
        Length limit = page.limits().flat();
        return limit != null && depth.compareTo(limit) > 0;
    }

    private static @Nullable FaceShading shading(Face face, @Nullable LookLine look, List<FaceText.Line> typed) {
        Stream<FaceShading.Reading> read = look == null
                ? Stream.empty()
                : look.low().stream()
                        .map(point -> new FaceShading.Reading(mm(point.x()), mm(point.y()), mm(point.depth())));
        Stream<FaceShading.Reading> written = typed.stream()
                .map(FaceText.Line::point)
                .flatMap(Stream::ofNullable)
                .map(point -> new FaceShading.Reading(mm(point.x()), mm(point.y()), mm(point.depth())));
        return FaceShading.of(
                Stream.concat(read, written).toList(),
                mm(face.outline().length()),
                mm(face.outline().width()));
    }

    private String told(FacePage page, @Nullable LookLine look, @Nullable LookLine then) {
        return look == null
                ? title(page, null, null)
                : texts.get("facemap.told", title(page, look, then), note(page, look));
    }

    private FaceMap.Value value(FacePage page, LookLine look, Face face, FacePoint point, @Nullable LookLine then) {
        boolean low = look.findings().stream()
                .flatMap(finding -> finding.zone().points().stream())
                .anyMatch(each -> each.x().equals(point.x()) && each.y().equals(point.y()));
        FaceMap.Level level =
                isOver(page, point.depth()) ? FaceMap.Level.OVER : low ? FaceMap.Level.LOW : FaceMap.Level.HEALTHY;
        String before = then == null ? "" : then(face, point, then);
        return new FaceMap.Value(
                mm(point.x()), mm(point.y()), figure(point.depth()), before, level, readout(face, point, before));
    }

    private String then(Face face, FacePoint point, LookLine then) {
        return nearest(face, point, then)
                .map(other -> texts.get("facemap.then", figure(other.depth())))
                .orElse("");
    }

    private static Optional<LowPoint> nearest(Face face, FacePoint point, LookLine look) {
        return face.nearest(face.point(point.x(), point.y(), point.depth()), look.low());
    }

    private FaceMap.Value old(Face face, FacePoint point, LookLine then) {
        String before = texts.get("facemap.then", figure(point.depth()));
        return new FaceMap.Value(
                mm(point.x()),
                mm(point.y()),
                before,
                "",
                FaceMap.Level.BEFORE,
                readout(face, point, measures.date(then.look().fact().at().day())));
    }

    private FaceMap.Value typed(Face face, FacePoint point) {
        return new FaceMap.Value(
                mm(point.x()),
                mm(point.y()),
                figure(point.depth()),
                "",
                FaceMap.Level.TYPED,
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

    private FaceMap.Area area(FaceMark mark, boolean other) {
        String word = records.word(mark.kind());
        Length depth = mark.depth();
        return new FaceMap.Area(
                MarkShapes.of(mark.kind(), 1),
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

    private Optional<FaceMap.Line> edge(Face face, FaceLine line) {
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
                : Optional.of(new FaceMap.Line(
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

    private static double mm(Length length) {
        return length.nanometres() / MILLIMETRE;
    }
}
