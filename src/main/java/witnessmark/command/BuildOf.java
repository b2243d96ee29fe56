package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.SignOff;
import witnessmark.domain.Tool;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.JointGroup;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.building.BuildPage;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.wording.BuildPageWords;

/** What a build opened, what came out and went in, what was tightened, and what is still open in it. */
@Command(name = "build", mixinStandardHelpOptions = true)
final class BuildOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "ENGINE", descriptionKey = "command.buildsheet.engine")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String engine;

    @Option(names = "--build", paramLabel = "NUMBER", descriptionKey = "command.build.build")
    private @Nullable Integer number;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;
    private final BuildPageWords words;

    BuildOf(Tools tools) {
        this.tools = tools;
        this.words = new BuildPageWords(tools.texts(), tools.measures());
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "build", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        return new NamedBuild(engine, number)
                .with(
                        answer,
                        view,
                        found -> SeeBuild.find(view, found, number).flatMap(build -> SeeBuild.of(view, build.id())),
                        page -> told(answer, view, page));
    }

    private int told(Answer answer, View view, BuildPage page) {
        if (json) {
            answer.print(asJson(answer, view, page));
        } else {
            print(answer, page);
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, BuildPage page) {
        answer.line(tools.texts()
                .get(
                        "command.build.heading",
                        words.name(page.engine().fact().number(), page.build().fact()),
                        words.span(page.build().fact())));
        SignOff signed = page.signed() == null ? null : page.signed().fact();
        answer.line(words.signed(signed, page.build().fact()));
        answer.line(tools.texts().get("command.build.day", tools.measures().date(page.day())));
        answer.line("");
        answer.line(words.open(page.gaps()));
        page.gaps().forEach(gap -> answer.line("  " + words.gap(page.facts(), gap)));
        new LessonText(tools).print(answer::line, page.facts(), page.lessons());
        Zone zone = null;
        for (BuildPosition at : page.positions()) {
            if (at.zone() != zone) {
                zone = at.zone();
                answer.line("");
                answer.line(tools.words().label(tools.words().word(zone)));
            }
            print(answer, page, at);
        }
        if (!page.joints().isEmpty()) {
            answer.line("");
            answer.line(tools.texts().get("command.build.joints"));
        }
        for (JointGroup group : page.joints()) {
            answer.line("  " + words.group(group.fasteners(), group.which()));
            words.tightened(page.facts(), group).forEach(line -> answer.line("    " + line));
        }
        answer.line("");
        answer.line(words.caution());
    }

    private void print(Answer answer, BuildPage page, BuildPosition at) {
        String ran = at.running() == null ? "" : tools.lives().life(at.running());
        answer.line("  %-18s %-12s %12s  %-14s %s"
                .formatted(
                        words.position(at), words.in(page.facts(), at), ran, words.wentIn(at), words.stands(at.worst()))
                .stripTrailing());
        at.out().forEach(out -> answer.line("    " + words.cameOut(page.facts(), out.fact())));
        if (at.empty()) {
            page.free(at.position().id())
                    .forEach(free -> answer.line("    " + tools.texts().get("command.build.free", words.free(free))));
        }
    }

    private ObjectNode asJson(Answer answer, View view, BuildPage page) {
        Build build = page.build().fact();
        ObjectNode root = answer.node()
                .put("asOf", view.day().toString())
                .put("engine", page.engine().fact().number())
                .put("build", build.number())
                .put("opened", build.opened().text())
                .put("closed", build.closed() == null ? null : build.closed().text())
                .put("partsAsOf", page.day().toString());
        ArrayNode zones = root.putArray("zones");
        build.zones().forEach(zone -> zones.add(zone.code()));
        Entry<SignOff> signed = page.signed();
        if (signed != null) {
            root.put("signedBy", signed.fact().by()).put("second", signed.fact().second());
        }
        ArrayNode open = root.putArray("open");
        page.gaps()
                .forEach(gap -> open.addObject()
                        .put("what", code(gap.kind()))
                        .put("count", gap.count())
                        .put(
                                "position",
                                gap.position() == null
                                        ? null
                                        : gap.position().position().fact().name())
                        .put(
                                "fasteners",
                                gap.joint() == null
                                        ? null
                                        : gap.joint().fasteners().code())
                        .put("sentence", words.gap(page.facts(), gap)));
        new LessonText(tools).put(root, page.facts(), page.lessons());
        ArrayNode positions = root.putArray("positions");
        page.positions().forEach(at -> add(positions.addObject(), page, at));
        ArrayNode joints = root.putArray("joints");
        page.joints().forEach(group -> add(joints.addObject(), page, group));
        return root;
    }

    private void add(ObjectNode node, BuildPage page, BuildPosition at) {
        Entry<Fitment> in = at.in();
        node.put("position", at.position().fact().name())
                .put("zone", at.zone().code())
                .put("part", in == null ? null : words.part(page.facts(), in.fact()))
                .put("wentIn", at.fresh())
                .put("empty", at.empty())
                .put("state", at.worst() == null ? null : code(at.worst().state()));
        if (at.running() != null) {
            node.put("runningLowest", at.running().lowest())
                    .put("runningHighest", at.running().highest())
                    .put("runningComplete", at.running().complete());
        }
        ArrayNode out = node.putArray("cameOut");
        at.out()
                .forEach(each -> out.addObject()
                        .put("part", words.part(page.facts(), each.fact()))
                        .put("why", each.fact().why())
                        .put("condition", each.fact().condition()));
        ArrayNode free = node.putArray("free");
        page.free(at.position().id()).forEach(each -> add(free.addObject(), each));
    }

    private static void add(ObjectNode node, FreePart free) {
        Entry<Part> part = free.part();
        node.put("part", part == null ? null : part.fact().mark())
                .put(
                        "batch",
                        free.batch() == null
                                ? null
                                : free.batch().batch().fact().batch())
                .put("design", free.design().fact().name())
                .put("alike", free.alike())
                .put("kept", free.kept())
                .put("held", free.held())
                .put("marked", !free.marked().isEmpty())
                .put("running", free.running() == null ? null : free.running().highest())
                .put("state", free.worst() == null ? null : code(free.worst().state()));
    }

    private static void add(ObjectNode node, BuildPage page, JointGroup group) {
        node.put("fasteners", group.fasteners().code())
                .put("which", group.which())
                .put("tightened", !group.tightened().isEmpty())
                .put(
                        "lastInBuild",
                        group.before() == null ? null : group.before().fact().number());
        ArrayNode stages = node.putArray("stages");
        for (Entry<Joint> entry : group.tightened()) {
            Joint joint = entry.fact();
            stages.addObject()
                    .put("stage", joint.stage())
                    .put("method", joint.method().code())
                    .put("value", joint.value())
                    .put("lubricant", joint.lubricant())
                    .put(
                            "tool",
                            joint.tool() == null
                                    ? null
                                    : page.get(Tool.class, joint.tool()).mark())
                    .put("at", joint.at().text())
                    .put("by", joint.by())
                    .put("second", joint.second());
        }
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
