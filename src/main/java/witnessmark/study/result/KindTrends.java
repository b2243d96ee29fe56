package witnessmark.study.result;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.ReadingKind;

/**
 * All that was read of one kind on one engine or part.
 *
 * @param kind what was read
 * @param engine on which engine, or the one the part is in; null on the shelf
 * @param part on which part, or null when it is the engine's
 * @param hours what the engine or part has run by the day looked at
 * @param about whether some of that is somebody's word, an estimate, or not known in full
 * @param perHour whether figures are for each hour on the oil
 * @param spread highest less lowest of what was read on the last day at more than one place; null where there is none
 * @param places where figures were read, in the order of their names
 * @param grades where grades were given
 */
public record KindTrends(
        ReadingKind kind,
        @Nullable Entry<Engine> engine,
        @Nullable Entry<Part> part,
        double hours,
        boolean about,
        boolean perHour,
        @Nullable Double spread,
        List<PlaceTrend> places,
        List<GradeLine> grades) {
    public KindTrends {
        places = List.copyOf(places);
        grades = List.copyOf(grades);
    }

    /** The worst any place asks for. */
    public Call call() {
        Call worst = places.stream()
                .map(PlaceTrend::call)
                .min(Comparator.naturalOrder())
                .orElse(Call.NONE);
        boolean grade = grades.stream().anyMatch(GradeLine::worseTwice);
        return grade && worst.compareTo(Call.WORSE) > 0 ? Call.WORSE : worst;
    }
}
