package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceLine;
import witnessmark.domain.FaceLook;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FaceMethod;
import witnessmark.domain.FacePoint;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Tool;
import witnessmark.fit.face.Mirrors;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.LowZone;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.FaceText;
import witnessmark.logbook.faces.SeeFaces;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

/** Writes down what was found on the face of a head, gasket or block, a line for each. */
public final class LookAtFace implements LogSheet {
    public static final SheetField PART = choice("face_part", 2);
    public static final SheetField FACE = choice("face_of_part", 2);
    public static final SheetField WHEN = of("work_day", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("work_time", FieldKind.CLOCK);
    public static final SheetField METHOD = choice("face_method", 2);
    public static final SheetField FINEST = of("finest", FieldKind.LENGTH);
    public static final SheetField COUNTED = choice("counted_from", 1);
    public static final SheetField TOOL = choice("tool", 1);
    public static final SheetField BY = text("by", 1);
    public static final SheetField FOUND = new SheetField("face_found", FieldKind.LINES, 4);
    public static final SheetField NOTE = text("face_note", 4);

    /** What {@link #COUNTED} holds when places are counted from the exhaust edge. */
    public static final String FROM_EXHAUST = "exhaust edge";

    public static final String FROM_INLET = "inlet edge";

    private static final Set<PartKind> KINDS = EnumSet.of(PartKind.HEAD, PartKind.BLOCK, PartKind.HEAD_GASKET);
    private static final Id<FaceLook> UNWRITTEN = new Id<>(new UUID(0, 0));
    private static final Length DIAL = new Length(10_000);

    @Override
    public String key() {
        return "look_at_face";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("face", List.of(PART, FACE), List.of(WHEN, WHEN_TIME, BY, TOOL)),
                SheetGroup.of("face_how", List.of(METHOD, FINEST, COUNTED)),
                SheetGroup.of("face_found", List.of(FOUND), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                WHEN,
                sight.today().toString(),
                METHOD,
                FaceMethod.PLATE_AND_DIAL.code(),
                FINEST,
                AsText.figure(sight.units().length(), DIAL),
                COUNTED,
                FROM_INLET,
                BY,
                sight.who());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return FaceParts.in(sight, engine, PartKind.HEAD)
                .map(head -> Map.of(PART, head.text(), FACE, FaceKind.HEAD.code()))
                .orElse(Map.of());
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        if (picked.equals(PART)) {
            List<FaceKind> faces = faces(typed, sight);
            return faces.isEmpty() ? Map.of() : Map.of(FACE, faces.get(0).code());
        }
        return picked.equals(METHOD)
                ? Map.of(FINEST, AsText.figure(sight.units().length(), finest(typed.text(METHOD))))
                : Map.of();
    }

    /** What such a tool usually tells apart (common practice, no source). */
    private static Length finest(String method) {
        if (method.equals(FaceMethod.STRAIGHTEDGE.code())) {
            return FaceText.THINNEST_FEELER;
        }
        return method.equals(FaceMethod.EYE.code()) || method.equals(FaceMethod.BLUE.code())
                ? new Length(1_000_000)
                : DIAL;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(PART)) {
            return FaceParts.choices(sight, KINDS);
        }
        if (field.equals(FACE)) {
            return Choice.words(faces(typed, sight).toArray(FaceKind[]::new));
        }
        if (field.equals(METHOD)) {
            return Choice.words(FaceMethod.values());
        }
        if (field.equals(COUNTED)) {
            return List.of(
                    Choice.of(FROM_INLET, SheetNote.of("from_inlet")),
                    Choice.of(FROM_EXHAUST, SheetNote.of("from_exhaust")));
        }
        return field.equals(TOOL)
                ? Stream.concat(Stream.of(SheetWord.NONE.choice()), ToolsNow.choices(sight).stream())
                        .toList()
                : List.of();
    }

    private static List<FaceKind> faces(SheetTyped typed, SheetSight sight) {
        return sight.find(Part.class, typed.text(PART))
                .flatMap(part -> FaceParts.page(sight, part))
                .map(page -> Stream.of(FaceKind.values())
                        .filter(SeeFaces.faces(page.kind())::contains)
                        .toList())
                .orElse(List.of());
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<Part> part = in.chosen(PART, Part.class);
        Optional<FacePage> page = FaceParts.page(in.sight(), part);
        FaceKind kind = in.word(FACE, FaceKind.class);
        if (kind != null
                && page.isPresent()
                && !SeeFaces.faces(page.get().kind()).contains(kind)) {
            in.wrong(FACE, ProblemKind.NEEDED, FACE);
        }
        Moment when = values.moment(WHEN, WHEN_TIME);
        FaceMethod method = in.word(METHOD, FaceMethod.class);
        in.needed(FINEST);
        Length finest = values.length(FINEST);
        if (finest != null && finest.nanometres() <= 0) {
            in.wrong(FINEST, ProblemKind.NEEDED, FINEST);
            return;
        }
        Entry<Tool> tool = in.text(TOOL).isEmpty() || in.is(TOOL, SheetWord.NONE) ? null : in.chosen(TOOL, Tool.class);
        in.note(FOUND, SheetNote.of("face_found_example"));
        in.needed(FOUND);
        if (part == null || kind == null || when == null || method == null || finest == null) {
            return;
        }
        Face face = page.map(FacePage::face).orElse(null);
        boolean fromExhaust = in.text(COUNTED).equals(FROM_EXHAUST);
        List<FaceText.Line> lines = new FaceText(face, UNWRITTEN, finest, fromExhaust).read(in.text(FOUND));
        lines.stream()
                .map(FaceText.Line::problem)
                .flatMap(Stream::ofNullable)
                .findFirst()
                .ifPresent(problem -> in.wrong(FOUND, problem));
        if (in.fine() && face != null) {
            mirrored(in, face, page, kind, lines);
        }
        if (in.fine()) {
            FaceLook look = new FaceLook(
                    part.id(), kind, when, method, finest, tool == null ? null : tool.id(), in.text(BY), in.text(NOTE));
            Id<FaceLook> written = in.make(FOUND, look);
            write(in, new FaceText(face, written, finest, fromExhaust));
        }
    }

    private static void write(ReadSheet in, FaceText text) {
        for (FaceText.Line line : text.read(in.text(FOUND))) {
            FacePoint point = line.point();
            FaceLine edge = line.edge();
            FaceMark mark = line.mark();
            if (point != null) {
                in.make(FOUND, point);
            } else if (edge != null) {
                in.make(FOUND, edge);
            } else if (mark != null) {
                in.make(FOUND, mark);
            }
        }
    }

    /** What would meet a zone seen before only turned over is asked about. */
    private static void mirrored(
            ReadSheet in, Face face, Optional<FacePage> page, FaceKind kind, List<FaceText.Line> lines) {
        List<LowZone> before = page.stream()
                .flatMap(of -> of.looks().stream())
                .filter(look -> look.look().fact().face() == kind)
                .flatMap(look -> look.findings().stream())
                .map(ZoneFinding::zone)
                .toList();
        List<LowPoint> now = lines.stream()
                .map(line -> low(face, line))
                .flatMap(Stream::ofNullable)
                .toList();
        Mirrors.suspected(face, before, now)
                .ifPresent(zone -> in.wrong(
                        COUNTED,
                        Problem.of(
                                ProblemKind.PERHAPS_MIRRORED,
                                zone.deepest().x(),
                                zone.deepest().y())));
    }

    private static @Nullable LowPoint low(Face face, FaceText.Line line) {
        FacePoint point = line.point();
        FaceMark mark = line.mark();
        if (point != null) {
            return face.point(point.x(), point.y(), point.depth());
        }
        return mark == null || mark.depth() == null ? null : face.point(mark.x(), mark.y(), mark.depth());
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Part.class, typed.text(PART))
                .map(part -> part.fact().mark())
                .orElse(""));
    }
}
