package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceHole;
import witnessmark.domain.FaceOutline;
import witnessmark.domain.FrontSide;
import witnessmark.domain.HoleKind;
import witnessmark.domain.Id;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Length;

/** Writes down the joint face of a design: its edges, which way round it lies, and a line for each hole in it. */
public final class WriteOutline implements LogSheet {
    public static final SheetField OF = choice("outline_of", 2);
    public static final SheetField FRONT_END = text("front_end", 1);
    public static final SheetField EXHAUST = choice("exhaust_side", 1);
    public static final SheetField LENGTH = of("face_length", FieldKind.LENGTH);
    public static final SheetField WIDTH = of("face_width", FieldKind.LENGTH);
    public static final SheetField SOURCE = text("source", 2);
    public static final SheetField HOLES = new SheetField("face_holes", FieldKind.LINES, 4);

    private static final String FIGURE = "(\\d+(?:[.,]\\d+)?)";
    private static final Pattern HOLE =
            Pattern.compile("([a-z]+)(?: (\\d+))?[ :]+" + FIGURE + "[ ;]+" + FIGURE + "[ ;]+(?:ø ?)?" + FIGURE);

    @Override
    public String key() {
        return "write_outline";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("outline", List.of(OF, FRONT_END, EXHAUST), List.of(LENGTH, WIDTH, SOURCE)),
                SheetGroup.of("outline_holes", List.of(HOLES)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Choice> designs = sight.all(EngineDesign.class, design -> true);
        return designs.size() == 1 ? shown(designs.get(0).key(), sight) : Map.of();
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return picked.equals(OF) ? shown(typed.text(OF), sight) : Map.of();
    }

    /** What is written of a design's face, to be put right. */
    private static Map<SheetField, String> shown(String design, SheetSight sight) {
        return before(sight, design)
                .map(outline -> Map.of(
                        OF,
                        design,
                        FRONT_END,
                        outline.fact().frontEnd(),
                        EXHAUST,
                        outline.fact().exhaust().code(),
                        LENGTH,
                        AsText.figure(sight.units().length(), outline.fact().length()),
                        WIDTH,
                        AsText.figure(sight.units().length(), outline.fact().width()),
                        SOURCE,
                        outline.fact().source(),
                        HOLES,
                        holes(sight, outline.id()).stream()
                                .map(hole -> line(hole.fact()))
                                .collect(Collectors.joining("\n"))))
                .orElse(Map.of(OF, design));
    }

    private static String line(FaceHole hole) {
        String name = hole.kind().code() + (hole.number() == null ? "" : " " + hole.number());
        return name + " " + hole.x().text() + " " + hole.y().text() + " "
                + hole.diameter().text();
    }

    private static Optional<Entry<FaceOutline>> before(SheetSight sight, String design) {
        return sight
                .facts()
                .of(FaceOutline.class)
                .where(outline -> outline.design().text().equals(design))
                .stream()
                .reduce((one, other) -> other);
    }

    private static List<Entry<FaceHole>> holes(SheetSight sight, Id<FaceOutline> outline) {
        return sight.facts().of(FaceHole.class).where(hole -> hole.outline().equals(outline));
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(OF)) {
            return sight.all(EngineDesign.class, design -> true);
        }
        return field.equals(EXHAUST) ? Choice.words(FrontSide.values()) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<EngineDesign> design = in.chosen(OF, EngineDesign.class);
        in.note(FRONT_END, SheetNote.of("front_end_example"));
        String frontEnd = in.needed(FRONT_END);
        in.note(EXHAUST, SheetNote.of("exhaust_side"));
        FrontSide exhaust = in.word(EXHAUST, FrontSide.class);
        Length length = above0(in, values, LENGTH);
        Length width = above0(in, values, WIDTH);
        in.note(HOLES, SheetNote.of("holes_example"));
        List<FaceHole> holes = holes(in, length, width);
        if (design != null && fewer(in.sight(), design, holes)) {
            in.needed(SOURCE);
        }
        if (!in.fine() || design == null || exhaust == null || length == null || width == null) {
            return;
        }
        FaceOutline outline = new FaceOutline(design.id(), length, width, frontEnd, exhaust, in.text(SOURCE));
        Optional<Entry<FaceOutline>> old = before(in.sight(), design.id().text());
        Id<FaceOutline> id =
                old.isPresent() && !in.isCorrecting() ? in.change(OF, old.get(), outline) : in.make(OF, outline);
        write(in, id, holes);
    }

    /** Whether holes that are written down would go: then it has to be said where that stands. */
    private static boolean fewer(SheetSight sight, Entry<EngineDesign> design, List<FaceHole> holes) {
        return before(sight, design.id().text())
                .filter(outline -> holes(sight, outline.id()).size() > holes.size())
                .isPresent();
    }

    /** What is there is changed in its order; what is more is made, what is too many struck out. */
    private static void write(ReadSheet in, Id<FaceOutline> outline, List<FaceHole> typed) {
        List<Entry<FaceHole>> there = holes(in.sight(), outline);
        for (int i = 0; i < Math.max(typed.size(), there.size()); i++) {
            if (i >= typed.size()) {
                in.strike(HOLES, there.get(i), in.text(SOURCE));
                continue;
            }
            FaceHole each = typed.get(i);
            FaceHole hole = new FaceHole(outline, each.kind(), each.number(), each.x(), each.y(), each.diameter());
            if (i >= there.size()) {
                in.make(HOLES, hole);
            } else if (!there.get(i).fact().equals(hole)) {
                in.change(HOLES, there.get(i), hole);
            }
        }
    }

    private static List<FaceHole> holes(ReadSheet in, @Nullable Length length, @Nullable Length width) {
        List<FaceHole> holes = new ArrayList<>();
        String[] lines = in.text(HOLES).split("\\R");
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip().replaceAll(" +", " ");
            if (line.isEmpty()) {
                continue;
            }
            Optional<FaceHole> hole = hole(line.toLowerCase(Locale.ROOT));
            if (hole.isEmpty()) {
                in.wrong(HOLES, ProblemKind.CANNOT_READ, HOLES, line, "bore 1 65 88 85.2");
            } else if (length != null
                    && width != null
                    && (hole.get().x().compareTo(length) > 0 || hole.get().y().compareTo(width) > 0)) {
                in.wrong(
                        HOLES,
                        ProblemKind.OFF_THE_FACE,
                        i + 1,
                        hole.get().x(),
                        hole.get().y(),
                        length,
                        width);
            }
            hole.ifPresent(holes::add);
        }
        return holes;
    }

    private static Optional<FaceHole> hole(String line) {
        Matcher found = HOLE.matcher(line);
        if (!found.matches()) {
            return Optional.empty();
        }
        HoleKind kind = Coded.find(HoleKind.class, found.group(1)).orElse(null);
        Integer number = found.group(2) == null ? null : Integer.valueOf(found.group(2));
        Length diameter = mm(found.group(5));
        if (kind == null || kind == HoleKind.BORE && (number == null || number < 1) || diameter.nanometres() <= 0) {
            return Optional.empty();
        }
        return Optional.of(
                new FaceHole(new Id<>(new UUID(0, 0)), kind, number, mm(found.group(3)), mm(found.group(4)), diameter));
    }

    private static Length mm(String figure) {
        return Length.ofMillimetres(
                new BigDecimal(Objects.requireNonNull(figure).replace(',', '.')));
    }

    private static @Nullable Length above0(ReadSheet in, ReadValues values, SheetField field) {
        in.needed(field);
        Length length = values.length(field);
        if (length != null && length.nanometres() <= 0) {
            in.wrong(field, ProblemKind.NEEDED, field);
            return null;
        }
        return length;
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(EngineDesign.class, typed.text(OF))
                .map(design -> design.fact().name())
                .orElse(""));
    }
}
