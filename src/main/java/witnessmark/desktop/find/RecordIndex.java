package witnessmark.desktop.find;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What can be found in one revision of the logbook, in memory. Immutable, so that any thread may ask it. */
final class RecordIndex {
    private final Map<FindGroup, List<Indexed>> records;
    private final Set<String> names = new HashSet<>();

    /** @param records by group, each list in the order in which equally good answers are shown */
    RecordIndex(Map<FindGroup, List<Indexed>> records) {
        this.records = new EnumMap<>(FindGroup.class);
        records.forEach((group, list) -> {
            this.records.put(group, List.copyOf(list));
            list.forEach(record -> names.add(record.serial()));
        });
    }

    /**
     * What answers best, at most so many, best first. Where somebody typed a whole name, what only holds its words here and
     * there is no answer, in whatever group it is.
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
        int worst = names.contains(asked.serial()) ? Indexed.WORST_OF_NAMED : Indexed.WORST;
        for (Indexed record : all) {
            int match = record.match(asked);
            if (match <= worst && byMatch.get(match).size() < most) {
                byMatch.get(match).add(record);
            }
        }
        return byMatch.stream().flatMap(List::stream).limit(most).toList();
    }
}
