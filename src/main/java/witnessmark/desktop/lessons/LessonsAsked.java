package witnessmark.desktop.lessons;

import java.util.function.Consumer;

/**
 * What the page leads to.
 *
 * @param show puts the page up, in the place of an engine
 * @param leave takes it away again
 * @param write opens the sheet on which a lesson is written
 * @param withdraw opens the sheet that withdraws a lesson, by the text of its identity
 * @param incident shows an incident, likewise
 * @param build shows a build, likewise
 */
public record LessonsAsked(
        Consumer<LessonsAside> show,
        Runnable leave,
        Runnable write,
        Consumer<String> withdraw,
        Consumer<String> incident,
        Consumer<String> build) {}
