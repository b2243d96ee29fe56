package witnessmark.trace.text;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.domain.ChannelUnit;
import witnessmark.trace.result.TimeBase;

/** Units as files write them, in a row of their own or with a heading. */
final class UnitWords {
    private static final Map<String, ChannelUnit> UNITS = new HashMap<>();
    private static final Map<String, TimeBase.Kind> TIMES = new HashMap<>();
    private static final Set<String> NONE = Set.of(
            "", "-", "--", "none", "unit", "units", "1", "no unit", "n/a", "raw", "text", "string", "flag", "bool");
    private static final Set<String> CLOCKS =
            Set.of("hh:mm:ss", "h:m:s", "hh:mm:ss.sss", "mm:ss", "mm:ss.sss", "hms", "hh:mm:ss.fff", "hh:mm:ss,fff");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern BRACKETS = Pattern.compile("^(.*?)\\s*[\\[({<]([^\\[\\](){}<>]*)[\\])}>]\\s*$");
    private static final Pattern SLASH = Pattern.compile("^(.*\\S)\\s+(?:/|in)\\s+(\\S+)$");
    private static final Pattern TAIL = Pattern.compile("^(.*[^_\\s])[_\\s]+([^_\\s]+)$");

    private UnitWords() {}

    /** A heading and the unit that stood with it. */
    record Named(String heading, String unit) {}

    static {
        say(ChannelUnit.RPM, """
                rpm | 1/min | min-1 | u/min | rev/min | r/min | tr/min | giri/min | upm | /min | 1/minute | revs/min
                | min^-1 | t/min""");
        say(ChannelUnit.TEN_RPM, """
                rpm/10 | 10rpm | 10 rpm | rpm*10 | x10 rpm | rpm x10 | 10 1/min""");
        say(ChannelUnit.THOUSAND_RPM, """
                krpm | 1000rpm | 1000 rpm | rpm x1000 | x1000 rpm | rpm*1000""");
        say(ChannelUnit.REV_PER_SECOND, "1/s | hz | rps | rev/s | s-1");
        say(ChannelUnit.PERCENT, "% | percent | pct | prozent | perc");
        say(ChannelUnit.SHARE_OF_ONE, "ratio | 0-1 | 0..1 | frac | fraction");
        say(ChannelUnit.KILOMETRE_PER_HOUR, "km/h | kmh | kph | km h-1 | kmph");
        say(ChannelUnit.MILE_PER_HOUR, "mph | mi/h | miles/h");
        say(ChannelUnit.METRE_PER_SECOND, "m/s | mps | m s-1");
        say(ChannelUnit.KNOT, "kn | kt | kts | knots");
        say(ChannelUnit.G, "g | gee | gs | g-force");
        say(ChannelUnit.METRE_PER_SECOND_SQUARED, "m/s2 | m/s^2 | m/s/s | m/s**2 | ms-2");
        say(ChannelUnit.BAR, "bar | barg | bar(g) | bars | bar g");
        say(ChannelUnit.PSI, "psi | psig | lb/in2 | lbf/in2 | lbs/in2 | psi(g)");
        say(ChannelUnit.KILOPASCAL, "kpa | kpag | kpa(g)");
        say(ChannelUnit.MEGAPASCAL, "mpa");
        say(ChannelUnit.PASCAL, "pa");
        say(ChannelUnit.MILLIBAR, "mbar | hpa | mb");
        say(ChannelUnit.CELSIUS, """
                c | degc | deg c | celsius | grad c | gradc | oc""");
        say(ChannelUnit.FAHRENHEIT, "f | degf | deg f | fahrenheit");
        say(ChannelUnit.KELVIN, "k | kelvin | degk");
        say(ChannelUnit.LAMBDA, "lambda | la | lam | \u03bb");
        say(ChannelUnit.COUNT, """
                gear | gang | count | counts | n | no | num | # | lap""");
        say(ChannelUnit.VOLT, "v | volt | volts | vdc");
        say(ChannelUnit.MILLIVOLT, "mv");
        say(ChannelUnit.NEWTON_METRE, "nm | n m | n.m | n*m");
        say(ChannelUnit.POUND_FOOT, """
                lbft | lb ft | lb-ft | ft lb | ft-lb | ftlb | lbf ft | ft lbf | lbfft | lb.ft""");
        say(ChannelUnit.KILOWATT, "kw");
        say(ChannelUnit.HORSEPOWER, "hp | bhp | whp");
        say(ChannelUnit.METRIC_HORSEPOWER, "ps | cv | ch | pk");
        say(ChannelUnit.METRE, "m | metre | metres | meter | meters");
        say(ChannelUnit.KILOMETRE, "km");
        say(ChannelUnit.MILE, "mi | mile | miles");
        time(TimeBase.Kind.SECONDS, """
                s | sec | secs | second | seconds | sek | sekunden | secondes | secondi""");
        time(TimeBase.Kind.MILLISECONDS, """
                ms | msec | millis | milliseconds | millisecond | millisekunden""");
        time(TimeBase.Kind.MICROSECONDS, "us | \u00b5s | \u03bcs | usec | microseconds | micros");
        time(TimeBase.Kind.MINUTES, "min | mins | minutes | minuten");
        time(TimeBase.Kind.HOURS, "h | hr | hrs | hours");
        time(TimeBase.Kind.DAYS, "d | days");
    }

    private static void say(ChannelUnit unit, String words) {
        Channels.words(words).forEach(word -> UNITS.put(word, unit));
    }

    private static void time(TimeBase.Kind kind, String words) {
        Channels.words(words).forEach(word -> TIMES.put(word, kind));
    }

    static Optional<ChannelUnit> unit(String text) {
        return Optional.ofNullable(UNITS.get(plain(text)));
    }

    static Optional<TimeBase.Kind> time(String text) {
        return Optional.ofNullable(TIMES.get(plain(text)));
    }

    static boolean isClock(String text) {
        return CLOCKS.contains(plain(text));
    }

    /** Whether a cell can stand in a row of units. */
    static boolean any(String text) {
        return anyPlain(plain(text));
    }

    private static boolean anyPlain(String plain) {
        return UNITS.containsKey(plain)
                || TIMES.containsKey(plain)
                || CLOCKS.contains(plain)
                || NONE.contains(plain)
                || plain.equals("deg")
                || plain.equals("dd.mm.yyyy")
                || plain.equals("yyyy-mm-dd");
    }

    /** Whether a cell says a unit, not merely none. */
    static boolean says(String text) {
        String plain = plain(text);
        return !NONE.contains(plain) && anyPlain(plain);
    }

    /** Parts a heading from a unit in brackets, after a slash or at its end: {@code Oil Press [bar]}, {@code speed_kmh}. */
    static Named apart(String heading) {
        Matcher brackets = BRACKETS.matcher(heading);
        if (brackets.matches() && !brackets.group(1).isBlank()) {
            return new Named(brackets.group(1).strip(), bare(brackets.group(2)));
        }
        for (Pattern pattern : new Pattern[] {SLASH, TAIL}) {
            Matcher matcher = pattern.matcher(heading);
            if (matcher.matches() && says(matcher.group(2)) && certain(matcher.group(1), matcher.group(2))) {
                return new Named(matcher.group(1).strip(), matcher.group(2));
            }
        }
        return new Named(heading.strip(), "");
    }

    /** A unit after a mere space is one only where the rest is a known heading of that measure, or of time. */
    private static boolean certain(String rest, String unit) {
        Optional<ChannelUnit> known = unit(unit);
        if (Channels.isTime(rest)) {
            return time(unit).isPresent();
        }
        return known.isPresent()
                && Channels.of(rest)
                        .map(kind -> kind.unit().measure() == known.get().measure())
                        .orElse(false);
    }

    private static String bare(String unit) {
        return unit.strip();
    }

    /** Without brackets around it. */
    static String unbracketed(String cell) {
        String text = cell.strip();
        boolean around = text.length() >= 2
                && "[({<".indexOf(text.charAt(0)) >= 0
                && "])}>".indexOf(text.charAt(text.length() - 1)) >= 0;
        return around ? text.substring(1, text.length() - 1).strip() : text;
    }

    private static String plain(String text) {
        String plain = Normalizer.normalize(unbracketed(text), Normalizer.Form.NFKC)
                .replace("\u00b0", "")
                .replace("\u00ba", "")
                .replace("\u2212", "-")
                .replace("\u00b7", " ")
                .replace("\u22c5", " ")
                .toLowerCase(Locale.ROOT);
        return BLANKS.matcher(plain).replaceAll(" ").strip();
    }
}
