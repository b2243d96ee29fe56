package witnessmark.logbook.port;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * A season told in chapters: the folder that starts it, the day it starts on, and what happened after.
 *
 * @param folder the season folder it starts with
 * @param today the day of the story at the start
 * @param chapters what follows, in order
 */
public record Story(Path folder, LocalDate today, List<Chapter> chapters) {
    /**
     * What happened next.
     *
     * @param folder a season folder with the entries to add or to change
     * @param name what it is called
     * @param today the day of the story once it is told
     */
    public record Chapter(Path folder, String name, LocalDate today) {}

    public Story {
        chapters = List.copyOf(chapters);
    }
}
