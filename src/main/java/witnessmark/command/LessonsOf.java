package witnessmark.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.lessons.LessonSeen;
import witnessmark.logbook.lessons.SeeLessons;

/** Every lesson: what it asks, since when, by which incident, which build sheets asked it and what they answered. */
@Command(name = "lessons", mixinStandardHelpOptions = true)
final class LessonsOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    LessonsOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "lessons", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        List<LessonSeen> all = SeeLessons.all(view);
        LessonText text = new LessonText(tools);
        if (json) {
            ObjectNode root = answer.node().put("asOf", view.day().toString());
            text.putAll(root, view.facts(), all);
            answer.print(root);
        } else {
            text.printAll(answer::line, view.facts(), all);
        }
        return Exit.WORKED;
    }
}
