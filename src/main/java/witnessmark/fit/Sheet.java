package witnessmark.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.GasketClass;
import witnessmark.domain.HowStood;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.ToTwenty;
import witnessmark.quantity.Length;

/** What is known of an engine on the bench: what was measured, what is designed, what it may be. Immutable. */
public final class Sheet {
    private final EngineDesign design;
    private final Map<MeasurePlace, Stated> figures;
    private final List<SizeLimit> limits;
    private final @Nullable GasketClass gasket;

    /**
     * A figure as measured.
     *
     * @param value whole parts of its kind's dimension
     * @param stood how the part stood
     * @param toTwenty what brings it to 20 °C; null where there is nothing to bring
     */
    public record Stated(
            long value, HowStood stood, @Nullable ToTwenty toTwenty) {
        /** A figure that stays as it was read. */
        public Stated(long value, HowStood stood) {
            this(value, stood, null);
        }
    }

    /**
     * @param design of the engine
     * @param figures the figure that counts for each place that was measured
     * @param limits those in force for the engine's design and for the designs of the parts in it
     * @param gasket what the head gasket is made like, or null when not said
     */
    public Sheet(
            EngineDesign design,
            Map<MeasurePlace, Stated> figures,
            List<SizeLimit> limits,
            @Nullable GasketClass gasket) {
        this.design = design;
        this.figures = Map.copyOf(figures);
        this.limits = List.copyOf(limits);
        this.gasket = gasket;
    }

    public int cylinders() {
        return design.cylinders();
    }

    /** Main bearings: as many as are written down, else one more than cylinders. */
    public int mains() {
        return design.mains() == null ? design.cylinders() + 1 : design.mains();
    }

    public @Nullable GasketClass gasket() {
        return gasket;
    }

    /** How the part stood when a figure was measured; not said where nothing was. */
    public HowStood stood(MeasurePlace place) {
        Stated stated = figures.get(place);
        return stated == null ? HowStood.NOT_SAID : stated.stood();
    }

    /** The numbers of a kind's places, counted from 1. */
    public List<Integer> numbers(MeasureKind kind) {
        int count = switch (kind.placedAt()) {
            case ENGINE -> 0;
            case CYLINDER -> cylinders();
            case MAIN -> mains();
        };
        return IntStream.rangeClosed(1, count).boxed().toList();
    }

    /** Every place of a kind there is on this engine. */
    public List<MeasurePlace> places(MeasureKind kind) {
        List<MeasurePlace> places = new ArrayList<>();
        List<Integer> numbers = numbers(kind);
        if (numbers.isEmpty()) {
            spots(kind, null, places);
        }
        numbers.forEach(number -> spots(kind, number, places));
        return places;
    }

    private static void spots(MeasureKind kind, @Nullable Integer number, List<MeasurePlace> places) {
        if (kind.spots().isEmpty()) {
            places.add(new MeasurePlace(kind, number, null));
        }
        kind.spots().forEach(spot -> places.add(new MeasurePlace(kind, number, spot)));
    }

    /** The figure measured there, at 20 °C where it could be brought there; or null. */
    public @Nullable Given measured(MeasurePlace place) {
        Stated stated = figures.get(place);
        if (stated == null) {
            return null;
        }
        ToTwenty brought = stated.toTwenty();
        long by = brought == null ? 0 : brought.by();
        return new Given(place, stated.value() + by, Basis.MEASURED, "", brought);
    }

    /** The figure measured there; else as designed; else null. */
    public @Nullable Given given(MeasurePlace place) {
        Given measured = measured(place);
        return measured == null ? designed(place) : measured;
    }

    /** The figure its design gives there, a part's design before the engine's; or null. */
    public @Nullable Given designed(MeasurePlace place) {
        for (boolean ofPart : new boolean[] {true, false}) {
            for (SizeLimit limit : limits) {
                Long figure = limit.designed();
                if (figure != null
                        && ofPart == (limit.partDesign() != null)
                        && holds(limit, place.kind(), place.spot())) {
                    return new Given(place, figure, Basis.AS_DESIGNED, limit.source());
                }
            }
        }
        Length nominal = switch (place.kind()) {
            case BORE -> design.bore();
            case ROD_LENGTH -> design.rodLength();
            default -> null;
        };
        return nominal == null ? null : new Given(place, nominal.nanometres(), Basis.AS_DESIGNED, design.name());
    }

    public @Nullable Length stroke() {
        return design.stroke();
    }

    public @Nullable Length bore() {
        return design.bore();
    }

    /** What a figure may be: of all limits that hold the narrowest, each end with its source. */
    public Bounds bounds(MeasureKind kind, @Nullable Spot spot) {
        Bound least = null;
        Bound most = null;
        Long aimLeast = null;
        Long aimMost = null;
        for (SizeLimit limit : limits) {
            if (holds(limit, kind, spot)) {
                if (limit.atLeast() != null && (least == null || limit.atLeast() > least.value())) {
                    least = new Bound(limit.atLeast(), limit.rank(), limit.source());
                }
                if (limit.atMost() != null && (most == null || limit.atMost() < most.value())) {
                    most = new Bound(limit.atMost(), limit.rank(), limit.source());
                }
                if (limit.designed() == null) {
                    aimLeast = aimLeast == null ? limit.aimLeast() : aimLeast;
                    aimMost = aimMost == null ? limit.aimMost() : aimMost;
                }
            }
        }
        Bounds set = new Bounds(least, most, aimLeast, aimMost);
        return set.limits() ? set : Usual.bounds(kind, gasket, set);
    }

    private static boolean holds(SizeLimit limit, MeasureKind kind, @Nullable Spot spot) {
        return limit.kind() == kind && (limit.spot() == null || limit.spot() == spot);
    }

    /** The same sheet with other figures, as they would be after some work. */
    Sheet with(Map<MeasurePlace, Long> changed) {
        Map<MeasurePlace, Stated> next = new HashMap<>(figures);
        changed.forEach((place, value) -> next.put(place, new Stated(value, stood(place))));
        return new Sheet(design, next, limits, gasket);
    }

    /** The same sheet with another head gasket: its class, its limits and figures in place of those of the one there. */
    Sheet withGasket(@Nullable GasketClass other, List<SizeLimit> itsLimits) {
        Map<MeasurePlace, Stated> next = new HashMap<>(figures);
        next.keySet()
                .removeIf(place -> place.kind() == MeasureKind.GASKET_THICKNESS
                        || place.kind() == MeasureKind.GASKET_BORE
                        || place.kind() == MeasureKind.FIRE_RING_INSET
                        || place.kind() == MeasureKind.SQUISH_WIRE);
        List<SizeLimit> nextLimits = Stream.concat(
                        limits.stream()
                                .filter(limit -> limit.partDesign() == null
                                        || limit.kind() != MeasureKind.GASKET_THICKNESS
                                                && limit.kind() != MeasureKind.GASKET_BORE),
                        itsLimits.stream())
                .toList();
        return new Sheet(design, next, nextLimits, other);
    }
}
