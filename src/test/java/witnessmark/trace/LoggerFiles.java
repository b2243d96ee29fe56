package witnessmark.trace;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import witnessmark.domain.ChannelKind;

/**
 * The logger's files of the invented season, each with the defect put in it. They come to the figures their runs are written
 * down with. What lies in {@code sample-season/traces} is made here.
 */
public final class LoggerFiles {
    private static final List<ChannelKind> KINDS = Story.KINDS;
    private static final String HEADING =
            "Time [s],Engine Speed [rpm],Throttle [%],Speed [km/h],Lat G [g],Oil Press [bar],"
                    + "Oil Temp [\u00b0C],Water Temp [\u00b0C],Gear,Lap\n";
    /** Samples of the hole in the file of 14 June, 3.2 s with the step into it. */
    private static final int HOLE = 63;

    private LoggerFiles() {}

    /** All of them by name, in the order of their days. */
    public static Map<String, Supplier<String>> all() {
        Map<String, Supplier<String>> all = new LinkedHashMap<>();
        all.put("2026-03-21_57_run3.csv", LoggerFiles::falseDips);
        all.put("2026-04-11_57_q.csv", LoggerFiles::semicolons);
        all.put("2026-05-03_41_race1.csv", LoggerFiles::mechanicalOverRev);
        all.put("2026-05-23_57_p1.csv", LoggerFiles::spike);
        all.put("2026-05-24_41_race1.csv", LoggerFiles::steam);
        all.put("2026-06-14_57_race2.csv", () -> declining(""));
        all.put("2026-07-05_57_race2.csv", LoggerFiles::wrongTimeBase);
        all.put("2026-08-22_57_p2.csv", LoggerFiles::twice);
        all.put("2026-09-12_57_p1.csv", LoggerFiles::withoutOilTemperature);
        all.put("2026-10-04_41_race.csv", LoggerFiles::clockNotSet);
        return all;
    }

    /** Run 3 of 21 March, car 57: oil pressure at nothing for four samples, twice. */
    public static String falseDips() {
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(20, 1452, 378, 1050, 1032, 198, 15, 33_000, 8215, 81, 104, 4.5, 46),
                        Circuit.of(2200, 9, 0.4, 11),
                        321)
                .settle(all -> {
                    for (int at : new int[] {12_400, 23_200}) {
                        for (int i = at; i < at + 4; i++) {
                            all.unpressed[i] = true;
                        }
                    }
                });
        for (int i = 0; i < run.samples; i++) {
            run.pressure[i] = run.unpressed[i] ? 0 : run.pressure[i];
        }
        return text(run, head("57", "2026-03-21", "11:00:00"));
    }

    /** Qualifying of 11 April, car 57: semicolons, decimal commas, a row of units. */
    public static String semicolons() {
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(20, 1308, 372, 912, 888, 192, 10, 30_600, 8225, 82, 106, 4.4, 26),
                        Circuit.of(3060, 10, 0.35, 12),
                        411)
                .settle(all -> {});
        StringBuilder text = new StringBuilder("# Logger;unit 3\n# Car;57\n# Date;2026-04-11\n# Time;14:30:00\n");
        text.append("Time;Engine Speed;Throttle;Speed;Lat G;Oil Press;Oil Temp;Water Temp;Gear;Lap\n");
        text.append("s;rpm;%;km/h;g;bar;\u00b0C;\u00b0C;;\n");
        for (int i = 0; i < run.samples; i++) {
            text.append(String.join(";", cells(run, i)).replace('.', ',')).append('\n');
        }
        return text.toString();
    }

    /** Race 1 of 3 May, car 41: 9 340 rpm for 21 samples with the throttle shut, on lap 9. */
    public static String mechanicalOverRev() {
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(50, 1746, 542, 1164, 1146, 222, 16, 38_600, 8235, 84, 108, 4.5, 14),
                        Circuit.of(2410, 12, 0.45, 13),
                        503)
                .settle(LoggerFiles::missedGear);
        return text(run, head("41", "2026-05-03", "11:00:00"));
    }

    /** From fourth to second instead of third, where the car brakes hardest. */
    private static void missedGear(LoggedRun run) {
        int at = run.first;
        while (run.lap[at] < 9 || run.gear[at] != 4 || run.speed[at + 10] > run.speed[at] - 2) {
            at++;
        }
        int[] up = {8300, 8420, 8560, 8730, 8900, 9040, 9150, 9230, 9290, 9325};
        for (int i = -2; i < 44; i++) {
            double rpm = i < 0
                    ? run.rpm[at + i]
                    : i < up.length
                            ? up[i]
                            : i < 12 ? 9340 : i < 23 ? 9340 - (i - 11) * 70 : Math.max(6900, 8480 - (i - 23) * 90);
            run.rpm[at + i] = rpm;
            run.throttle[at + i] = 0;
            run.gear[at + i] = i < 0 ? 4 : i < 24 ? 2 : 3;
        }
    }

    /** Practice 1 of 23 May, car 57: one sample of 19 800 rpm. */
    public static String spike() {
        int at = 16_345;
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(20, 1680, 440, 1218, 1200, 276, 11, 42_700, 8215, 81, 100, 4.4, 19),
                        Circuit.of(3880, 11, 0.4, 14),
                        523)
                .settle(all -> all.lost[at] = true);
        run.rpm[at] = 19_800;
        return text(run, head("57", "2026-05-23", "09:00:00"));
    }

    /** Race 1 of 24 May, car 41: water boils, then the sensor stands in steam and says 62 °C while the engine is hot. */
    public static String steam() {
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(10, 1254, 570, 678, 654, 150, 6, 23_300, 8260, 87, 121, 4.4, 20),
                        Circuit.of(3880, 11, 0.4, 14),
                        524)
                .settle(all -> {
                    int from = all.last - 420;
                    double was = all.water[from];
                    for (int i = from; i < all.samples; i++) {
                        double at = i - from;
                        double celsius =
                                at < 220 ? was + (117 - was) * at / 220 : Math.max(62, 117 - (at - 222) * 0.39);
                        all.water[i] = Math.rint(Math.min(117, celsius) * 10) / 10;
                    }
                });
        return text(run, head("41", "2026-05-24", "11:00:00"));
    }

    /**
     * Race 2 of 14 June, car 57: nothing logged for 3.2 s; oil pressure goes down over the last three laps.
     *
     * @param lost what stands in the cells of the hole
     */
    public static String declining(String lost) {
        int at = 11_800;
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(20, 894, 450, 438, 414, 96, 7, 13_900, 8205, 81, 124, 4.4, 66),
                        Circuit.of(1980, 6, 0.95, 15),
                        614)
                .settle(all -> {
                    for (int i = at; i < at + HOLE; i++) {
                        all.lost[i] = true;
                    }
                });
        int from = run.first + (run.last - run.first) * 4 / 7;
        double[] own = run.pressure.clone();
        for (double depth = 0.3; new Fitting(run).lowest() > 1.901; depth += 0.0005) {
            for (int i = from; i < run.samples; i++) {
                double share = 1 - depth * Math.min(1, (double) (i - from) / (run.last - from));
                run.pressure[i] = Math.rint(own[i] * share * 100) / 100;
            }
        }
        StringBuilder text = new StringBuilder(head("57", "2026-06-14", "12:05:00")).append(HEADING);
        for (int i = 0; i < run.samples; i++) {
            List<String> cells = cells(run, i);
            for (int k = 1; k < cells.size() && run.lost[i]; k++) {
                cells.set(k, lost);
            }
            text.append(String.join(",", cells)).append('\n');
        }
        return text.toString();
    }

    /** Race 2 of 5 July, car 57: the time runs ten times too slow in the file, so that it lasts ten times as long. */
    public static String wrongTimeBase() {
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(20, 1656, 420, 1206, 1176, 216, 12, 40_100, 8225, 81, 101, 4.7, 36),
                        Circuit.of(3340, 13, 0.5, 16),
                        705)
                .settle(all -> {});
        StringBuilder text = new StringBuilder(head("57", "2026-07-05", "15:00:00")).append(HEADING);
        for (int i = 0; i < run.samples; i++) {
            List<String> cells = cells(run, i);
            cells.set(0, plain(10.0 * i / run.is.rate(), 1));
            text.append(String.join(",", cells)).append('\n');
        }
        return text.toString();
    }

    /** Practice 2 of 22 August, car 57: taken in twice. */
    public static String twice() {
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(20, 1542, 318, 1200, 1182, 330, 10, 41_200, 8190, 86, 111, 4.6, 37),
                        Circuit.of(4120, 10, 0.4, 17),
                        822)
                .settle(all -> {});
        return text(run, head("57", "2026-08-22", "11:30:00"));
    }

    /** Practice 1 of 12 September, car 57: no oil temperature. */
    public static String withoutOilTemperature() {
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(20, 1650, 440, 1188, 1170, 204, 13, 39_800, 8205, 83, 111, 4.5, 17),
                        Circuit.of(3060, 10, 0.35, 12),
                        912)
                .settle(all -> {});
        int column = 1 + KINDS.indexOf(ChannelKind.OIL_TEMPERATURE);
        StringBuilder text = new StringBuilder(head("57", "2026-09-12", "09:00:00"));
        text.append(HEADING.replace("Oil Temp [\u00b0C],", ""));
        for (int i = 0; i < run.samples; i++) {
            List<String> cells = cells(run, i);
            cells.remove(column);
            text.append(String.join(",", cells)).append('\n');
        }
        return text.toString();
    }

    /** Race of 4 October, car 41: the clock was not set. */
    public static String clockNotSet() {
        LoggedRun run = new LoggedRun(
                        new LoggedRun.Figures(20, 4230, 590, 3594, 3570, 630, 33, 128_000, 8205, 86, 111, 4.4, 12),
                        Circuit.of(3880, 11, 0.4, 14),
                        1004)
                .settle(all -> {});
        return text(run, head("41", "2000-01-01", "00:00:07"));
    }

    private static String head(String car, String day, String time) {
        return "# Logger,unit " + (car.equals("41") ? 2 : 3) + "\n# Car," + car + "\n# Date," + day + "\n# Time," + time
                + "\n";
    }

    private static String text(LoggedRun run, String head) {
        StringBuilder text = new StringBuilder(head).append(HEADING);
        for (int i = 0; i < run.samples; i++) {
            text.append(String.join(",", cells(run, i))).append('\n');
        }
        return text.toString();
    }

    /** The file of 23 May without the lines that say car, day and time. */
    public static String undated() {
        return spike().replaceAll("(?m)^#.*\n", "");
    }

    /** The file of 23 May, after something was done to the cells of each row. */
    public static String changed(BiConsumer<Integer, List<String>> change) {
        StringBuilder text = new StringBuilder();
        int row = 0;
        for (String line : spike().split("\n")) {
            List<String> cells = new ArrayList<>(List.of(line.split(",", -1)));
            if (Character.isDigit(line.charAt(0))) {
                change.accept(row, cells);
                row++;
            }
            text.append(String.join(",", cells)).append('\n');
        }
        return text.toString();
    }

    private static List<String> cells(LoggedRun run, int sample) {
        List<String> cells = new ArrayList<>();
        cells.add(plain((double) sample / run.is.rate(), 2));
        for (ChannelKind kind : KINDS) {
            cells.add(plain(run.get(sample, kind), Story.places(kind)));
        }
        return cells;
    }

    private static String plain(double figure, int places) {
        return BigDecimal.valueOf(figure).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
}
