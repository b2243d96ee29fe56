package witnessmark.desktop.trends;

import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;
import witnessmark.study.result.Call;
import witnessmark.study.result.GradeLine;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Read;
import witnessmark.study.result.Trend;

/**
 * One place at which something is read.
 *
 * @param id tells it from the others of its engine
 * @param state under which mark it stands
 * @param kind what is read, and on which part
 * @param place where
 * @param row its last readings on a scale
 * @param words the same in words: {@code 3 → 7 → 6 → 8 %}
 * @param last the last reading
 * @param trend where it is going
 * @param ahead when its limit will be met; empty where nothing is known
 * @param hours the same for sorting, or null
 * @param answer what it comes to, the whole sentence
 * @param of all that is read of its kind
 * @param figures where figures are read, or null
 * @param grades where grades are given, or null
 * @param newest the last reading itself
 */
record TrendLine(
        String id,
        SeamState state,
        String kind,
        String place,
        DotRow row,
        String words,
        String last,
        String trend,
        String ahead,
        @Nullable Double hours,
        String answer,
        KindTrends of,
        @Nullable PlaceTrend figures,
        @Nullable GradeLine grades,
        Read newest) {
    /** How loud the word of its trend is: only where it gets worse. */
    SeamState going() {
        boolean figure = figures != null
                && (figures.trend() == Trend.RISING || figures.trend() == Trend.FALLING)
                && figures.call() != Call.NONE;
        return figure || grades != null && grades.worseTwice() ? SeamState.DUE : SeamState.WITHIN;
    }

    /** How loud the words of its limit are. */
    SeamState limit() {
        if (figures == null || figures.limits().stream().noneMatch(LimitAhead::passed)) {
            return going();
        }
        return figures.limits().stream().anyMatch(LimitAhead::over) ? SeamState.OVER : SeamState.RUN_ON;
    }
}
