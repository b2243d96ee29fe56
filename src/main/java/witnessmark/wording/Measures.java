package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import witnessmark.domain.Run;
import witnessmark.domain.StartKnown;
import witnessmark.ledger.result.About;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;
import witnessmark.quantity.typed.DistanceUnit;
import witnessmark.quantity.typed.LengthUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.TemperatureUnit;
import witnessmark.quantity.typed.Unit;
import witnessmark.quantity.typed.VolumeUnit;

/**
 * Every measure as people see it, always with its unit. One run is in hours and minutes, a life in decimal hours (see
 * {@link Amounts}); rounding is away from zero at halves, and done once.
 */
public final class Measures {
    private static final BigDecimal MILLIS = BigDecimal.valueOf(1000);

    private final Texts texts;
    private final Units units;
    private final Figures figures;
    private final Days days;

    /**
     * Shows measures in a team's language and units.
     *
     * @param texts the sentences and names
     * @param units the units chosen
     */
    public Measures(Texts texts, Units units) {
        this.texts = texts;
        this.units = units;
        this.figures = new Figures(texts.locale());
        this.days = new Days(texts);
    }

    public Units units() {
        return units;
    }

    /** A run's length to the nearest second: {@code 27 min 30 s}, {@code 1 h 20 min}, {@code 45 s}. */
    public String running(RunningTime time) {
        long seconds = BigDecimal.valueOf(time.millis())
                .divide(MILLIS, 0, RoundingMode.HALF_UP)
                .longValueExact();
        String hours = figures.whole(seconds / 3600);
        String minutes = figures.whole(seconds / 60 % 60);
        String rest = figures.whole(seconds % 60);
        boolean whole = seconds % 60 == 0;
        if (seconds >= 3600) {
            if (seconds % 3600 == 0) {
                return texts.get("measures.running.hours", hours);
            }
            return whole
                    ? texts.get("measures.running.hours_minutes", hours, minutes)
                    : texts.get("measures.running.hours_minutes_seconds", hours, minutes, rest);
        }
        if (seconds >= 60) {
            return whole
                    ? texts.get("measures.running.minutes", minutes)
                    : texts.get("measures.running.minutes_seconds", minutes, rest);
        }
        return texts.get("measures.running.seconds", rest);
    }

    /** A run's length said twice where that helps to check it: {@code 1 h 20 min (80 min)}. */
    public String runningBothWays(RunningTime time) {
        String shown = running(time);
        BigDecimal minutes = time.minutes(1);
        return minutes.compareTo(BigDecimal.valueOf(60)) < 0
                ? shown
                : texts.get(
                        "measures.running.both",
                        shown,
                        texts.get("measures.running.minutes", figures.between(minutes, 0, 1)));
    }

    /** Hours with two decimals: {@code 12.87 h}. */
    public String hours(RunningTime time) {
        return texts.get("measures.hours", figures.fixed(time.hours(2), 2));
    }

    /** Hours with one decimal: {@code 12.9 h}. */
    public String roughHours(RunningTime time) {
        return texts.get("measures.hours", figures.fixed(time.hours(1), 1));
    }

    /** With all decimals of its currency and the code of ISO 4217: {@code 1 037.00 EUR}. */
    public String money(Money money) {
        return texts.get("measures.figure", amount(money), money.currency().getCurrencyCode());
    }

    /** The amount alone, where a heading says the currency: {@code 1 037.00}. */
    public String amount(Money money) {
        return figures.fixed(money.units(), money.currency().getDefaultFractionDigits());
    }

    /** {@code 9 150 rpm}. */
    public String speed(EngineSpeed speed) {
        return texts.get("measures.speed", figures.whole(speed.rpm()));
    }

    public String temperature(Temperature temperature) {
        return in(units.temperature(), temperature, 0, 1);
    }

    public String pressure(Pressure pressure) {
        return pressure(pressure, units.pressure());
    }

    public String pressure(Pressure pressure, PressureUnit unit) {
        return texts.get("measures.figure", bare(pressure, unit), sign(unit));
    }

    /**
     * A pressure that is read finer than a dash reads: {@code 98.2 kPa}.
     *
     * @param most decimals at most
     */
    public String pressure(Pressure pressure, PressureUnit unit, int most) {
        return in(unit, pressure, 0, most);
    }

    /** A pressure in the units chosen, without its unit. */
    public String bare(Pressure pressure) {
        return bare(pressure, units.pressure());
    }

    private String bare(Pressure pressure, PressureUnit unit) {
        return unit == PressureUnit.BAR ? bare(unit, pressure, 1, 2) : bare(unit, pressure, 0, 0);
    }

    public String temperature(Temperature temperature, TemperatureUnit unit) {
        return in(unit, temperature, 0, 1);
    }

    public String volume(Volume volume) {
        return volume(volume, units.volume());
    }

    public String volume(Volume volume, VolumeUnit unit) {
        return unit == VolumeUnit.MILLILITRE ? in(unit, volume, 0, 0) : in(unit, volume, 1, 2);
    }

    public String distance(Distance distance) {
        return distance(distance, units.distance());
    }

    public String distance(Distance distance, DistanceUnit unit) {
        return unit == DistanceUnit.METRE ? in(unit, distance, 0, 0) : in(unit, distance, 1, 1);
    }

    /** A length of a fit: {@code 0.05 mm}, {@code 0.051 mm}, {@code 2 thou}. */
    public String length(Length length) {
        return length(length, units.length());
    }

    public String length(Length length, LengthUnit unit) {
        return texts.get("measures.figure", bare(length, unit), sign(unit));
    }

    /** A length in the units chosen, without its unit. */
    public String bare(Length length) {
        return bare(length, units.length());
    }

    private String bare(Length length, LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> bare(unit, length, 2, 3);
            case INCH -> bare(unit, length, 3, 4);
            case THOU -> bare(unit, length, 0, 1);
            case MICROMETRE -> bare(unit, length, 0, 0);
        };
    }

    /** {@code Sat 5 Dec 2026}. */
    public String date(LocalDate day) {
        return days.date(day);
    }

    /** {@code 5 Jul}, where the year goes without saying. */
    public String shortDate(LocalDate day) {
        return days.shortDate(day);
    }

    /** {@code Sun}. */
    public String weekday(LocalDate day) {
        return days.weekday(day);
    }

    /** {@code Sun 5 Jul, 15:00}, or the day alone when only the day was given. */
    public String moment(Moment moment) {
        return days.moment(moment, false);
    }

    /** {@code Sun 5 Jul 2026, 15:00}, or the day alone when only the day was given. */
    public String fullMoment(Moment moment) {
        return days.fullMoment(moment, false);
    }

    /** When a run went out: {@code Sun 5 Jul, 15:00}, or {@code Sun 5 Jul, about 15:00} where nobody stated it. */
    public String start(Run run) {
        return days.moment(run.start(), run.startKnown() == StartKnown.ESTIMATE);
    }

    /** The same with the year: {@code Sun 5 Jul 2026, about 15:00}. */
    public String fullStart(Run run) {
        return days.fullMoment(run.start(), run.startKnown() == StartKnown.ESTIMATE);
    }

    /** {@code Sun 5 Jul 2026, about 15:00}. */
    public String fullMoment(About about) {
        return days.fullMoment(about.at(), true);
    }

    /** {@code 15:00}. */
    public String time(LocalTime time) {
        return days.time(time);
    }

    /** A whole number with its thousands set apart. */
    public String number(long figure) {
        return figures.whole(figure);
    }

    /** A figure with exactly that many decimals. */
    public String number(BigDecimal figure, int decimals) {
        return figures.fixed(figure, decimals);
    }

    /** {@code at least 3.2 h}. */
    public String atLeast(String shown) {
        return texts.get("measures.at_least", shown);
    }

    /** {@code about 9 h}. */
    public String about(String shown) {
        return texts.get("measures.about", shown);
    }

    /** {@code 9.30 h known, 2 runs not read}. */
    public String row(Collection<String> shown) {
        return joined(shown, "measures.comma");
    }

    /** {@code piston 2, piston 3 and main 1}. */
    public String all(Collection<String> shown) {
        return joined(shown, "measures.and");
    }

    /** {@code 1h20 or 80 min}. */
    public String any(Collection<String> shown) {
        return joined(shown, "measures.or");
    }

    /** The sign of a unit, for headings and field edges: {@code mm}, {@code °C}. */
    public String sign(Unit<?> unit) {
        return texts.get("measures.unit." + unit.code());
    }

    private String joined(Collection<String> shown, String lastKey) {
        if (shown.isEmpty()) {
            return texts.get("measures.none");
        }
        List<String> all = List.copyOf(shown);
        Iterator<String> each = all.subList(0, Math.max(1, all.size() - 1)).iterator();
        String joined = each.next();
        while (each.hasNext()) {
            joined = texts.get("measures.comma", joined, each.next());
        }
        return all.size() == 1 ? joined : texts.get(lastKey, joined, all.get(all.size() - 1));
    }

    private <Q> String in(Unit<Q> unit, Q quantity, int fewest, int most) {
        return texts.get("measures.figure", bare(unit, quantity, fewest, most), sign(unit));
    }

    private <Q> String bare(Unit<Q> unit, Q quantity, int fewest, int most) {
        return figures.between(unit.in(quantity, most), fewest, most);
    }
}
