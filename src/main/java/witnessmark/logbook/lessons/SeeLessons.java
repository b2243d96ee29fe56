package witnessmark.logbook.lessons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Lesson;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;

/** Sees every lesson as of the day looked at, and what build sheets answered. Reads and computes only. */
public final class SeeLessons {
    private SeeLessons() {}

    /** All that were set by the day: those that stand first, each the latest first. */
    public static List<LessonSeen> all(View view) {
        return those(view, lesson -> true);
    }

    /** Those an incident taught. Where there is none, no sheet is worked out. */
    public static List<LessonSeen> of(View view, Id<Incident> incident) {
        return those(view, lesson -> incident.equals(lesson.incident()));
    }

    private static List<LessonSeen> those(View view, Predicate<Lesson> asks) {
        List<Entry<Lesson>> lessons = view.facts()
                .of(Lesson.class)
                .where(lesson -> asks.test(lesson) && view.ledger().asOf().counts(lesson.from()));
        if (lessons.isEmpty()) {
            return List.of();
        }
        Map<Id<Lesson>, List<LessonSeen.AskedOn>> asked = asked(view, lessons);
        return lessons.stream()
                .map(lesson -> new LessonSeen(
                        lesson,
                        lesson.fact().standsAt(view.ledger().asOf().last()),
                        asked.getOrDefault(lesson.id(), List.of())))
                .sorted(Comparator.comparing((LessonSeen seen) -> !seen.standing())
                        .thenComparing(seen -> seen.lesson().fact().from(), Comparator.reverseOrder())
                        .thenComparing(seen -> seen.lesson().id()))
                .toList();
    }

    private static Map<Id<Lesson>, List<LessonSeen.AskedOn>> asked(View view, List<Entry<Lesson>> lessons) {
        Map<Id<Lesson>, List<LessonSeen.AskedOn>> asked = new HashMap<>();
        SeeBuildSheet.all(view).stream()
                .sorted(Comparator.comparing(build -> build.fact().opened(), Comparator.reverseOrder()))
                .forEach(build -> SeeBuildSheet.lessons(view, build, lessons)
                        .forEach(check -> asked.computeIfAbsent(check.lesson().id(), none -> new ArrayList<>())
                                .add(new LessonSeen.AskedOn(
                                        build,
                                        view.facts()
                                                .of(Engine.class)
                                                .find(build.fact().engine())
                                                .orElseThrow(),
                                        check))));
        return asked;
    }
}
