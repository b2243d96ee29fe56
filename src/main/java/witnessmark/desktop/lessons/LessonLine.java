package witnessmark.desktop.lessons;

import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;

/**
 * What a lesson asks of a build.
 *
 * @param id the text form of its identity
 * @param state its mark
 * @param word of its mark
 * @param asks its question or its figure
 * @param stands how it is met, who answered, what accepts it
 * @param what what was learned
 * @param from by which incident
 * @param incident the text form of its identity, or null
 * @param answer what leads to its answer, or null where none is wanted
 */
public record LessonLine(
        String id,
        SeamState state,
        String word,
        String asks,
        String stands,
        String what,
        String from,
        @Nullable String incident,
        @Nullable String answer) {}
