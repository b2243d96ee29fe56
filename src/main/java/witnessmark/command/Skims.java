package witnessmark.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.faces.FaceInSight;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.SeeFaces;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** The skims of a head or block with its low zones; of all of them when none is named. */
@Command(name = "skims", mixinStandardHelpOptions = true)
final class Skims implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", arity = "0..1", paramLabel = "PART", descriptionKey = "command.skims.part")
    private @Nullable String part;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--print", paramLabel = "FILE", descriptionKey = "command.skims.print")
    private @Nullable Path print;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    Skims(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "skims", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        List<FacePage> pages;
        if (part == null) {
            pages = SeeFaces.all(view);
        } else {
            Optional<FacePage> page =
                    view.facts().of(Part.class).named(part).map(Entry::id).flatMap(id -> SeeFaces.of(view, id));
            if (page.isEmpty()) {
                return answer.didNot(
                        List.of(Problem.of(ProblemKind.NOT_FOUND, tools.texts().get("command.skims.such"), part)));
            }
            pages = List.of(page.get());
        }
        if (print != null) {
            return print(desk, answer, pages, print);
        }
        if (json) {
            answer.print(new SkimsJson().of(answer.node().put("asOf", view.day().toString()), pages));
        } else {
            new SkimsText(tools).print(answer::line, pages, part != null);
        }
        return Exit.WORKED;
    }

    private int print(Desk desk, Answer answer, List<FacePage> pages, Path file) {
        if (part == null) {
            return answer.refuse(tools.texts().get("command.skims.print.which"), Exit.USAGE);
        }
        return answer.wrote(
                tools.faceSheet().write(desk, FaceInSight.of(pages.get(0)), file),
                "pages",
                "command.cost.printed",
                file);
    }
}
