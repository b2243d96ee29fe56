package witnessmark.trace.result;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the beginning of a trace was understood as.
 *
 * @param form the likeliest
 * @param questions what must be, or should be, answered by a person
 * @param said what lines before the headings say, name to value, as written
 * @param rows the first rows as cells, to be looked at
 * @param begins when the first sample was taken by the file's own clock, midnight where it says the day alone, or null when it
 *     says nothing of it
 */
public record Recognised(
        TraceForm form,
        List<Question> questions,
        Map<String, String> said,
        List<List<String>> rows,
        @Nullable LocalDateTime begins) {
    public Recognised {
        questions = List.copyOf(questions);
        said = Map.copyOf(said);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** When the first sample was taken, where the file says its time and not the day alone; else null. */
    public @Nullable LocalDateTime clock() {
        return begins == null || begins.toLocalTime().equals(LocalTime.MIDNIGHT) ? null : begins;
    }

    /** The questions without whose answers figures would be wrong. */
    public List<Question> open() {
        return questions.stream().filter(question -> question.kind().stops()).toList();
    }
}
