package witnessmark.logbook.measuring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.GasketClass;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.Spot;
import witnessmark.fit.Checks;
import witnessmark.fit.Contradictions;
import witnessmark.fit.Sheet;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Contradiction;
import witnessmark.quantity.Length;
import witnessmark.quantity.typed.LengthUnit;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedMeasure;

/**
 * A stack-up from a few lines of text, with no logbook. Each line is {@code name = figure}: {@code cylinders = 4},
 * {@code engine bore = 85.2}, {@code deck clearance 1 thrust side = 0.22 down}, {@code chamber volume = 33} for every
 * cylinder, {@code limit crown to head >= 1.00}. What stands behind a {@code #} is a remark.
 */
public final class StackUp {
    private static final int MOST_CYLINDERS = 24;
    /** Limits of the file hold for its one engine, which has no identity of its own. */
    private static final Id<EngineDesign> DESIGN = new Id<>(new UUID(0, 0));

    private final List<Unread> unread = new ArrayList<>();
    private final Map<MeasurePlace, Sheet.Stated> figures = new HashMap<>();
    private final List<SizeLimit> limits = new ArrayList<>();
    private final Map<String, Length> engine = new HashMap<>();
    private final List<String[]> later = new ArrayList<>();
    private final List<Integer> laterLines = new ArrayList<>();
    private int cylinders = 1;
    private @Nullable GasketClass gasket;

    private StackUp() {}

    /**
     * A line that was not understood.
     *
     * @param line as an editor counts it
     * @param text the line
     * @param example a line that would be
     */
    public record Unread(int line, String text, String example) {}

    /**
     * What the lines come to.
     *
     * @param answers the checks
     * @param contradictions figures that cannot all be right
     * @param unread lines that were not understood; nothing of them counts
     */
    public record Read(List<Answer> answers, List<Contradiction> contradictions, List<Unread> unread) {}

    public static Read of(List<String> lines) {
        StackUp stack = new StackUp();
        for (int i = 0; i < lines.size(); i++) {
            String text = lines.get(i).replaceFirst("#.*", "").strip();
            if (!text.isEmpty()) {
                stack.line(i + 1, text);
            }
        }
        stack.measured();
        Sheet sheet = stack.sheet();
        return new Read(Checks.of(sheet), Contradictions.of(sheet), List.copyOf(stack.unread));
    }

    private Sheet sheet() {
        EngineDesign design = new EngineDesign(
                "",
                cylinders,
                "",
                engine.get("engine bore"),
                engine.get("engine stroke"),
                engine.get("engine rod"),
                null,
                null,
                null,
                null,
                "",
                null);
        return new Sheet(design, figures, limits, gasket);
    }

    private void line(int number, String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (lower.startsWith("limit ")) {
            limit(number, text, lower.substring("limit ".length()));
            return;
        }
        int sign = text.indexOf('=');
        String name = sign < 0 ? "" : lower.substring(0, sign).strip().replaceAll("\\s+", " ");
        String figure = sign < 0 ? "" : text.substring(sign + 1).strip();
        switch (name) {
            case "cylinders" -> cylinders(number, text, figure);
            case "engine bore", "engine stroke", "engine rod" ->
                TypedFigure.read(figure, LengthUnit.MILLIMETRE)
                        .only()
                        .filter(length -> length.nanometres() > 0)
                        .ifPresentOrElse(
                                length -> engine.put(name, length), () -> unread(number, text, name + " = 85.2"));
            case "gasket class" ->
                Coded.find(GasketClass.class, figure.toLowerCase(Locale.ROOT))
                        .ifPresentOrElse(
                                made -> gasket = made, () -> unread(number, text, "gasket class = multi-layer steel"));
            default -> {
                later.add(new String[] {name, figure, text});
                laterLines.add(number);
            }
        }
    }

    private void cylinders(int number, String text, String figure) {
        Optional<Integer> count = TypedFigure.count(figure).only();
        if (count.isPresent() && count.get() >= 1 && count.get() <= MOST_CYLINDERS) {
            cylinders = count.get();
        } else {
            unread(number, text, "cylinders = 4");
        }
    }

    /** Figures are placed once all lines are read, for how many cylinders there are may stand last. */
    private void measured() {
        Sheet places = sheet();
        for (int i = 0; i < later.size(); i++) {
            String[] line = later.get(i);
            Named named = named(line[0]);
            List<MeasurePlace> at = named == null || named.kind().workedOut() ? List.of() : named.places(places);
            Optional<TypedMeasure> figure = at.isEmpty()
                    ? Optional.empty()
                    : TypedMeasure.read(
                                    line[1],
                                    MeasureUnit.shown(at.get(0).kind().dimension()),
                                    at.get(0).kind().sided())
                            .only();
            if (figure.isEmpty()) {
                unread(laterLines.get(i), line[2], "deck clearance 1 thrust side = 0.22 down");
            } else {
                at.forEach(place ->
                        figures.put(place, new Sheet.Stated(figure.get().parts(), HowStood.NOT_SAID)));
            }
        }
    }

    private void limit(int number, String text, String rest) {
        boolean least = rest.contains(">=");
        String[] parts = rest.split(least ? ">=" : "<=", 2);
        Named named = parts.length < 2 ? null : named(parts[0].strip().replaceAll("\\s+", " "));
        Long figure = named == null || named.number() != null
                ? null
                : TypedMeasure.read(
                                parts[1].strip(),
                                MeasureUnit.shown(named.kind().dimension()),
                                named.kind().sided())
                        .only()
                        .map(TypedMeasure::parts)
                        .orElse(null);
        if (named == null || figure == null) {
            unread(number, text, "limit crown to head >= 1.00");
            return;
        }
        limits.add(new SizeLimit(
                named.kind(),
                named.spot(),
                DESIGN,
                null,
                least ? figure : null,
                least ? null : figure,
                null,
                null,
                LimitRank.OWN,
                "line " + number,
                LocalDate.EPOCH,
                null));
    }

    private void unread(int line, String text, String example) {
        unread.add(new Unread(line, text, example));
    }

    /** What a name means: a kind, a number where one is said, a spot where one is said. */
    private record Named(
            MeasureKind kind,
            @Nullable Integer number,
            @Nullable Spot spot) {
        /** The places it stands for; none where it names one the engine does not have. */
        List<MeasurePlace> places(Sheet sheet) {
            return sheet.places(kind).stream()
                    .filter(place -> number == null || number.equals(place.number()))
                    .filter(place -> spot == null || spot == place.spot())
                    .toList();
        }
    }

    private static @Nullable Named named(String name) {
        MeasureKind kind = Stream.of(MeasureKind.values())
                .filter(each -> starts(name, each.code().toLowerCase(Locale.ROOT)))
                .max(Comparator.comparingInt(each -> each.code().length()))
                .orElse(null);
        if (kind == null) {
            return null;
        }
        String rest = name.substring(kind.code().length()).strip();
        String digits = rest.replaceFirst("[^0-9].*", "");
        Integer number = digits.isEmpty() || digits.length() > 2 ? null : Integer.valueOf(digits);
        String word = rest.substring(digits.length()).strip();
        if (word.isEmpty()) {
            return new Named(kind, number, null);
        }
        return kind.spots().stream()
                .filter(spot -> spot.code().toLowerCase(Locale.ROOT).equals(word))
                .findFirst()
                .map(spot -> new Named(kind, number, spot))
                .orElse(null);
    }

    private static boolean starts(String name, String code) {
        return name.equals(code) || name.startsWith(code + " ");
    }
}
