package witnessmark.study.dyno;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.AirPressure;
import witnessmark.domain.CorrectionKind;
import witnessmark.domain.DynoFigures;
import witnessmark.domain.DynoSheet;
import witnessmark.mechanics.AtmosphericCorrection;
import witnessmark.mechanics.WaterVapour;
import witnessmark.study.result.DynoFactor;
import witnessmark.study.result.DynoFactor.Needed;
import witnessmark.study.result.DynoFactor.Why;

/** By what the figures of a sheet are multiplied. */
final class Factors {
    private Factors() {}

    static DynoFactor of(DynoSheet sheet) {
        boolean byTheDyno = sheet.figures() == DynoFigures.CORRECTED;
        Double printed = sheet.factorMillionths() == null ? null : sheet.factorMillionths() / 1e6;
        if (sheet.correction() == CorrectionKind.NONE) {
            return new DynoFactor(CorrectionKind.NONE, null, false, null, null, null, List.of(), List.of());
        }
        List<Needed> missing = missing(sheet);
        if (!missing.isEmpty()) {
            return new DynoFactor(
                    sheet.correction(), byTheDyno ? printed : null, byTheDyno, null, null, null, List.of(), missing);
        }
        AtmosphericCorrection worked;
        try {
            worked = worked(sheet);
        } catch (IllegalArgumentException e) {
            return new DynoFactor(
                    sheet.correction(),
                    byTheDyno ? printed : null,
                    byTheDyno,
                    null,
                    null,
                    null,
                    List.of(Why.NO_AIR),
                    List.of());
        }
        List<Why> refused = worked.refused().stream()
                .map(refusal -> Why.valueOf(refusal.name()))
                .toList();
        boolean isDry = sheet.pressureIs() == AirPressure.DRY;
        boolean humid = sheet.humidityPermille() != null;
        Double usable = worked.usable().isPresent() ? worked.usable().getAsDouble() : null;
        return new DynoFactor(
                sheet.correction(),
                byTheDyno ? printed : usable,
                byTheDyno,
                worked.factor(),
                isDry || humid ? worked.dry() : null,
                !isDry || humid ? worked.dry() + worked.vapour() : null,
                refused,
                List.of());
    }

    /** Humidity does not enter where dry pressure was written down and the standard asks for it. */
    private static List<Needed> missing(DynoSheet sheet) {
        List<Needed> missing = new ArrayList<>();
        if (sheet.pressure() == null) {
            missing.add(Needed.PRESSURE);
        }
        if (sheet.air() == null) {
            missing.add(Needed.AIR);
        }
        boolean dry = sheet.pressureIs() == AirPressure.DRY;
        boolean asksForDry = sheet.correction() != CorrectionKind.DIN_70020;
        if (sheet.humidityPermille() == null && dry != asksForDry) {
            missing.add(Needed.HUMIDITY);
        }
        return missing;
    }

    private static AtmosphericCorrection worked(DynoSheet sheet) {
        double pressure = sheet.pressure() == null ? 0 : sheet.pressure().pascals() / 1e3;
        double celsius = sheet.air() == null ? 0 : sheet.air().inCelsius().doubleValue();
        double humidity = humidity(sheet.humidityPermille());
        double barometer = sheet.pressureIs() == AirPressure.DRY
                ? pressure + humidity * WaterVapour.saturation(celsius)
                : pressure;
        return AtmosphericCorrection.of(code(sheet.correction()), barometer, celsius, humidity);
    }

    private static double humidity(@Nullable Integer permille) {
        return permille == null ? 0 : permille / 1e3;
    }

    private static AtmosphericCorrection.Code code(CorrectionKind correction) {
        return switch (correction) {
            case SAE_J1349 -> AtmosphericCorrection.Code.SAE_J1349;
            case ISO_1585 -> AtmosphericCorrection.Code.ISO_1585;
            case DIN_70020 -> AtmosphericCorrection.Code.DIN_70020;
            case NONE -> throw new IllegalArgumentException("nothing is corrected to no standard");
        };
    }
}
