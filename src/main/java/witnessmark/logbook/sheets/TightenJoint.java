package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.JointMethod;
import witnessmark.domain.PartKind;
import witnessmark.domain.Tool;
import witnessmark.ledger.Calibrations;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** One group of fasteners tightened, by one stage: to what, with which tool, and under whose second pair of eyes. */
public final class TightenJoint implements LogSheet {
    public static final SheetField ENGINE = choice("engine", 1);
    public static final SheetField FASTENERS = choice("fasteners", 1);
    public static final SheetField WHICH = text("which", 1);
    public static final SheetField STAGE = text("stage", 1);
    public static final SheetField METHOD = choice("joint_method", 1);
    public static final SheetField VALUE = text("joint_value", 1);
    public static final SheetField LUBRICANT = text("lubricant", 1);
    public static final SheetField CYCLE = choice("cycle", 1);
    public static final SheetField TOOL = choice("tool", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);
    public static final SheetField SECOND = text("second", 1);

    @Override
    public String key() {
        return "tighten";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of(
                        "joint", List.of(ENGINE, FASTENERS, WHICH, STAGE), List.of(METHOD, VALUE, LUBRICANT, CYCLE)),
                SheetGroup.of("joint_how", List.of(TOOL, WHEN, WHEN_TIME), List.of(BY, SECOND)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                METHOD, JointMethod.TORQUE.code(),
                CYCLE, SheetWord.YES.key(),
                TOOL, "",
                WHEN, sight.today().toString(),
                BY, sight.who());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(ENGINE, FASTENERS, WHICH, METHOD, LUBRICANT, TOOL, WHEN, WHEN_TIME, BY, SECOND);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "engine" -> sight.all(Engine.class, engine -> true);
            case "fasteners" -> Choice.words(PartKind.values());
            case "joint_method" -> Choice.words(JointMethod.values());
            case "cycle" -> List.of(SheetWord.YES.choice(), SheetWord.NO.choice());
            case "tool" -> {
                List<Choice> choices = new ArrayList<>();
                choices.add(Choice.of("", SheetWord.NOT_KNOWN));
                choices.addAll(ToolsNow.choices(sight));
                yield choices;
            }
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<Engine> engine = in.chosen(ENGINE, Engine.class);
        PartKind fasteners = in.word(FASTENERS, PartKind.class);
        in.note(WHICH, SheetNote.of("which_example"));
        in.note(STAGE, SheetNote.of("stage_example"));
        JointMethod method = in.word(METHOD, JointMethod.class);
        in.note(VALUE, SheetNote.of("joint_value_example"));
        String value = in.needed(VALUE);
        in.note(CYCLE, SheetNote.of("cycle"));
        @Nullable Entry<Tool> tool = in.text(TOOL).isEmpty() ? null : in.chosen(TOOL, Tool.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        calibrated(in, TOOL, tool, when);
        String by = in.needed(BY);
        second(in, SECOND, BY);
        if (engine == null || fasteners == null || method == null || when == null) {
            return;
        }
        @Nullable Entry<Build> build = openBuild(in.sight(), engine.id(), when);
        if (build != null) {
            in.note(ENGINE, SheetNote.of("in_build", build.fact().number()));
        }
        if (in.fine()) {
            in.make(
                    ENGINE,
                    new Joint(
                            engine.id(),
                            build == null ? null : build.id(),
                            fasteners,
                            in.text(WHICH),
                            in.text(STAGE),
                            method,
                            value,
                            in.text(LUBRICANT),
                            tool == null ? null : tool.id(),
                            when,
                            in.is(CYCLE, SheetWord.YES),
                            by,
                            in.text(SECOND)));
        }
    }

    /** A tool out of use tightens nothing; one whose calibration had run out by then asks. */
    static void calibrated(ReadSheet in, SheetField field, @Nullable Entry<Tool> tool, @Nullable Moment when) {
        if (tool == null || when == null) {
            return;
        }
        in.note(field, SheetNote.of("now", ToolsNow.state(in.sight(), tool)));
        LocalDate out = tool.fact().outOfUse();
        if (out != null && !when.day().isBefore(out)) {
            in.wrong(field, ProblemKind.TOOL_OUT_OF_USE, tool.fact().mark(), out, when.day());
            return;
        }
        Calibrations.overdue(in.sight().facts(), tool.id(), when.day())
                .ifPresent(due -> in.wrong(
                        field, ProblemKind.TOOL_NOT_CALIBRATED, tool.fact().mark(), due, when.day()));
    }

    /** A second pair of eyes is somebody else's. */
    static void second(ReadSheet in, SheetField second, SheetField by) {
        String other = in.text(second);
        in.note(second, SheetNote.of("second_empty"));
        if (!other.isEmpty() && Words.plain(other).equals(Words.plain(in.text(by)))) {
            in.wrong(second, ProblemKind.SAYS_OTHERWISE, second, other, by, in.text(by));
        }
    }

    /** The build an engine was in at a moment, or null. */
    static @Nullable Entry<Build> openBuild(SheetSight sight, @Nullable Id<Engine> engine, Moment at) {
        return sight
                .facts()
                .of(Build.class)
                .where(build -> build.engine().equals(engine)
                        && !at.isBefore(build.opened())
                        && (build.closed() == null || !at.isAfter(build.closed())))
                .stream()
                .reduce((one, other) -> other)
                .orElse(null);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        String engine = sight.find(Engine.class, typed.text(ENGINE))
                .map(each -> each.fact().number())
                .orElse("");
        String which = (typed.text(WHICH) + " " + typed.text(STAGE)).strip();
        String fasteners = typed.text(FASTENERS);
        return List.of(which.isEmpty() ? fasteners : fasteners.isEmpty() ? which : fasteners + ", " + which, engine);
    }
}
