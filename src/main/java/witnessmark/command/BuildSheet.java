package witnessmark.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.SignOff;
import witnessmark.fit.result.SheetCounts;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.wording.FitWords;

/** How the figures of an engine's build sheet stand against their limits, with the column of each. */
@Command(name = "buildsheet", mixinStandardHelpOptions = true)
final class BuildSheet implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "ENGINE", descriptionKey = "command.buildsheet.engine")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String engine;

    @Option(names = "--build", paramLabel = "NUMBER", descriptionKey = "command.buildsheet.build")
    private @Nullable Integer number;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--columns", descriptionKey = "command.fit.columns")
    private boolean columns;

    @Option(names = "--print", paramLabel = "FILE", descriptionKey = "command.buildsheet.print")
    private @Nullable Path print;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    BuildSheet(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "buildsheet", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        return new NamedBuild(engine, number)
                .with(
                        answer,
                        view,
                        found -> SeeBuildSheet.build(view, found, number)
                                .flatMap(build -> SeeBuildSheet.of(view, build.id())),
                        page -> told(desk, answer, page));
    }

    private int told(Desk desk, Answer answer, SheetPage page) {
        if (print != null) {
            Id<Build> build = page.build().id();
            return answer.wrote(tools.buildSheet().write(desk, build, print), "pages", "command.cost.printed", print);
        }
        if (json) {
            answer.print(asJson(answer, desk.view(), page));
        } else {
            print(answer, desk.view(), page);
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, View view, SheetPage page) {
        FitWords words = new FitWords(tools.texts(), tools.measures());
        answer.line(tools.texts()
                .get(
                        "command.buildsheet.heading",
                        page.engine().fact().number(),
                        page.build().fact().number(),
                        tools.measures().date(page.build().fact().opened().day())));
        answer.line(words.headline(page.counts()));
        page.accepted()
                .forEach(each -> answer.line(tools.texts()
                        .get("fit.accepted", each.fact().what(), each.fact().why())));
        if (page.strongerLink() != null) {
            answer.line(words.strongerLink(page.strongerLink()));
        }
        new LessonText(tools).print(answer::line, view.facts(), page.lessons());
        answer.line("");
        new FitText(tools).print(answer::line, page.answers(), page.contradictions(), page.pulls(), columns);
    }

    private ObjectNode asJson(Answer answer, View view, SheetPage page) {
        SheetCounts counts = page.counts();
        ObjectNode root = answer.node()
                .put("asOf", view.day().toString())
                .put("engine", page.engine().fact().number())
                .put("build", page.build().fact().number())
                .put("outside", counts.outside())
                .put("notMeasured", counts.missing())
                .put("accepted", counts.accepted())
                .put("acceptedNotMeasured", counts.acceptedUnmeasured())
                .put("lessonsOpen", counts.lessons());
        Entry<SignOff> signed = page.signed();
        if (signed != null) {
            root.put("signedBy", signed.fact().by()).put("second", signed.fact().second());
        }
        FitText text = new FitText(tools);
        text.put(root, page.answers(), page.contradictions());
        text.putJoints(root, page.pulls());
        new LessonText(tools).put(root, view.facts(), page.lessons());
        return root;
    }
}
