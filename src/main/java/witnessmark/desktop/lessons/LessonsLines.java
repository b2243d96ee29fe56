package witnessmark.desktop.lessons;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;

/**
 * The page of lessons in words.
 *
 * @param sum how many stand, and how many sheets are not as asked
 * @param lessons those that stand first
 */
record LessonsLines(String sum, List<Lesson> lessons) {
    LessonsLines {
        lessons = List.copyOf(lessons);
    }

    /**
     * One lesson.
     *
     * @param id the text form of its identity
     * @param what what was learned
     * @param asks its question or its figure
     * @param concerns on which sheets
     * @param since when and by whom it was set
     * @param withdrawn by whom and why it was withdrawn; empty while it stands
     * @param from by which incident
     * @param incident the text form of its identity, or null
     * @param asked the sheets that asked it, the latest first
     * @param never said where there are none
     */
    record Lesson(
            String id,
            String what,
            String asks,
            String concerns,
            String since,
            String withdrawn,
            String from,
            @Nullable String incident,
            List<Asked> asked,
            String never) {
        Lesson {
            asked = List.copyOf(asked);
        }
    }

    /**
     * One sheet that asked it.
     *
     * @param build the text form of the identity of the build
     * @param name "K05, build 3"
     * @param state its mark
     * @param word the word of that
     * @param stands how it is met
     */
    record Asked(String build, String name, SeamState state, String word, String stands) {}
}
