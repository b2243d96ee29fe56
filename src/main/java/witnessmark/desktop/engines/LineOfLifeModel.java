package witnessmark.desktop.engines;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line of life: its marks, which stretch of it is seen, and which mark is in hand. Places on it are milliseconds
 * since 1970, shares of what is seen go from 0 at the left to 1 at the right.
 */
final class LineOfLifeModel {
    /** The least that can be seen at once: half a day. */
    static final long CLOSEST = 12 * 3_600_000L;

    private static final double MARGIN = 0.02;

    private List<LifeMark> marks = List.of();
    private ZoneId zone = ZoneId.of("UTC");
    private long first;
    private long last = CLOSEST;
    private double from;
    private double to = CLOSEST;
    private int chosen = -1;

    /**
     * Shows another line, or the same anew: then what is seen and the mark in hand stay.
     *
     * @param next in the order of time
     * @param end the end of the day looked at
     */
    void show(List<LifeMark> next, long end, ZoneId nextZone, boolean sameEngine) {
        LifeMark before = chosen();
        boolean all = from <= first && to >= last;
        marks = List.copyOf(next);
        zone = nextZone;
        first = marks.stream().mapToLong(LifeMark::from).min().orElse(end - CLOSEST);
        last = Math.max(end, first + CLOSEST);
        chosen = -1;
        for (int i = 0; sameEngine && before != null && i < marks.size(); i++) {
            chosen = marks.get(i).source().id().equals(before.source().id()) ? i : chosen;
        }
        if (!sameEngine || all) {
            showAll();
        }
    }

    List<LifeMark> marks() {
        return marks;
    }

    /** The mark in hand, or null. */
    @Nullable
    LifeMark chosen() {
        return chosen < 0 ? null : marks.get(chosen);
    }

    int chosenIndex() {
        return chosen;
    }

    // Going along it

    /** Goes to the next mark, or the one before, and brings it into view. */
    void step(int by) {
        if (!marks.isEmpty()) {
            int start = chosen < 0 ? (by > 0 ? -1 : marks.size()) : chosen;
            choose(Math.max(0, Math.min(marks.size() - 1, start + by)));
        }
    }

    void toFirst() {
        if (!marks.isEmpty()) {
            choose(0);
        }
    }

    void toLast() {
        if (!marks.isEmpty()) {
            choose(marks.size() - 1);
        }
    }

    void choose(int index) {
        chosen = index;
        bringIntoView(marks.get(index).from());
    }

    // What is seen

    void showAll() {
        double margin = (last - first) * MARGIN;
        from = first - margin;
        to = last + margin;
    }

    /**
     * @param factor less than 1 for closer
     * @param about the share that stays where it is
     */
    void zoom(double factor, double about) {
        double whole = (last - first) * (1 + 2 * MARGIN);
        double wide = Math.max(CLOSEST, Math.min(whole, (to - from) * factor));
        double at = from + about * (to - from);
        look(at - about * wide, wide);
    }

    /** Moves what is seen by a share of it. */
    void pan(double share) {
        look(from + share * (to - from), to - from);
    }

    private void bringIntoView(double place) {
        double wide = to - from;
        if (place < from || place > to) {
            look(place - wide / 2, wide);
        }
    }

    private void look(double left, double wide) {
        double margin = (last - first) * MARGIN;
        double least = first - margin;
        double most = last + margin;
        double at = Math.max(least, Math.min(left, most - wide));
        from = at;
        to = at + wide;
    }

    /** Where a place lies in what is seen, as a share; less than 0 or more than 1 when it is not seen. */
    double share(double place) {
        return (place - from) / (to - from);
    }

    /** The longest run, in minutes; at least one. */
    double longest() {
        return marks.stream().mapToDouble(LifeMark::minutes).max().orElse(1);
    }

    /** The mark nearest to a share of what is seen, or -1 when none is within a distance of it. */
    int nearest(double share, double within) {
        int best = -1;
        double least = within;
        for (int i = 0; i < marks.size(); i++) {
            LifeMark mark = marks.get(i);
            boolean stretch = mark.kind() == LifeMark.Kind.CAR || mark.kind() == LifeMark.Kind.TOLD;
            double away = stretch ? Double.MAX_VALUE : distance(mark, share);
            if (away <= least) {
                best = i;
                least = away;
            }
        }
        return best;
    }

    private double distance(LifeMark mark, double share) {
        double left = share(mark.from());
        double right = share(mark.to());
        return share < left ? left - share : share > right ? share - right : 0;
    }

    /** Midnights at which months or days begin, few enough to be labelled. */
    List<LocalDate> ticks(int most) {
        LocalDate start = day(from);
        LocalDate end = day(to);
        long days = end.toEpochDay() - start.toEpochDay();
        List<LocalDate> ticks = new ArrayList<>();
        if (days <= most) {
            for (LocalDate day = start.plusDays(1); !day.isAfter(end); day = day.plusDays(1)) {
                ticks.add(day);
            }
            return ticks;
        }
        if (days <= 7L * most) {
            LocalDate monday =
                    start.plusDays(Math.floorMod(8 - start.getDayOfWeek().getValue(), 7));
            for (LocalDate day = monday; !day.isAfter(end); day = day.plusDays(7)) {
                ticks.add(day);
            }
            return ticks;
        }
        int step = 1;
        while (days / 30.4 / step > most) {
            step += step < 3 ? 1 : step < 12 ? 3 : 12;
        }
        for (LocalDate day = start.withDayOfMonth(1); !day.isAfter(end); day = day.plusMonths(1)) {
            boolean on = Math.floorMod(day.getYear() * 12 + day.getMonthValue() - 1, step) == 0;
            if (on && !day.isBefore(start)) {
                ticks.add(day);
            }
        }
        return ticks;
    }

    /** Where a day begins, as a share of what is seen. */
    double share(LocalDate day) {
        return share(day.atStartOfDay(zone).toInstant().toEpochMilli());
    }

    private LocalDate day(double place) {
        return Instant.ofEpochMilli((long) place).atZone(zone).toLocalDate();
    }
}
