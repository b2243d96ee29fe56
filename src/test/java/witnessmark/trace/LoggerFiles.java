package witnessmark.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import witnessmark.domain.ChannelKind;

/** The logger's files of the invented season, each with the defect put in it, as long as its run. */
public final class LoggerFiles {
    private LoggerFiles() {}

    /** Run 3 of 21 March, car 57: oil pressure at nothing for four samples, twice. */
    public static String falseDips() {
        Story story = Story.of(321, 20, 1452);
        for (int at : new int[] {6200, 20_400}) {
            for (int i = at; i < at + 4; i++) {
                story.set(i, ChannelKind.OIL_PRESSURE, 0);
            }
        }
        return story.csv();
    }

    /** Qualifying of 11 April, car 57: semicolons, decimal commas, a row of units. */
    public static String semicolons() {
        String text = Dialect.SEMICOLON_DECIMAL_COMMA.text(Story.of(411, 20, 1308), 0);
        int end = text.indexOf('\n');
        String heading = text.substring(0, end).replaceAll(" \\[[^]]*]", "");
        return heading + "\ns;rpm;%;km/h;g;bar;\u00b0C;\u00b0C;;" + text.substring(end);
    }

    /** Race 1 of 3 May, car 41: 9 340 rpm for 21 samples with the throttle shut. */
    public static String mechanicalOverRev() {
        Story story = Story.of(503, 50, 1800);
        int at = 41_000;
        for (int i = -40; i < 60; i++) {
            double rpm = i < 0 ? 8300 : i <= 20 ? 9340 - Math.abs(i - 10) * 10 : 8300;
            story.set(at + i, ChannelKind.ENGINE_SPEED, i == 10 || i == 11 ? 9340 : rpm);
            story.set(at + i, ChannelKind.THROTTLE, 0);
            story.set(at + i, ChannelKind.GEAR, 3);
        }
        return story.csv();
    }

    /** Practice 1 of 23 May, car 57: one sample of 19 800 rpm. */
    public static String spike() {
        Story story = Story.of(523, 20, 1680);
        story.set(12_345, ChannelKind.ENGINE_SPEED, 19_800);
        return story.csv();
    }

    /** Race 1 of 24 May, car 41: water falls to 62 °C while the engine is hot. */
    public static String steam() {
        Story story = Story.of(524, 10, 1254);
        for (int i = 9000; i < story.samples; i++) {
            story.set(i, ChannelKind.WATER_TEMPERATURE, Math.max(62, 94 - (i - 9000) * 0.2));
        }
        return story.csv();
    }

    /** Race 2 of 14 June, car 57: nothing logged for 3.2 s; oil pressure goes down. */
    public static String declining(String lost) {
        Story story = Story.of(614, 20, 894);
        List<List<String>> rows = story.rows();
        int oil = 1 + Story.KINDS.indexOf(ChannelKind.OIL_PRESSURE);
        for (int i = 0; i < rows.size(); i++) {
            double share = i < 12_000 ? 1 : 1 - (i - 12_000) / 12_000.0;
            rows.get(i).set(oil, Dialect.plain(story.get(i, ChannelKind.OIL_PRESSURE) * share, 2));
        }
        int at = 5000;
        while (Math.min(story.get(at - 1, ChannelKind.ENGINE_SPEED), story.get(at + 63, ChannelKind.ENGINE_SPEED))
                < 1500) {
            at++;
        }
        for (int i = at; i < at + 63; i++) {
            for (int k = 1; k < rows.get(i).size(); k++) {
                rows.get(i).set(k, lost);
            }
        }
        return joined(story, rows);
    }

    /** Race 2 of 5 July, car 57: the time runs ten times too slow in the file, so that it lasts ten times as long. */
    public static String wrongTimeBase() {
        Story story = Story.of(705, 20, 1656);
        List<List<String>> rows = story.rows();
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).set(0, Dialect.plain(story.micros(i) / 1e5, 3));
        }
        return joined(story, rows);
    }

    /** Practice 2 of 22 August, car 57: taken in twice. */
    public static String twice() {
        return Story.of(822, 20, 1560).csv();
    }

    /** Practice 1 of 12 September, car 57: no oil temperature. */
    public static String withoutOilTemperature() {
        int column = 1 + Story.KINDS.indexOf(ChannelKind.OIL_TEMPERATURE);
        StringBuilder text = new StringBuilder();
        for (String line : Story.of(912, 20, 1650).csv().split("\n")) {
            List<String> cells = new ArrayList<>(Arrays.asList(line.split(",")));
            cells.remove(column);
            text.append(String.join(",", cells)).append('\n');
        }
        return text.toString();
    }

    /** Race of 4 October, car 41: the clock was not set. */
    public static String clockNotSet() {
        return Dialect.DATE_AND_TIME.text(Story.of(1004, 20, 4300), 0).replace("2026-05-03", "2000-01-01");
    }

    /** A story's rows after something was done to each. */
    static String changed(Story story, BiConsumer<Integer, List<String>> change) {
        List<List<String>> rows = story.rows();
        for (int i = 0; i < rows.size(); i++) {
            change.accept(i, rows.get(i));
        }
        return joined(story, rows);
    }

    /** The rows of the file of that day, Practice 1 of 23 May, after something was done to each. */
    public static String changed(BiConsumer<Integer, List<String>> change) {
        return changed(Story.of(523, 20, 1680), change);
    }

    static String joined(Story story, List<List<String>> rows) {
        String csv = story.csv();
        StringBuilder text = new StringBuilder(csv.substring(0, csv.indexOf('\n') + 1));
        rows.forEach(row -> text.append(String.join(",", row)).append('\n'));
        return text.toString();
    }
}
