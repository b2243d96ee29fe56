package witnessmark.logbook.sheets;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.AirPressure;
import witnessmark.domain.CorrectionKind;
import witnessmark.domain.DynoFigures;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.mechanics.AtmosphericCorrection;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.TypedAirPressure;
import witnessmark.quantity.typed.TypedFigure;

/** What stands at the head of a dyno sheet: how it corrects, and the air of its cell. */
final class DynoCell {
    private static final Pressure THINNEST = new Pressure(50_000);
    private static final Pressure DENSEST = new Pressure(120_000);
    private static final Temperature COLDEST = Temperature.ofCelsius(BigDecimal.valueOf(-40));
    private static final Temperature WARMEST = Temperature.ofCelsius(BigDecimal.valueOf(60));
    private static final BigDecimal LEAST = BigDecimal.valueOf(AtmosphericCorrection.LEAST);
    private static final BigDecimal MOST = BigDecimal.valueOf(AtmosphericCorrection.MOST);
    private static final int MILLIONTHS = 1_000_000;

    private final ReadSheet in;
    private final ReadValues values;

    DynoCell(ReadSheet in) {
        this.in = in;
        this.values = new ReadValues(in);
    }

    /** The sheet of that run, or null where something in it cannot be. */
    @Nullable
    DynoSheet read(Id<Run> run, String dyno) {
        DynoFigures figures = in.word(WriteDynoSheet.FIGURES, DynoFigures.class);
        CorrectionKind correction = in.word(WriteDynoSheet.CORRECTION, CorrectionKind.class);
        AirPressure pressureIs = in.word(WriteDynoSheet.PRESSURE_IS, AirPressure.class);
        boolean corrected = figures == DynoFigures.CORRECTED;
        if (corrected && correction == CorrectionKind.NONE) {
            in.wrong(WriteDynoSheet.CORRECTION, ProblemKind.NEEDED, WriteDynoSheet.CORRECTION);
            correction = null;
        }
        Integer factor = corrected ? factor() : null;
        Pressure pressure = pressure();
        Temperature air = air();
        Integer humidity = humidity();
        Integer sweep = sweep();
        if (figures == null || correction == null || pressureIs == null) {
            return null;
        }
        return new DynoSheet(
                run,
                dyno,
                figures,
                correction,
                factor,
                pressure,
                pressureIs,
                air,
                humidity,
                sweep,
                in.text(WriteDynoSheet.FUEL),
                in.text(WriteDynoSheet.OIL),
                in.text(WriteDynoSheet.PLUGS),
                in.text(WriteDynoSheet.MAP),
                in.text(WriteDynoSheet.OPERATOR),
                in.is(WriteDynoSheet.BASELINE, SheetWord.YES),
                in.text(WriteDynoSheet.VERDICT),
                in.text(WriteDynoSheet.NOTE));
    }

    private @Nullable Integer factor() {
        in.note(WriteDynoSheet.FACTOR, SheetNote.of("dyno_factor_example"));
        Long millionths = values.read(WriteDynoSheet.FACTOR, text -> TypedFigure.parts(text, 6, "1.012"));
        if (millionths == null) {
            return null;
        }
        BigDecimal factor = BigDecimal.valueOf(millionths, 6);
        if (millionths < MILLIONTHS / 2 || millionths > 2 * MILLIONTHS) {
            in.wrong(
                    WriteDynoSheet.FACTOR,
                    ProblemKind.CANNOT_READ,
                    WriteDynoSheet.FACTOR,
                    in.text(WriteDynoSheet.FACTOR),
                    "1.012");
            return null;
        }
        if (factor.compareTo(LEAST) < 0 || factor.compareTo(MOST) > 0) {
            in.wrong(WriteDynoSheet.FACTOR, ProblemKind.DYNO_FACTOR_BEYOND, factor.stripTrailingZeros(), LEAST, MOST);
        }
        return Math.toIntExact(millionths);
    }

    private @Nullable Pressure pressure() {
        in.note(WriteDynoSheet.PRESSURE, SheetNote.of("air_pressure_example"));
        Pressure pressure = values.read(WriteDynoSheet.PRESSURE, TypedAirPressure::read);
        if (pressure == null) {
            return null;
        }
        if (pressure.compareTo(THINNEST) < 0 || pressure.compareTo(DENSEST) > 0) {
            in.wrong(
                    WriteDynoSheet.PRESSURE,
                    ProblemKind.OUT_OF_RANGE,
                    WriteDynoSheet.PRESSURE,
                    new AirFigure(pressure),
                    new AirFigure(THINNEST),
                    new AirFigure(DENSEST));
            return null;
        }
        in.note(WriteDynoSheet.PRESSURE, SheetNote.echo("understood", new AirFigure(pressure)));
        return pressure;
    }

    private @Nullable Temperature air() {
        Temperature air = values.echoed(
                WriteDynoSheet.AIR,
                text -> TypedFigure.read(text, in.sight().units().temperature()));
        if (air != null && (air.compareTo(COLDEST) < 0 || air.compareTo(WARMEST) > 0)) {
            in.wrong(WriteDynoSheet.AIR, ProblemKind.OUT_OF_RANGE, WriteDynoSheet.AIR, air, COLDEST, WARMEST);
            return null;
        }
        return air;
    }

    private @Nullable Integer humidity() {
        in.note(WriteDynoSheet.HUMIDITY, SheetNote.of("in_sign", "%"));
        Long permille = values.read(WriteDynoSheet.HUMIDITY, text -> TypedFigure.parts(text, 1, "45 %", "%", "% rh"));
        if (permille != null && permille > 1_000) {
            in.wrong(
                    WriteDynoSheet.HUMIDITY,
                    ProblemKind.CANNOT_READ,
                    WriteDynoSheet.HUMIDITY,
                    in.text(WriteDynoSheet.HUMIDITY),
                    "45 %");
            return null;
        }
        return permille == null ? null : Integer.valueOf(permille.intValue());
    }

    private @Nullable Integer sweep() {
        in.note(WriteDynoSheet.SWEEP, SheetNote.of("dyno_sweep_example"));
        Long sweep = values.read(
                WriteDynoSheet.SWEEP, text -> TypedFigure.parts(text, 0, "300 rpm/s", "rpm/s", "rpm per s", "rpm"));
        if (sweep != null && (sweep < 1 || sweep > 5_000)) {
            in.wrong(
                    WriteDynoSheet.SWEEP,
                    ProblemKind.CANNOT_READ,
                    WriteDynoSheet.SWEEP,
                    in.text(WriteDynoSheet.SWEEP),
                    "300 rpm/s");
            return null;
        }
        return sweep == null ? null : Integer.valueOf(sweep.intValue());
    }

    /** All of it as text that reads back. */
    static Map<SheetField, String> written(DynoSheet sheet, SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        Integer factor = sheet.factorMillionths();
        Pressure pressure = sheet.pressure();
        Integer humidity = sheet.humidityPermille();
        Integer sweep = sheet.sweepRpmPerSecond();
        out.put(WriteDynoSheet.FIGURES, sheet.figures().code());
        out.put(WriteDynoSheet.CORRECTION, sheet.correction().code());
        out.put(WriteDynoSheet.FACTOR, factor == null ? "" : plain(factor, 6));
        out.put(WriteDynoSheet.PRESSURE, pressure == null ? "" : TypedAirPressure.text(pressure));
        out.put(WriteDynoSheet.PRESSURE_IS, sheet.pressureIs().code());
        out.put(WriteDynoSheet.AIR, AsText.figure(sight.units().temperature(), sheet.air()));
        out.put(WriteDynoSheet.HUMIDITY, humidity == null ? "" : plain(humidity, 1));
        out.put(WriteDynoSheet.SWEEP, sweep == null ? "" : Integer.toString(sweep));
        out.put(WriteDynoSheet.FUEL, sheet.fuel());
        out.put(WriteDynoSheet.OIL, sheet.oil());
        out.put(WriteDynoSheet.PLUGS, sheet.plugs());
        out.put(WriteDynoSheet.MAP, sheet.map());
        out.put(WriteDynoSheet.OPERATOR, sheet.operator());
        out.put(WriteDynoSheet.BASELINE, AsText.yes(sheet.baseline()));
        out.put(WriteDynoSheet.VERDICT, sheet.verdict());
        out.put(WriteDynoSheet.NOTE, sheet.note());
        return out;
    }

    private static String plain(int figure, int decimals) {
        BigDecimal exact = BigDecimal.valueOf(figure, decimals);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }
}
