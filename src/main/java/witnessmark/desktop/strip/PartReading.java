package witnessmark.desktop.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.PartSpot;
import witnessmark.study.result.Outline;
import witnessmark.study.result.StripCell;
import witnessmark.study.result.StripRow;
import witnessmark.wording.PartPlaceWords;
import witnessmark.wording.StripWords;
import witnessmark.wording.Texts;

/** What the drawing of a part shows of a position: its marks, those of the strip before, and those of the other positions. */
final class PartReading {
    private final Texts texts;
    private final PartPlaceWords places;
    private final StripWords words;

    PartReading(Texts texts, StripWords words) {
        this.texts = texts;
        this.places = new PartPlaceWords(texts);
        this.words = words;
    }

    /**
     * @param inHand the finding in hand, or null
     * @param build the number of the build a finding is of
     */
    PartSpots of(
            StripRow row, StripCell cell, @Nullable Entry<Finding> inHand, Function<Entry<Finding>, String> build) {
        Outline outline = row.line().outline();
        if (outline == Outline.NONE) {
            return PartSpots.NONE;
        }
        List<PartSpots.Spot> spots = new ArrayList<>();
        Stream.concat(Stream.of(row.whole()), row.cells().stream())
                .filter(other -> !Objects.equals(other.number(), cell.number()))
                .forEach(other -> other.found()
                        .forEach(seen -> spot(seen, PartSpots.Whose.OTHER, words.number(other))
                                .ifPresent(spots::add)));
        cell.before().forEach(seen -> spot(seen, PartSpots.Whose.BEFORE, "").ifPresent(spots::add));
        cell.found()
                .forEach(seen -> spot(seen, seen == inHand ? PartSpots.Whose.IN_HAND : PartSpots.Whose.NOW, "")
                        .ifPresent(spots::add));
        spots.sort(Comparator.comparing(PartSpots.Spot::whose));
        PartSpot at = inHand == null ? null : place(inHand);
        return new PartSpots(at, spots, said(outline, at, spots, cell, build));
    }

    private String said(
            Outline outline,
            @Nullable PartSpot at,
            List<PartSpots.Spot> spots,
            StripCell cell,
            Function<Entry<Finding>, String> build) {
        List<String> said = new ArrayList<>();
        said.add(
                at == null
                        ? texts.get("strip.page.drawing.none")
                        : texts.get(
                                "strip.page.drawing.at",
                                places.of(outline, at.around(), at.out()),
                                places.figures(outline, at.around(), at.out())));
        if (has(spots, PartSpots.Whose.BEFORE)) {
            cell.worstBefore().ifPresent(was -> said.add(texts.get("strip.page.drawing.before", build.apply(was))));
        }
        if (has(spots, PartSpots.Whose.OTHER)) {
            said.add(texts.get("strip.page.drawing.others"));
        }
        return String.join(" ", said);
    }

    private static boolean has(List<PartSpots.Spot> spots, PartSpots.Whose whose) {
        return spots.stream().anyMatch(spot -> spot.whose() == whose);
    }

    private static Optional<PartSpots.Spot> spot(Entry<Finding> seen, PartSpots.Whose whose, String number) {
        return Optional.ofNullable(place(seen))
                .map(place -> new PartSpots.Spot(place, whose, seen.fact().how(), number));
    }

    private static @Nullable PartSpot place(Entry<Finding> seen) {
        return seen.fact().onPart();
    }
}
