package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
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
import witnessmark.quantity.Moment;

/**
 * With which wrench a track repair was closed, and what it tightened, so that what a wrench tightened is found by it; or
 * why that is not written down.
 */
final class RepairWrench {
    static final SheetField WRENCH = choice("wrench", 1);
    static final SheetField TIGHTENED = choice("tightened", 1);
    static final SheetField METHOD = choice("joint_method", 1);
    static final SheetField VALUE = text("joint_value", 1);
    static final SheetField UNTOLD = text("tightened_untold", 4);

    /** What is tightened most in the paddock. */
    private static final List<PartKind> FASTENERS = List.of(PartKind.HEAD_STUDS, PartKind.ROD_BOLTS);

    private final @Nullable Entry<Tool> tool;
    private final @Nullable PartKind fasteners;
    private final @Nullable JointMethod method;
    private final String value;
    private final String untold;

    private RepairWrench(
            @Nullable Entry<Tool> tool,
            @Nullable PartKind fasteners,
            @Nullable JointMethod method,
            String value,
            String untold) {
        this.tool = tool;
        this.fasteners = fasteners;
        this.method = method;
        this.value = value;
        this.untold = untold;
    }

    static boolean asks(SheetField field, SheetTyped typed) {
        if (field.equals(TIGHTENED)) {
            return !typed.text(WRENCH).isEmpty();
        }
        boolean untold = typed.is(TIGHTENED, SheetWord.NOT_SAID);
        if (field.equals(UNTOLD)) {
            return !typed.text(WRENCH).isEmpty() && untold;
        }
        return !(field.equals(METHOD) || field.equals(VALUE))
                || !typed.text(WRENCH).isEmpty() && !untold;
    }

    static Optional<List<Choice>> choices(SheetField field, SheetSight sight) {
        if (field.equals(WRENCH)) {
            List<Choice> choices = new ArrayList<>(List.of(SheetWord.NONE.choice()));
            choices.addAll(ToolsNow.choices(sight));
            return Optional.of(choices);
        }
        if (field.equals(TIGHTENED)) {
            Set<PartKind> others = EnumSet.allOf(PartKind.class);
            FASTENERS.forEach(others::remove);
            List<Choice> choices = new ArrayList<>(Choice.words(FASTENERS.toArray(PartKind[]::new)));
            choices.addAll(Choice.words(others.toArray(PartKind[]::new)));
            choices.add(SheetWord.NOT_SAID.choice());
            return Optional.of(choices);
        }
        return field.equals(METHOD) ? Optional.of(Choice.words(JointMethod.values())) : Optional.empty();
    }

    static RepairWrench read(ReadSheet in, @Nullable Moment closed) {
        if (in.text(WRENCH).isEmpty()) {
            return new RepairWrench(null, null, null, "", "");
        }
        Entry<Tool> tool = in.chosen(WRENCH, Tool.class);
        TightenJoint.calibrated(in, WRENCH, tool, closed);
        if (in.is(TIGHTENED, SheetWord.NOT_SAID)) {
            in.note(UNTOLD, SheetNote.of("untold"));
            return new RepairWrench(tool, null, null, "", in.needed(UNTOLD));
        }
        PartKind fasteners = in.word(TIGHTENED, PartKind.class);
        JointMethod method = in.word(METHOD, JointMethod.class);
        in.note(VALUE, SheetNote.of("joint_value_example"));
        return new RepairWrench(tool, fasteners, method, in.needed(VALUE), "");
    }

    @Nullable
    Id<Tool> tool() {
        return tool == null ? null : tool.id();
    }

    /** Why nothing is written down of what it tightened; empty when it is. */
    String untold() {
        return untold;
    }

    /** Makes the joint; what was opened was slack, so that it counts a torque cycle. */
    void write(ReadSheet in, Id<Engine> engine, Id<Build> build, Moment closed, String by, String second) {
        if (fasteners != null && method != null) {
            in.make(
                    TIGHTENED,
                    new Joint(engine, build, fasteners, "", "", method, value, "", tool(), closed, true, by, second));
        }
    }
}
