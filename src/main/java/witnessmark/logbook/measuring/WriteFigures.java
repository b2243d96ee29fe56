package witnessmark.logbook.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.BuildStep;
import witnessmark.domain.Entry;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Standing;
import witnessmark.domain.Tool;
import witnessmark.fit.Unlike;
import witnessmark.fit.result.Bounds;
import witnessmark.logbook.port.Ids;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedMeasure;

/** Writes down what is typed on a build sheet: the figure, the unit as typed, and the one before as a repeat. */
public final class WriteFigures {
    private final Ids ids;

    public WriteFigures(Ids ids) {
        this.ids = ids;
    }

    /**
     * What holds for figures taken together.
     *
     * @param tool with what, or null
     * @param temperature of room and parts, or null
     * @param stood how the part stood
     * @param at when
     * @param by by whom
     */
    public record Setting(
            @Nullable Id<Tool> tool, @Nullable Temperature temperature, HowStood stood, Moment at, String by) {}

    /** What may be wrong with a figure that can be read. */
    public enum Doubt {
        /** A bare minus: the crown above the deck, unless the sheet it is copied from counts the other way. */
        SIDE_NOT_SAID,
        /** Far from its limits and from what was measured before. */
        UNLIKE_OTHERS,
        /** The same place was measured before in this build. */
        REPEAT
    }

    /**
     * What a typed text comes to.
     *
     * @param parts the figure, or null when it cannot be read
     * @param example a text that could be read there
     * @param doubts what to ask about
     * @param low the least of the figures known for such a place, or null when none is
     * @param high the most of them, or null
     */
    public record Understood(
            @Nullable Long parts,
            String example,
            List<Doubt> doubts,
            @Nullable Long low,
            @Nullable Long high) {}

    /** Reads a text typed at a place of a sheet. */
    public static Understood read(SheetPage page, MeasurePlace place, String text) {
        return read(page, page, place, text);
    }

    /**
     * The same.
     *
     * @param page the sheet as it is written
     * @param beside the sheet on which its neighbours are looked for: as it would stand with what is typed there
     */
    public static Understood read(SheetPage page, SheetPage beside, MeasurePlace place, String text) {
        MeasureKind kind = place.kind();
        Typed<TypedMeasure> typed = TypedMeasure.read(text, MeasureUnit.shown(kind.dimension()), kind.sided());
        Optional<TypedMeasure> figure = typed.only();
        if (figure.isEmpty()) {
            String example = typed instanceof Typed.Unreadable<TypedMeasure> wrong ? wrong.example() : "";
            return new Understood(null, example, List.of(), null, null);
        }
        Bounds bounds = page.bounds(place);
        List<Long> neighbours = neighbours(beside, place);
        List<Long> known = Stream.concat(bounds.known().stream(), neighbours.stream())
                .sorted()
                .toList();
        List<Doubt> doubts = new ArrayList<>();
        long parts = figure.get().parts();
        if (kind.sided() && parts < 0 && !figure.get().sideSaid()) {
            doubts.add(Doubt.SIDE_NOT_SAID);
        }
        if (Unlike.is(kind, bounds, neighbours, parts)) {
            doubts.add(Doubt.UNLIKE_OTHERS);
        }
        page.figure(place).filter(before -> before.value() != parts).ifPresent(before -> doubts.add(Doubt.REPEAT));
        return new Understood(
                parts,
                "",
                doubts,
                known.isEmpty() ? null : known.get(0),
                known.isEmpty() ? null : known.get(known.size() - 1));
    }

    /** Figures of the same kind that should be like the one at a place: on this sheet, and as designed. */
    private static List<Long> neighbours(SheetPage page, MeasurePlace place) {
        return Stream.concat(
                        Optional.ofNullable(page.designed().get(place)).stream(),
                        page.figures().stream()
                                .map(Entry::fact)
                                .filter(figure -> figure.inUse() && isNeighbour(place, figure.place()))
                                .map(Measurement::value))
                .toList();
    }

    /** A gasket is another one free, clamped and after a run; whatever else is measured at several spots is alike. */
    private static boolean isNeighbour(MeasurePlace place, MeasurePlace other) {
        boolean gasket = place.kind().step() == BuildStep.GASKET;
        return other.kind() == place.kind() && !other.equals(place) && (!gasket || other.spot() == place.spot());
    }

    /**
     * What is written for a figure: it counts from now on, and one that counted before is kept as a repeat.
     *
     * @param text as typed, read by {@link #read}
     * @throws IllegalArgumentException if it cannot be read
     */
    public List<Entry<Measurement>> entries(SheetPage page, MeasurePlace place, String text, Setting setting) {
        Long parts = read(page, place, text).parts();
        if (parts == null) {
            throw new IllegalArgumentException("not a figure of " + place.kind().code() + ": " + text);
        }
        List<Entry<Measurement>> entries = new ArrayList<>();
        page.figures().stream()
                .filter(entry -> entry.fact().inUse() && entry.fact().place().equals(place))
                .forEach(before -> entries.add(repeat(before)));
        entries.add(new Entry<>(
                ids.next(),
                figure(page.build().id(), place, parts, text.strip(), setting),
                Standing.IN_FORCE,
                null,
                1));
        return entries;
    }

    private static Measurement figure(Id<Build> build, MeasurePlace place, long parts, String text, Setting setting) {
        return new Measurement(
                build,
                place.kind(),
                place.number(),
                place.spot(),
                parts,
                text,
                setting.at(),
                setting.tool(),
                setting.temperature(),
                setting.stood(),
                true,
                setting.by(),
                "");
    }

    private static Entry<Measurement> repeat(Entry<Measurement> before) {
        return used(before, false);
    }

    /**
     * What is written to take back the figure that counts at a place: it is struck out, and none counts there; those
     * measured before it stay repeats.
     *
     * @param because the reason kept with it
     */
    public static List<Entry<Measurement>> takeBack(SheetPage page, MeasurePlace place, String because) {
        return page.figures().stream()
                .filter(entry -> entry.fact().inUse() && entry.fact().place().equals(place))
                .map(entry -> new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, because, entry.rev() + 1))
                .toList();
    }

    /** An earlier figure counts again, and the one that counts is kept as a repeat. */
    public static List<Entry<Measurement>> countAgain(SheetPage page, Entry<Measurement> earlier) {
        List<Entry<Measurement>> entries = new ArrayList<>();
        page.figures().stream()
                .filter(entry -> entry.fact().inUse()
                        && entry.fact().place().equals(earlier.fact().place())
                        && !entry.id().equals(earlier.id()))
                .forEach(entry -> entries.add(used(entry, false)));
        entries.add(used(earlier, true));
        return entries;
    }

    private static Entry<Measurement> used(Entry<Measurement> entry, boolean counts) {
        Measurement was = entry.fact();
        Measurement is = new Measurement(
                was.build(),
                was.kind(),
                was.number(),
                was.spot(),
                was.value(),
                was.typed(),
                was.at(),
                was.tool(),
                was.temperature(),
                was.stood(),
                counts,
                was.by(),
                was.note());
        return new Entry<>(entry.id(), is, entry.standing(), entry.struckBecause(), entry.rev() + 1);
    }
}
