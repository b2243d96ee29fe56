package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.ledger.result.Expected;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.JointDoubt;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.PrintedDate;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.RunsOut;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.logbook.Desk;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.NextEvent;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.logbook.standing.Standing;
import witnessmark.wording.Amounts;

/** What must be done before the next event, and what comes due while the team is there. */
@Command(name = "due", mixinStandardHelpOptions = true)
final class Due implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;
    private final MarkText words;

    Due(Tools tools) {
        this.tools = tools;
        this.words = new MarkText(tools);
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "due", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        Standing standing = SeeStanding.of(desk.view());
        if (json) {
            answer.print(asJson(answer, standing));
        } else {
            print(answer, standing);
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, Standing standing) {
        NextEvent next = standing.next();
        String day = tools.measures().date(standing.day());
        answer.line(
                next == null
                        ? tools.texts().get("command.due.none", day)
                        : tools.texts().get("command.due.heading", next.event().name(), day));
        new DueNext(tools, standing.nextRuns()).lines().forEach(answer::line);
        section(
                answer,
                "command.due.must",
                standing.going().stream().filter(MarkOn::calls).toList());
        section(
                answer,
                "command.due.due",
                standing.going().stream().filter(MarkOn::comesDue).toList());
        new DueNotKnown(tools, standing).lines().forEach(answer::line);
        new DueOpen(tools, standing.open()).lines().forEach(answer::line);
    }

    private void section(Answer answer, String heading, List<MarkOn> marks) {
        answer.line(tools.texts().get(heading, marks.size()));
        for (MarkOn on : marks) {
            answer.line("  %-9s %-26s %-18s %s"
                    .formatted(words.state(on), what(on), where(on), words.why(on) + runsOut(on))
                    .stripTrailing());
        }
    }

    private String what(MarkOn on) {
        return on.kind() == null
                ? tools.words().label(String.valueOf(on.engine() != null ? on.engine() : on.car()))
                : tools.words().label(tools.words().word(on.kind())) + " " + on.serial();
    }

    private String where(MarkOn on) {
        String engine = on.engine() == null ? "" : on.engine();
        return on.car() == null
                ? engine
                : (engine.isEmpty() ? "" : engine + ", ") + tools.texts().get("command.due.car", on.car());
    }

    private String runsOut(MarkOn on) {
        RunsOut out = on.runsOut();
        if (out == null) {
            return "";
        }
        LimitUse use = on.use();
        Long leftAfter = on.leftAfter();
        if (use != null && leftAfter != null) {
            String left = new Amounts(tools.texts(), tools.measures())
                    .rough(use.used().counter(), leftAfter);
            return "; "
                    + tools.texts()
                            .get(
                                    "command.due.leftAfter",
                                    left,
                                    out.event().fact().name());
        }
        String run = out.planned() == null ? "" : ", " + out.planned().fact().name();
        return "; " + out.event().fact().name() + run;
    }

    private ObjectNode asJson(Answer answer, Standing standing) {
        ObjectNode root = answer.node();
        root.put("asOf", standing.day().toString());
        NextEvent next = standing.next();
        root.put("event", next == null ? null : next.event().name());
        ArrayNode marks = root.putArray("marks");
        standing.going().forEach(on -> add(marks.addObject(), on));
        new DueNotKnown(tools, standing).json(marks);
        new DueNext(tools, standing.nextRuns()).json(root, Due::add);
        new DueOpen(tools, standing.open()).json(root);
        return root;
    }

    private static void add(ObjectNode node, MarkOn on) {
        node.put("state", on.state().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .put("must", on.calls())
                .put("part", on.serial())
                .put("engine", on.engine())
                .put("car", on.car());
        on.mark()
                .reason()
                .fold(
                        by -> held(node, by),
                        use -> limit(node, use),
                        use -> reading(node, use),
                        date -> date(node, date),
                        build -> unproven(node, build),
                        doubt -> doubt(node, doubt));
        RunsOut out = on.runsOut();
        if (out != null) {
            node.putObject("runsOut")
                    .put("event", out.event().fact().name())
                    .put(
                            "run",
                            out.planned() == null ? null : out.planned().fact().name())
                    .put("sure", out.sure())
                    .put("after", out.after())
                    .put("leftAfter", out.leftAfter());
        }
        Expected expected = on.mark().expected();
        if (expected != null) {
            node.putObject("expected")
                    .put("low", expected.low())
                    .put("likely", expected.likely())
                    .put("high", expected.high())
                    .put("runs", expected.runs())
                    .put("events", expected.events());
        }
    }

    private static ObjectNode held(ObjectNode node, HeldBy by) {
        return node.put("reason", "held")
                .put("rule", by.rule() == null ? null : by.rule().fact().name())
                .put("cause", by.cause().id().text())
                .put("since", by.since().text());
    }

    private static ObjectNode limit(ObjectNode node, LimitUse use) {
        return node.put("reason", "limit")
                .put("name", use.limit().fact().name())
                .put("counter", use.used().counter().code())
                .put("used", use.used().highest())
                .put("amount", use.amount())
                .put("left", use.left());
    }

    private static ObjectNode reading(ObjectNode node, ReadingUse use) {
        node.put("reason", "reading")
                .put("name", use.limit().fact().name())
                .put("broken", use.broken().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        if (use.worst() != null) {
            node.put("place", use.worst().fact().place())
                    .put("value", use.worst().fact().value())
                    .put(
                            "grade",
                            use.worst().fact().grade() == null
                                    ? null
                                    : use.worst().fact().grade().code());
        }
        return node;
    }

    private static ObjectNode unproven(ObjectNode node, UnprovenBuild unproven) {
        node.put("reason", "unproven build")
                .put("build", unproven.build().fact().number())
                .put("closed", unproven.since().text())
                .put("signedBy", unproven.build().fact().signedBy())
                .put("wentBack", unproven.repair().fact().wentBack())
                .put(
                        "tool",
                        unproven.tool() == null ? null : unproven.tool().fact().mark())
                .put("second", unproven.repair().fact().second())
                .put("ranSince", unproven.ran().total());
        marks(node.putArray("wentIn"), unproven.wentIn());
        marks(node.putArray("cameOut"), unproven.cameOut());
        return node;
    }

    private static ObjectNode doubt(ObjectNode node, JointDoubt doubt) {
        node.put("reason", "joints in doubt")
                .put("tool", doubt.tool().fact().mark())
                .put("calibrated", doubt.calibration().fact().day().toString())
                .put("asFoundHundredthsOfPercent", doubt.asFound());
        ArrayNode joints = node.putArray("joints");
        doubt.joints()
                .forEach(joint -> joints.addObject()
                        .put("fasteners", joint.fact().fasteners().code())
                        .put("which", joint.fact().which())
                        .put("value", joint.fact().value())
                        .put("at", joint.fact().at().text()));
        return node;
    }

    private static void marks(ArrayNode node, List<Entry<Part>> parts) {
        parts.forEach(part -> node.add(part.fact().mark()));
    }

    private static ObjectNode date(ObjectNode node, PrintedDate date) {
        return node.put("reason", "printed date").put("useBy", date.useBy().toString());
    }
}
