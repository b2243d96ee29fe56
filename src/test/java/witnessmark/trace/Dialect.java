package witnessmark.trace;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import witnessmark.domain.ChannelKind;

/** The ways loggers write the same run. General habits of text export; no logger's own format. */
public enum Dialect {
    COMMA(new Look()),
    SEMICOLON_DECIMAL_COMMA(new Look().delimiter(";").decimal(',')),
    TAB(new Look().delimiter("\t")),
    PIPE(new Look().delimiter("|")),
    SPACES(new Look().delimiter("   ").headings(Headings.BARE)),
    COMMA_AND_SPACE(new Look().delimiter(", ")),
    UTF_8_MARK(new Look().mark()),
    UTF_16_LE_MARK(new Look().charset(StandardCharsets.UTF_16LE).mark()),
    UTF_16_BE_MARK(new Look().charset(StandardCharsets.UTF_16BE).mark()),
    UTF_16_LE(new Look().charset(StandardCharsets.UTF_16LE)),
    LATIN_1_GERMAN(new Look()
            .charset(StandardCharsets.ISO_8859_1)
            .headings(Headings.GERMAN)
            .delimiter(";")
            .decimal(',')),
    FRENCH(new Look().headings(Headings.FRENCH).delimiter(";").decimal(',')),
    UNITS_ROW(new Look().headings(Headings.UNITS_ROW)),
    UNITS_NOWHERE(new Look().headings(Headings.BARE)),
    UNITS_AT_END(new Look().headings(Headings.UNITS_AT_END)),
    IMPERIAL(new Look().headings(Headings.IMPERIAL)),
    RATE_STATED(new Look().time(Time.NONE_RATE_STATED)),
    CLOCK(new Look().time(Time.CLOCK)),
    DATE_AND_TIME(new Look().time(Time.DATE_TIME).delimiter(";")),
    MILLISECONDS(new Look().time(Time.MILLISECONDS)),
    QUOTED_CRLF(new Look().quoted().lineEnd("\r\n")),
    OLD_LINE_ENDS(new Look().lineEnd("\r")),
    THOUSANDS(new Look().delimiter(";").thousands()),
    SEVERAL_RATES(new Look().rates()),
    LINES_BEFORE_AND_COMMENTS(new Look().before()),
    HEADINGS_AGAIN(new Look().again()),
    OUT_OF_ORDER_AND_TWICE(new Look().disorder()),
    NO_NUMBERS(new Look().delimiter(";").noNumbers()),
    HEAD_SEMICOLON_TABLE_COMMA(new Look().time(Time.NONE_RATE_STATED).head(";")),
    HEAD_TAB_TABLE_COMMA(new Look().time(Time.NONE_RATE_STATED).head("\t")),
    HEAD_COMMA_TABLE_SEMICOLON(
            new Look().time(Time.NONE_RATE_STATED).head(",").delimiter(";").decimal(',')),
    HEAD_COLON_TABLE_TAB(
            new Look().time(Time.NONE_RATE_STATED).head(": ").delimiter("\t").decimal(',')),
    HEAD_EQUALS_TABLE_COMMA(new Look().time(Time.NONE_RATE_STATED).head(" = ").quoted()),
    HEAD_SEMICOLON_TABLE_SPACES(
            new Look().time(Time.NONE_RATE_STATED).head(";").delimiter("  ").headings(Headings.BARE));

    /** How the headings and units stand. */
    private enum Headings {
        UNITS_IN_BRACKETS,
        UNITS_ROW,
        UNITS_AT_END,
        BARE,
        GERMAN,
        FRENCH,
        IMPERIAL
    }

    /** How the time stands. */
    private enum Time {
        SECONDS,
        MILLISECONDS,
        CLOCK,
        DATE_TIME,
        NONE_RATE_STATED
    }

    private static final List<String> NAMES =
            List.of("Engine Speed", "Throttle", "Speed", "Lat G", "Oil Press", "Oil Temp", "Water Temp", "Gear", "Lap");
    private static final List<String> GERMAN = List.of(
            "Drehzahl",
            "Drosselklappe",
            "Geschwindigkeit",
            "Querbeschleunigung",
            "\u00d6ldruck",
            "\u00d6ltemperatur",
            "Wassertemperatur",
            "Gang",
            "Runde");
    private static final List<String> FRENCH_NAMES = List.of(
            "R\u00e9gime moteur",
            "Papillon",
            "Vitesse",
            "Acc\u00e9l\u00e9ration lat\u00e9rale",
            "Pression huile",
            "Temp\u00e9rature huile",
            "Temp\u00e9rature eau",
            "Rapport",
            "Tour");
    private static final List<String> UNITS = List.of("rpm", "%", "km/h", "g", "bar", "\u00b0C", "\u00b0C", "", "");
    private static final List<String> IMPERIAL_UNITS =
            List.of("rpm", "%", "mph", "g", "psi", "\u00b0F", "\u00b0F", "", "");
    private static final LocalDateTime BEGINS = LocalDateTime.of(2026, 5, 3, 14, 59, 50);

    private final Look look;

    Dialect(Look look) {
        this.look = look;
    }

    /** As bytes. The seed chooses where defects are put, in the dialects that have them. */
    public byte[] bytes(Story story, long seed) {
        String text = (look.mark ? "\ufeff" : "") + text(story, seed);
        return text.getBytes(look.charset);
    }

    String text(Story story, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder text = new StringBuilder();
        String heading = heading(story, text);
        for (int i = 0; i < story.samples; i++) {
            String row = row(story, i);
            if (look.noNumbers && i % 7 == 3) {
                row = row(story, i)
                        .replaceAll(";[^;]*$", ";" + List.of("NaN", "-", "#N/A").get(i % 3));
            }
            text.append(row).append(look.lineEnd);
            if (look.again && i % 97 == 96) {
                text.append(heading).append(look.lineEnd);
            }
            if (look.disorder && i > 5 && random.nextInt(40) == 0) {
                text.append(row(story, random.nextBoolean() ? i : i - 3)).append(look.lineEnd);
            }
        }
        if (look.headings == Headings.UNITS_AT_END) {
            text.append(line(time() ? "s" : null, UNITS)).append(look.lineEnd);
        }
        return text.toString();
    }

    private String heading(Story story, StringBuilder text) {
        if (!look.head.isEmpty()) {
            text.append("Vehicle").append(look.head).append("57").append(look.lineEnd);
            text.append("Sample rate").append(look.head).append(story.rate).append(look.lineEnd);
            text.append("Venue").append(look.head).append("Dunmarrow").append(look.lineEnd);
        } else if (look.before || look.time == Time.NONE_RATE_STATED) {
            text.append("# Logger").append(look.delimiter).append("unit 3").append(look.lineEnd);
            text.append("# Sample rate")
                    .append(look.delimiter)
                    .append(story.rate)
                    .append(look.lineEnd);
            text.append("# Date").append(look.delimiter).append("2026-05-03").append(look.lineEnd);
            text.append(look.lineEnd);
        }
        List<String> names =
                look.headings == Headings.GERMAN ? GERMAN : look.headings == Headings.FRENCH ? FRENCH_NAMES : NAMES;
        List<String> units = look.headings == Headings.IMPERIAL ? IMPERIAL_UNITS : UNITS;
        boolean bare = look.headings == Headings.BARE
                || look.headings == Headings.UNITS_ROW
                || look.headings == Headings.UNITS_AT_END;
        List<String> headings = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String name = look.delimiter.isBlank() && look.delimiter.startsWith(" ")
                    ? names.get(i).replace(' ', '_')
                    : names.get(i);
            headings.add(bare || units.get(i).isEmpty() ? name : name + " [" + units.get(i) + "]");
        }
        String time = switch (look.time) {
            case SECONDS -> look.headings == Headings.GERMAN ? "Zeit [s]" : bare ? "Time" : "Time [s]";
            case MILLISECONDS -> "Time [ms]";
            case CLOCK -> "Time of day";
            case DATE_TIME -> "Date Time";
            case NONE_RATE_STATED -> null;
        };
        String heading = line(time, headings);
        text.append(heading).append(look.lineEnd);
        if (look.headings == Headings.UNITS_ROW) {
            text.append(line(time() ? "s" : null, UNITS)).append(look.lineEnd);
        }
        return heading;
    }

    private boolean time() {
        return look.time != Time.NONE_RATE_STATED;
    }

    private String line(String time, List<String> cells) {
        List<String> all = new ArrayList<>();
        if (time != null) {
            all.add(time);
        }
        all.addAll(cells);
        return String.join(look.delimiter, all.stream().map(this::quoted).toList());
    }

    private String quoted(String cell) {
        return look.quoted ? '"' + cell + '"' : cell;
    }

    private String row(Story story, int i) {
        long micros = story.micros(i);
        String time = switch (look.time) {
            case SECONDS -> figure(micros / 1e6, 3);
            case MILLISECONDS -> Long.toString(micros / 1000);
            case CLOCK ->
                BEGINS.plusNanos(micros * 1000).format(DateTimeFormatter.ofPattern("HH:mm:ss.SSS", Locale.ROOT));
            case DATE_TIME ->
                BEGINS.plusNanos(micros * 1000)
                        .format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss.SSS", Locale.ROOT));
            case NONE_RATE_STATED -> null;
        };
        List<String> cells = new ArrayList<>();
        for (ChannelKind kind : Story.KINDS) {
            boolean slow = kind == ChannelKind.OIL_TEMPERATURE || kind == ChannelKind.WATER_TEMPERATURE;
            cells.add(look.rates && slow && i % 5 != 0 ? "" : cell(kind, story.get(i, kind)));
        }
        return line(time, cells);
    }

    private String cell(ChannelKind kind, double value) {
        if (look.headings != Headings.IMPERIAL) {
            return figure(value, Story.places(kind));
        }
        return switch (kind) {
            case CAR_SPEED -> Double.toString(value / 1.609344);
            case OIL_PRESSURE -> Double.toString(value / 0.06894757293168361);
            case OIL_TEMPERATURE, WATER_TEMPERATURE -> Double.toString(value * 9 / 5 + 32);
            default -> figure(value, Story.places(kind));
        };
    }

    private String figure(double value, int places) {
        String plain = plain(value, places);
        if (look.thousands && Math.abs(value) >= 1000) {
            int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
            plain = plain.substring(0, point - 3) + "," + plain.substring(point - 3);
        }
        return look.decimal == ',' ? plain.replace('.', ',') : plain;
    }

    static String plain(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /** What differs from one dialect to the next. */
    private static final class Look {
        private String delimiter = ",";
        private char decimal = '.';
        private Charset charset = StandardCharsets.UTF_8;
        private boolean mark;
        private Headings headings = Headings.UNITS_IN_BRACKETS;
        private Time time = Time.SECONDS;
        private String lineEnd = "\n";
        private boolean quoted;
        private boolean thousands;
        private boolean rates;
        private boolean before;
        private boolean again;
        private boolean disorder;
        private boolean noNumbers;
        private String head = "";

        Look delimiter(String text) {
            delimiter = text;
            return this;
        }

        Look decimal(char character) {
            decimal = character;
            return this;
        }

        Look charset(Charset other) {
            charset = other;
            return this;
        }

        Look mark() {
            mark = true;
            return this;
        }

        Look headings(Headings other) {
            headings = other;
            return this;
        }

        Look time(Time other) {
            time = other;
            return this;
        }

        Look lineEnd(String text) {
            lineEnd = text;
            return this;
        }

        Look quoted() {
            quoted = true;
            return this;
        }

        Look thousands() {
            thousands = true;
            return this;
        }

        Look rates() {
            rates = true;
            return this;
        }

        Look before() {
            before = true;
            return this;
        }

        Look again() {
            again = true;
            return this;
        }

        Look disorder() {
            disorder = true;
            return this;
        }

        /** What parts name and value above the headings, where that is not what parts the table. */
        Look head(String text) {
            head = text;
            return this;
        }

        Look noNumbers() {
            noNumbers = true;
            return this;
        }
    }
}
