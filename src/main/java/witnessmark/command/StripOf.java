package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Build;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.strip.SeeStrip;
import witnessmark.logbook.strip.StripPage;
import witnessmark.study.result.StripCell;
import witnessmark.study.result.StripReport;
import witnessmark.study.result.StripRow;
import witnessmark.wording.FindingWords;
import witnessmark.wording.StripWords;

/** What was found when an engine was opened, place by place, beside the last time anybody looked there. */
@Command(name = "strip", mixinStandardHelpOptions = true)
final class StripOf implements Callable<Integer> {
    private static final double PER_HOUR = 3_600_000;

    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "ENGINE", descriptionKey = "command.buildsheet.engine")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String engine;

    @Option(names = "--build", paramLabel = "NUMBER", descriptionKey = "command.build.build")
    private @Nullable Integer number;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--print", paramLabel = "FILE", descriptionKey = "command.strip.print")
    private @Nullable Path print;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;
    private final StripWords words;
    private final FindingWords findings;

    StripOf(Tools tools) {
        this.tools = tools;
        this.words = new StripWords(tools.texts(), tools.measures());
        this.findings = new FindingWords(tools.texts(), tools.measures());
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "strip", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        return new NamedBuild(engine, number)
                .with(
                        answer,
                        view,
                        found -> SeeStrip.find(view, found, number).flatMap(build -> SeeStrip.of(view, build.id())),
                        page -> told(desk, answer, page));
    }

    private int told(Desk desk, Answer answer, StripPage page) {
        View view = desk.view();
        if (print != null) {
            Id<Build> build = page.report().build().id();
            return answer.wrote(tools.stripSheet().write(desk, build, print), "pages", "command.cost.printed", print);
        }
        if (json) {
            answer.print(asJson(answer.node().put("asOf", view.day().toString()), view, page));
        } else {
            print(answer, view, page.report());
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, View view, StripReport report) {
        answer.line(words.title(report));
        words.headline(report).forEach(line -> answer.line("  " + line));
        for (StripRow row : report.rows()) {
            if (row.looked()) {
                answer.line(words.line(row.line()));
                words.part(row).ifPresent(line -> answer.line("  " + line));
                cells(row).filter(cell -> !cell.found().isEmpty()).forEach(cell -> print(answer, view, cell));
                words.pattern(row).ifPresent(line -> answer.line("  " + line));
            }
        }
        report.elsewhere().forEach(finding -> answer.line(words.nowhere(finding.fact())));
    }

    private void print(Answer answer, View view, StripCell cell) {
        cell.found()
                .forEach(finding -> answer.line(
                        "  " + tools.texts().get("strip.finding", words.number(cell), findings.words(finding.fact()))));
        words.before(view.facts(), cell).ifPresent(line -> answer.line("    " + line));
    }

    private static Stream<StripCell> cells(StripRow row) {
        return Stream.concat(Stream.of(row.whole()), row.cells().stream());
    }

    private ObjectNode asJson(ObjectNode root, View view, StripPage page) {
        StripReport report = page.report();
        root.put("engine", report.engine().fact().number())
                .put("build", report.build().fact().number())
                .put("opened", report.build().fact().opened().text())
                .put("open", page.open())
                .put("hoursSinceRebuild", report.run().total() / PER_HOUR)
                .put("hoursInFull", report.run().complete())
                .put("places", report.places())
                .put("lookedAt", report.lookedAt())
                .put("worse", report.worse());
        ArrayNode rows = root.putArray("rows");
        for (StripRow row : report.rows()) {
            ObjectNode node = rows.addObject()
                    .put("place", row.line().place().code())
                    .put("side", row.line().side().word())
                    .put("opened", row.opened())
                    .put("part", row.part() == null ? null : row.part().fact().mark())
                    .put("partHours", row.run() == null ? null : row.run().total() / PER_HOUR)
                    .put("standsOut", words.pattern(row).orElse(null));
            ArrayNode cells = node.putArray("positions");
            cells(row).forEach(cell -> put(cells.addObject(), view, cell));
        }
        ArrayNode elsewhere = root.putArray("elsewhere");
        report.elsewhere().forEach(finding -> put(elsewhere.addObject(), finding));
        return root;
    }

    private void put(ObjectNode node, View view, StripCell cell) {
        node.put("number", cell.number()).put("worse", cell.worse());
        ArrayNode found = node.putArray("found");
        cell.found().forEach(finding -> put(found.addObject(), finding));
        ArrayNode before = node.putArray("before");
        cell.before()
                .forEach(finding ->
                        put(before.addObject().put("build", findings.build(view.facts(), finding)), finding));
    }

    private static void put(ObjectNode node, Entry<Finding> finding) {
        Finding seen = finding.fact();
        node.put("finding", finding.id().text())
                .put("mark", code(seen.mark()))
                .put("how", code(seen.how()))
                .put("spot", seen.spot())
                .put("aroundDegrees", seen.aroundDegrees())
                .put("outPercent", seen.outPercent())
                .put("words", seen.words())
                .put("at", seen.at().text())
                .put("by", seen.by());
    }

    private static @Nullable String code(@Nullable Coded word) {
        return word == null ? null : word.code();
    }
}
