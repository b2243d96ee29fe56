package witnessmark.logbook.measuring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.PlacedAt;
import witnessmark.domain.Table;
import witnessmark.fit.Sheet;
import witnessmark.logbook.View;

/**
 * What a build sheet asks for, in the order it is measured: step by step as the engine goes together, cylinders in the
 * order its design gives, both sides of each before the next. It asks for what has a limit, for what was measured in a
 * build of that design before, and for what the usual checks need and neither a design nor anybody says.
 */
final class MeasuringOrder {
    private static final Set<MeasureKind> USUAL = EnumSet.of(
            MeasureKind.BORE,
            MeasureKind.PISTON,
            MeasureKind.MAIN_CLEARANCE,
            MeasureKind.BIG_END_CLEARANCE,
            MeasureKind.CRANK_END_FLOAT,
            MeasureKind.ROD_SIDE,
            MeasureKind.RING_GAP_TOP,
            MeasureKind.RING_GAP_SECOND,
            MeasureKind.CROWN_VOLUME,
            MeasureKind.DECK_CLEARANCE,
            MeasureKind.HEAD_THICKNESS,
            MeasureKind.HEAD_FLATNESS,
            MeasureKind.CHAMBER_VOLUME,
            MeasureKind.GASKET_THICKNESS,
            MeasureKind.GASKET_BORE,
            MeasureKind.VALVE_TO_PISTON_INLET,
            MeasureKind.VALVE_TO_PISTON_EXHAUST,
            MeasureKind.LASH_INLET,
            MeasureKind.LASH_EXHAUST);

    private final View view;
    private final Entry<Build> build;
    private final Sheet sheet;
    private final EngineDesign design;
    private final Set<MeasurePlace> known = new HashSet<>();

    MeasuringOrder(View view, Entry<Build> build, Sheet sheet) {
        this.view = view;
        this.build = build;
        this.sheet = sheet;
        this.design = new BuildSheets(view).design(build.fact());
        sameDesign().forEach(figure -> known.add(figure.place()));
    }

    List<MeasurePlace> places() {
        Set<MeasureKind> before = measuredBefore();
        List<MeasurePlace> places = new ArrayList<>();
        for (MeasureKind kind : inOrder()) {
            if (before.contains(kind)
                    || limited(kind)
                    || USUAL.contains(kind) && (before.isEmpty() || nobodySays(kind))) {
                places.addAll(places(kind));
            }
        }
        return places;
    }

    private static List<MeasureKind> inOrder() {
        return Arrays.stream(MeasureKind.values())
                .filter(kind -> !kind.workedOut())
                .sorted(Comparator.comparing(MeasureKind::step))
                .toList();
    }

    /** The places of a kind; where only some spots of it were ever measured on engines of that design, those alone. */
    private List<MeasurePlace> places(MeasureKind kind) {
        List<MeasurePlace> all = new ArrayList<>(sheet.places(kind));
        if (kind.placedAt() == PlacedAt.CYLINDER) {
            List<Integer> order = cylinders();
            all.sort(Comparator.comparingInt(place -> order.indexOf(place.number())));
        }
        boolean any = all.stream().anyMatch(known::contains);
        return any ? all.stream().filter(this::spotKnown).toList() : all;
    }

    private boolean spotKnown(MeasurePlace place) {
        return known.stream().anyMatch(other -> other.kind() == place.kind() && other.spot() == place.spot());
    }

    /** The design's measuring order, {@code 1-4-2-3}; any cylinder it leaves out comes after. */
    private List<Integer> cylinders() {
        List<Integer> order = new ArrayList<>();
        String written = design.measuringOrder();
        if (written != null) {
            for (String word : written.split("[^0-9]+")) {
                if (!word.isEmpty() && word.length() < 4) {
                    order.add(Integer.valueOf(word));
                }
            }
        }
        sheet.numbers(MeasureKind.DECK_CLEARANCE).stream()
                .filter(number -> !order.contains(number))
                .forEach(order::add);
        return order;
    }

    private boolean limited(MeasureKind kind) {
        return sheet.places(kind).stream()
                .anyMatch(place -> sheet.bounds(kind, place.spot()).any() && sheet.designed(place) == null);
    }

    /** Whether neither a design nor anybody here says it: the usual checks would lack it, and nothing could be typed. */
    private boolean nobodySays(MeasureKind kind) {
        return sheet.places(kind).stream().allMatch(place -> sheet.given(place) == null);
    }

    private Set<MeasureKind> measuredBefore() {
        Set<MeasureKind> kinds = EnumSet.noneOf(MeasureKind.class);
        known.forEach(place -> kinds.add(place.kind()));
        return kinds;
    }

    /** Every figure of a build of that design: builds are few, figures are many. */
    private List<Measurement> sameDesign() {
        Table<Engine> engines = view.facts().of(Engine.class);
        Id<EngineDesign> wanted = engines.get(build.fact().engine()).design();
        Set<Id<Build>> builds = new HashSet<>();
        view.facts().of(Build.class).all().stream()
                .filter(each -> engines.get(each.fact().engine()).design().equals(wanted))
                .forEach(each -> builds.add(each.id()));
        return view.facts()
                .of(Measurement.class)
                .inForce()
                .map(Entry::fact)
                .filter(figure -> builds.contains(figure.build()))
                .toList();
    }
}
