package witnessmark.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.GasketClass;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.SizeLimit;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Work;
import witnessmark.quantity.Dimension;

/**
 * A sheet as it would be after some work. A head skim changes ratio, valve clearance and cam timing, not squish; a deck
 * skim changes squish one for one.
 */
final class Rework {
    /** Clearances of valves, each with the angle its valve stands at. */
    private static final Map<MeasureKind, MeasureKind> VALVES = Map.of(
            MeasureKind.VALVE_TO_PISTON_INLET, MeasureKind.VALVE_ANGLE_INLET,
            MeasureKind.VALVE_TO_PISTON_EXHAUST, MeasureKind.VALVE_ANGLE_EXHAUST);

    private final Sheet sheet;

    Rework(Sheet sheet) {
        this.sheet = sheet;
    }

    Sheet after(Work work) {
        return switch (work.kind()) {
            case HEAD_SKIM -> headSkim(work.depth());
            case DECK_SKIM -> deckSkim(work.depth());
            case CROWN_CUT -> crownCut(work.cuts());
            case OTHER_GASKET -> throw new IllegalArgumentException("another gasket comes with its figures");
        };
    }

    Sheet withGasket(@Nullable GasketClass made, List<SizeLimit> figures) {
        return sheet.withGasket(made, figures);
    }

    private Sheet headSkim(long skim) {
        Map<MeasurePlace, Long> changed = new HashMap<>();
        for (MeasurePlace chamber : sheet.places(MeasureKind.CHAMBER_VOLUME)) {
            Given volume = sheet.measured(chamber);
            Given area = sheet.given(new MeasurePlace(MeasureKind.OPENING_AREA, chamber.number(), null));
            if (volume != null && area != null) {
                double lost = Dimension.AREA.number(area.value()) * Dimension.LENGTH.number(skim);
                changed.put(chamber, volume.value() - Math.round(lost));
            }
        }
        lower(MeasureKind.HEAD_THICKNESS, skim, changed);
        lower(MeasureKind.PAD_RECESS, skim, changed);
        lowerValves(skim, changed);
        return sheet.with(changed);
    }

    private Sheet deckSkim(long skim) {
        Map<MeasurePlace, Long> changed = new HashMap<>();
        lower(MeasureKind.DECK_CLEARANCE, skim, changed);
        lower(MeasureKind.BLOCK_HEIGHT, skim, changed);
        lower(MeasureKind.SQUISH_WIRE, skim, changed);
        lowerValves(skim, changed);
        return sheet.with(changed);
    }

    /** A cut lowers the crown; pockets are taken as deepened with it, so that valves keep what they have. */
    private Sheet crownCut(Map<Integer, Long> cuts) {
        Map<MeasurePlace, Long> changed = new HashMap<>();
        cuts.forEach((cylinder, cut) -> {
            raise(MeasureKind.DECK_CLEARANCE, cylinder, cut, changed);
            raise(MeasureKind.SQUISH_WIRE, cylinder, cut, changed);
            MeasurePlace height = new MeasurePlace(MeasureKind.COMPRESSION_HEIGHT, cylinder, null);
            Given before = sheet.given(height);
            if (before != null) {
                changed.put(height, before.value() - cut);
            }
        });
        return sheet.with(changed);
    }

    /**
     * Valve to piston falls by the whole skim over the cosine of the valve's angle: the most it can, where it is not known
     * how it was measured.
     */
    private void lowerValves(long skim, Map<MeasurePlace, Long> changed) {
        VALVES.forEach((kind, angle) -> {
            Given stated = angle(angle);
            double cosine = stated == null ? 1 : Math.cos(Math.toRadians(Dimension.ANGLE.number(stated.value())));
            lower(kind, Math.round(skim / cosine), changed);
        });
    }

    private @Nullable Given angle(MeasureKind of) {
        return sheet.given(new MeasurePlace(of, null, null));
    }

    /** Angles without which it cannot be told whether a skim keeps a limit of valve to piston. */
    List<MeasureKind> anglesLacking() {
        return VALVES.entrySet().stream()
                .filter(valve -> angle(valve.getValue()) == null
                        && sheet.places(valve.getKey()).stream()
                                .anyMatch(place -> sheet.measured(place) != null
                                        && sheet.bounds(valve.getKey(), place.spot())
                                                .limits()))
                .map(Map.Entry::getValue)
                .sorted()
                .toList();
    }

    private void lower(MeasureKind kind, long by, Map<MeasurePlace, Long> changed) {
        for (MeasurePlace place : sheet.places(kind)) {
            Given figure = sheet.measured(place);
            if (figure != null) {
                changed.put(place, figure.value() - by);
            }
        }
    }

    private void raise(MeasureKind kind, int cylinder, long by, Map<MeasurePlace, Long> changed) {
        for (MeasurePlace place : sheet.places(kind)) {
            Given figure = sheet.measured(place);
            if (figure != null && place.at(kind, cylinder)) {
                changed.put(place, figure.value() + by);
            }
        }
    }
}
