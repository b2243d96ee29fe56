package witnessmark.fit.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fastener;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.SpeedFigures;
import witnessmark.fit.Sheet;
import witnessmark.fit.result.Conditions;
import witnessmark.fit.result.Pull;
import witnessmark.fit.result.RodLoad;
import witnessmark.mechanics.SliderCrank;

/** What the bolts of a rod hold together at overlap top dead centre, where no gas holds the piston back. */
public final class RodLoads {
    private RodLoads() {}

    /**
     * @param bolts what the rod bolts are, or null
     * @param pull what they pull with, or null when it is not known
     * @param speeds revolutions a minute
     * @return in the order of the speeds; empty where masses or lengths are missing
     */
    public static List<RodLoad> at(
            Sheet sheet,
            @Nullable SpeedFigures figures,
            @Nullable Fastener bolts,
            Pull.@Nullable Range pull,
            List<Integer> speeds) {
        Rest rest = new Rest(sheet, figures);
        SliderCrank crank = rest.crank();
        if (crank == null) {
            return List.of();
        }
        Stretching rods = new Stretching(
                rest, crank, 1, Warm.hot(figures, Conditions.REFERENCE).metals().rods());
        Integer perRod = bolts == null || bolts.count() == null
                ? null
                : Integer.valueOf(Math.max(1, bolts.count() / Math.max(1, sheet.cylinders())));
        List<RodLoad> loads = new ArrayList<>();
        for (int rpm : speeds) {
            sheet.numbers(MeasureKind.PISTON_MASS).stream()
                    .flatMap(cylinder -> Optional.ofNullable(rods.pull(cylinder, rpm)).stream())
                    .max(Double::compare)
                    .ifPresent(rod -> {
                        Double bolt = perRod == null ? null : Double.valueOf(rod / perRod);
                        loads.add(
                                new RodLoad(rpm, rod, bolt, bolt == null || pull == null ? null : pull.least() / bolt));
                    });
        }
        return loads;
    }
}
