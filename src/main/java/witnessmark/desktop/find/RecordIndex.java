package witnessmark.desktop.find;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What can be found in one revision of the logbook, in memory. Immutable, so that any thread may ask it. */
final class RecordIndex {
    private final Map<FindGroup, List<Indexed>> records;

    /** @param records by group, each list in the order in which equally good answers are shown */
    RecordIndex(Map<FindGroup, List<Indexed>> records) {
        this.records = new EnumMap<>(FindGroup.class);
        records.forEach((group, list) -> this.records.put(group, List.copyOf(list)));
    }

    /**
     * What answers best, at most so many, best first.
     *
     * @param typed as typed
     * @param day the day that was typed, or null when it reads as none
     */
    List<Indexed> find(FindGroup group, String typed, @Nullable LocalDate day, int most) {
        List<Indexed> all = records.getOrDefault(group, List.of());
        if (day != null) {
            List<Indexed> onTheDay = all.stream()
                    .filter(record -> record.on(day.toString()))
                    .limit(most)
                    .toList();
            if (!onTheDay.isEmpty()) {
                return onTheDay;
            }
        }
        Asked asked = Asked.of(typed);
        if (asked.isNothing()) {
            return List.of();
        }
        List<List<Indexed>> byMatch = new ArrayList<>();
        for (int match = 0; match <= Indexed.WORST; match++) {
            byMatch.add(new ArrayList<>());
        }
        for (Indexed record : all) {
            int match = record.match(asked);
            if (match <= Indexed.WORST && byMatch.get(match).size() < most) {
                byMatch.get(match).add(record);
            }
        }
        return byMatch.stream().flatMap(List::stream).limit(most).toList();
    }
}
