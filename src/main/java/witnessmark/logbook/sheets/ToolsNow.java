package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import witnessmark.domain.Calibration;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Tool;
import witnessmark.domain.ToolKind;
import witnessmark.ledger.Calibrations;
import witnessmark.ledger.result.TightenedWith;

/** Tools to pick from, each with how it stands. */
final class ToolsNow {
    private ToolsNow() {}

    static List<Choice> choices(SheetSight sight) {
        return sight.facts().of(Tool.class).where(tool -> true).stream()
                .map(tool -> Choice.of(
                        tool.id().text(),
                        SheetNote.of("tool_state", tool.fact(), tool.fact().kind(), state(sight, tool))))
                .toList();
    }

    /** The last time it was held against a standard, up to a day. */
    static Optional<Calibration> last(SheetSight sight, Id<Tool> tool, LocalDate day) {
        return Calibrations.last(sight.facts(), tool, day).map(Entry::fact);
    }

    /** How it stands today, as a phrase. */
    static SheetNote state(SheetSight sight, Entry<Tool> tool) {
        LocalDate out = tool.fact().outOfUse();
        if (out != null) {
            return SheetNote.of("tool_out", out);
        }
        Optional<Calibration> last = last(sight, tool.id(), sight.today());
        LocalDate due = last.map(Calibration::due).orElse(null);
        if (due != null) {
            return SheetNote.of("tool_due", due);
        }
        return last.map(each -> SheetNote.of("tool_calibrated", each.day())).orElse(SheetNote.of("tool_never"));
    }

    /**
     * What an error found on a day may have got wrong: how many groups it tightened by then since its calibration before,
     * and on which engines.
     */
    static SheetNote tightened(SheetSight sight, Entry<Tool> tool, LocalDate day) {
        TightenedWith all = Calibrations.tightenedBefore(sight.facts(), tool.id(), day);
        LocalDate since = all.since();
        if (all.joints().isEmpty()) {
            return tool.fact().kind() != ToolKind.TORQUE_WRENCH
                    ? SheetNote.NONE
                    : since == null
                            ? SheetNote.of("tightened_nothing")
                            : SheetNote.of("tightened_nothing_since", since);
        }
        String engines = all.engines().stream()
                .map(engine -> sight.name(Engine.class, engine))
                .collect(Collectors.joining(", "));
        return since == null
                ? SheetNote.of("tightened_ever", all.groups(), engines)
                : SheetNote.of("tightened_since", all.groups(), since, engines);
    }

    static String name(SheetSight sight, String key) {
        return sight.find(Tool.class, key).map(tool -> tool.fact().mark()).orElse("");
    }
}
