package witnessmark.logbook.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Standing;
import witnessmark.domain.Tool;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Bounds;
import witnessmark.logbook.port.Ids;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedMeasure;

/** Writes down what is typed on a build sheet: the figure, the unit as typed, and the one before as a repeat. */
public final class WriteFigures {
    /** So many times the room between known figures lies what nobody meant. */
    private static final long FAR = 10;
    /** Beside the only figure that is known a slip of the decimal point is at least so many times it. */
    private static final long SLIP = 3;

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
        MeasureKind kind = place.kind();
        Typed<TypedMeasure> typed = TypedMeasure.read(text, MeasureUnit.shown(kind.dimension()), kind.sided());
        Optional<TypedMeasure> figure = typed.only();
        if (figure.isEmpty()) {
            String example = typed instanceof Typed.Unreadable<TypedMeasure> wrong ? wrong.example() : "";
            return new Understood(null, example, List.of(), null, null);
        }
        List<Long> known = known(page, place);
        Long low = known.stream().min(Long::compare).orElse(null);
        Long high = known.stream().max(Long::compare).orElse(null);
        List<Doubt> doubts = new ArrayList<>();
        long parts = figure.get().parts();
        if (kind.sided() && parts < 0 && !figure.get().sideSaid()) {
            doubts.add(Doubt.SIDE_NOT_SAID);
        }
        if (low != null && high != null && far(page.bounds(place), parts, low, high)) {
            doubts.add(Doubt.UNLIKE_OTHERS);
        }
        page.figure(place).filter(before -> before.value() != parts).ifPresent(before -> doubts.add(Doubt.REPEAT));
        return new Understood(parts, "", doubts, low, high);
    }

    /**
     * Whether a figure is one that nobody meant. Where several are known it lies many times their room away; a limit on
     * one side alone speaks of that side, and one figure alone of slips of the decimal point.
     */
    private static boolean far(Bounds bounds, long parts, long low, long high) {
        long room = high - low;
        if (room > 0) {
            long wide = Math.max(room, Math.abs(high) / 100);
            return parts < low - FAR * wide || parts > high + FAR * wide;
        }
        boolean atMost = bounds.most() != null && bounds.most().value() == high;
        boolean tooSmall = low > 0 && !atMost && parts < low / SLIP;
        return tooSmall || Math.abs(parts) > Math.abs(high) * (bounds.limits() ? FAR : SLIP);
    }

    /** Limits, aims and figures of the same kind on this sheet, but for the place itself. */
    private static List<Long> known(SheetPage page, MeasurePlace place) {
        Bounds bounds = page.bounds(place);
        Stream<Long> limits = Stream.of(
                        value(bounds.least()),
                        value(bounds.most()),
                        Optional.ofNullable(bounds.aimLeast()),
                        Optional.ofNullable(bounds.aimMost()))
                .flatMap(Optional::stream);
        Stream<Long> measured = page.figures().stream()
                .map(Entry::fact)
                .filter(figure -> figure.inUse()
                        && figure.kind() == place.kind()
                        && !figure.place().equals(place))
                .map(Measurement::value);
        return Stream.concat(limits, measured).toList();
    }

    private static Optional<Long> value(@Nullable Bound bound) {
        return Optional.ofNullable(bound).map(Bound::value);
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
