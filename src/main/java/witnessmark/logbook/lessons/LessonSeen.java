package witnessmark.logbook.lessons;

import java.util.List;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Lesson;
import witnessmark.fit.result.LessonCheck;

/**
 * A lesson as of a day.
 *
 * @param lesson which lesson
 * @param standing whether it stands on that day; else it was withdrawn by then
 * @param asked the build sheets that asked it, the latest first
 */
public record LessonSeen(Entry<Lesson> lesson, boolean standing, List<AskedOn> asked) {
    /**
     * One build sheet that asked it.
     *
     * @param build of which build
     * @param engine of which engine
     * @param check how it answered
     */
    public record AskedOn(Entry<Build> build, Entry<Engine> engine, LessonCheck check) {}

    public LessonSeen {
        asked = List.copyOf(asked);
    }

    /** How many of the sheets that asked it are not as it asks, accepted by nobody. */
    public int open() {
        return (int) asked.stream().filter(each -> each.check().open()).count();
    }
}
