package witnessmark.logbook.faces;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Corners;
import witnessmark.domain.FaceLine;
import witnessmark.domain.FaceLook;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FaceMarkKind;
import witnessmark.domain.FacePoint;
import witnessmark.domain.Id;
import witnessmark.domain.Spot;
import witnessmark.fit.result.face.Face;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Length;

/**
 * Reads what was found on a face, a line for each: {@code 206 148 0.08} is a reading at x, y with its depth, low unless it
 * says {@code proud}; {@code exhaust side 0.05 not 0.06} what goes under a straightedge and what does not;
 * {@code gas track 206 112: black from 2 to 3}, {@code low area 206 148 64x22 0.08} and
 * {@code unsealed patch (180 120, 230 120, 205 160)} marks. Places are millimetres from the front end and the inlet edge.
 */
public final class FaceText {
    /** No feeler is thinner than this and still one to trust (common practice, no source: 0.03 to 0.05 mm). */
    public static final Length THINNEST_FEELER = new Length(30_000);

    private static final String FIGURE = "(\\d+(?:[.,]\\d+)?|[.,]\\d+)";
    private static final String SIGNED = "([-−]?(?:\\d+(?:[.,]\\d+)?|[.,]\\d+))";
    private static final Pattern POINT =
            Pattern.compile(FIGURE + "[ ;\\t]+" + FIGURE + "[ ;\\t]+" + SIGNED + "(?: (low|proud))?");
    private static final Pattern EDGE =
            Pattern.compile("(along the exhaust side|exhaust side|along the inlet side|inlet side|front end|rear end"
                    + "|diagonal from front exhaust|diagonal exhaust|diagonal from front inlet|diagonal inlet"
                    + "|between (?:bores )?(\\d+)(?: and \\d+)?)(?: " + FIGURE + ")?(?: not " + FIGURE + ")?");
    private static final Pattern MARK = Pattern.compile("(?:" + FIGURE + "[ ;]+" + FIGURE + "|\\(([^)]*)\\))(?: "
            + FIGURE + " ?[x×] ?" + FIGURE + ")?(?: " + SIGNED + "(?: (low|proud))?)?");
    private static final Map<String, Spot> EDGES = Map.of(
            "along the exhaust side", Spot.EXHAUST_SIDE,
            "exhaust side", Spot.EXHAUST_SIDE,
            "along the inlet side", Spot.INLET_SIDE,
            "inlet side", Spot.INLET_SIDE,
            "front end", Spot.FRONT_END,
            "rear end", Spot.REAR_END,
            "diagonal from front exhaust", Spot.DIAGONAL_FRONT_EXHAUST,
            "diagonal exhaust", Spot.DIAGONAL_FRONT_EXHAUST,
            "diagonal from front inlet", Spot.DIAGONAL_FRONT_INLET,
            "diagonal inlet", Spot.DIAGONAL_FRONT_INLET);
    private static final List<FaceMarkKind> KINDS = Stream.of(FaceMarkKind.values())
            .sorted(Comparator.comparingInt((FaceMarkKind kind) -> kind.code().length())
                    .reversed())
            .toList();
    private static final String EXAMPLE = "206 148 0.08";

    private final @Nullable Face face;
    private final Id<FaceLook> look;
    private final Length finest;
    private final boolean fromExhaust;

    /**
     * @param face whose edges the places have to keep within; null while no outline is written down
     * @param look of which look they are
     * @param finest step of what it was measured with
     * @param fromExhaust whether y was counted from the exhaust edge: then it is turned over
     */
    public FaceText(@Nullable Face face, Id<FaceLook> look, Length finest, boolean fromExhaust) {
        this.face = face;
        this.look = look;
        this.finest = finest;
        this.fromExhaust = fromExhaust && face != null;
    }

    /**
     * A line as it was understood: one of the three, or a problem; all null for an empty line.
     *
     * @param number as counted from 1
     */
    public record Line(
            int number,
            @Nullable FacePoint point,
            @Nullable FaceLine edge,
            @Nullable FaceMark mark,
            @Nullable Problem problem) {}

    /** Every line of a text. */
    public List<Line> read(String text) {
        List<Line> lines = new ArrayList<>();
        int number = 0;
        for (String line : text.split("\\R", -1)) {
            number++;
            lines.add(line(number, line.strip().replaceAll("[ \\u00A0\\u2009]+", " ")));
        }
        return lines;
    }

    private Line line(int number, String text) {
        if (text.isEmpty()) {
            return new Line(number, null, null, null, null);
        }
        try {
            String lower = text.toLowerCase(Locale.ROOT);
            Matcher point = POINT.matcher(lower.replaceAll(", +", " "));
            if (point.matches()) {
                return point(number, point);
            }
            Matcher edge = EDGE.matcher(lower);
            if (edge.matches() && (edge.group(3) != null || edge.group(4) != null)) {
                return edge(number, edge);
            }
            Optional<FaceMarkKind> kind = KINDS.stream()
                    .filter(each -> lower.startsWith(each.code() + " "))
                    .findFirst();
            if (kind.isPresent()) {
                return mark(number, kind.get(), text);
            }
        } catch (IllegalArgumentException e) { // a figure or an outline that is none
            return unread(number, text);
        }
        return unread(number, text);
    }

    private static Line unread(int number, String text) {
        return new Line(number, null, null, null, Problem.of(ProblemKind.FACE_LINE_UNREAD, number, text, EXAMPLE));
    }

    private static Line wrong(int number, ProblemKind kind, Object... facts) {
        return new Line(number, null, null, null, Problem.of(kind, facts));
    }

    private Line point(int number, Matcher found) {
        Length x = mm(found.group(1));
        Length y = turned(mm(found.group(2)));
        Length depth = depth(found.group(3), found.group(4));
        Line off = offTheFace(number, x, y);
        if (off != null) {
            return off;
        }
        return depth.nanometres() % finest.nanometres() == 0
                ? new Line(number, new FacePoint(look, x, y, depth), null, null, null)
                : wrong(number, ProblemKind.FINER_THAN_TOOL, number, depth, finest);
    }

    /** Low unless it says proud; a minus is how a dial shows low. */
    private static Length depth(String figure, @Nullable String word) {
        long low = Math.abs(mm(figure.replace('−', '-')).nanometres());
        return new Length("proud".equals(word) ? -low : low);
    }

    private @Nullable Line offTheFace(int number, Length x, Length y) {
        return face == null || face.holds(x, y)
                ? null
                : wrong(
                        number,
                        ProblemKind.OFF_THE_FACE,
                        number,
                        x,
                        y,
                        face.outline().length(),
                        face.outline().width());
    }

    private Line edge(int number, Matcher found) {
        String name = found.group(1);
        Spot spot = EDGES.getOrDefault(name, Spot.BETWEEN_BORES);
        Length goes = found.group(3) == null ? new Length(0) : mm(found.group(3));
        Length stops = found.group(4) == null ? null : mm(found.group(4));
        for (Length feeler : new @Nullable Length[] {goes, stops}) {
            if (feeler != null && feeler.nanometres() > 0 && feeler.compareTo(THINNEST_FEELER) < 0) {
                return wrong(number, ProblemKind.FEELER_TOO_FINE, number, feeler, THINNEST_FEELER);
            }
        }
        if (stops != null && stops.compareTo(goes) <= 0) {
            return wrong(number, ProblemKind.STOPS_BEFORE_IT_GOES, number, goes, stops);
        }
        Integer between = found.group(2) == null ? null : Integer.valueOf(found.group(2));
        return new Line(number, null, new FaceLine(look, spot, between, goes, stops), null, null);
    }

    private Line mark(int number, FaceMarkKind kind, String text) {
        String rest = text.substring(kind.code().length()).strip();
        int colon = rest.indexOf(':');
        String words = colon < 0 ? "" : rest.substring(colon + 1).strip();
        Matcher found = MARK.matcher(
                (colon < 0 ? rest : rest.substring(0, colon)).strip().toLowerCase(Locale.ROOT));
        if (!found.matches()) {
            return unread(number, text);
        }
        String outline = found.group(3) == null ? "" : turned(Corners.read(found.group(3)));
        Length along = found.group(4) == null ? null : mm(found.group(4));
        Length across = found.group(5) == null ? null : mm(found.group(5));
        Length depth = found.group(6) == null ? null : depth(found.group(6), found.group(7));
        Corners corners = Corners.read(outline);
        if (found.group(3) != null && (corners.all().isEmpty() || along != null)) {
            return unread(number, text);
        }
        Length x =
                corners.all().isEmpty() ? mm(found.group(1)) : corners.middle().x();
        Length y = corners.all().isEmpty()
                ? turned(mm(found.group(2)))
                : corners.middle().y();
        Line off = Stream.concat(Stream.of(new Corners.Corner(x, y)), corners.all().stream())
                .map(corner -> offTheFace(number, corner.x(), corner.y()))
                .flatMap(Stream::ofNullable)
                .findFirst()
                .orElse(null);
        if (off != null) {
            return off;
        }
        return new Line(number, null, null, new FaceMark(look, kind, x, y, along, across, outline, depth, words), null);
    }

    private Length turned(Length y) {
        return fromExhaust && face != null ? face.mirrored(y) : y;
    }

    private String turned(Corners corners) {
        return new Corners(corners.all().stream()
                        .map(corner -> new Corners.Corner(corner.x(), turned(corner.y())))
                        .toList())
                .text();
    }

    private static Length mm(String figure) {
        return Length.ofMillimetres(new BigDecimal(figure.replace(',', '.')));
    }
}
