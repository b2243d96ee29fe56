package witnessmark.desktop.beforewego;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.result.RunsOut;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.Standing;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Puts every mark that asks for something under the run in which it does. */
final class RunsOutModel {
    private final Texts texts;
    private final Measures measures;
    private final MarkWords marks;

    RunsOutModel(Texts texts, Measures measures, MarkWords marks) {
        this.texts = texts;
        this.measures = measures;
        this.marks = marks;
    }

    RunsOutLines lines(Standing standing) {
        List<Entry<PlannedRun>> timetable = standing.timetable();
        List<String> runs = new ArrayList<>();
        Map<Id<PlannedRun>, Integer> columns = new HashMap<>();
        LocalDate day = null;
        for (Entry<PlannedRun> planned : timetable) {
            columns.put(planned.id(), runs.size());
            String name = planned.fact().name();
            runs.add(
                    planned.fact().day().equals(day)
                            ? name
                            : texts.get(
                                    "beforewego.runsOut.day",
                                    measures.weekday(planned.fact().day()),
                                    name));
            day = planned.fact().day();
        }
        List<RunsOutLines.Row> rows = new ArrayList<>();
        if (!runs.isEmpty()) {
            standing.cars().forEach(car -> rows.add(row(car, standing.going(), columns)));
        }
        return new RunsOutLines(runs, rows);
    }

    private RunsOutLines.Row row(String car, List<MarkOn> going, Map<Id<PlannedRun>, Integer> columns) {
        List<List<RunsOutLines.Cell>> cells = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            cells.add(new ArrayList<>());
        }
        for (MarkOn on : going) {
            if (car.equals(on.car()) && (on.calls() || on.comesDue())) {
                RunsOutLines.Cell cell = new RunsOutLines.Cell(SeamState.of(on.state()), words(on));
                List<RunsOutLines.Cell> there = cells.get(column(on, columns));
                if (!there.contains(cell)) {
                    there.add(cell);
                }
            }
        }
        return new RunsOutLines.Row(texts.get("beforewego.car", car), cells);
    }

    /** Under the first run what already is so, under the last what comes after it. */
    private static int column(MarkOn on, Map<Id<PlannedRun>, Integer> columns) {
        RunsOut out = on.runsOut();
        if (on.calls() || out == null) {
            return 0;
        }
        Integer at = out.planned() == null ? null : columns.get(out.planned().id());
        return at != null ? at : columns.size() - 1;
    }

    private String words(MarkOn on) {
        return texts.get(key(on, on.runsOut()), marks.inCell(on));
    }

    private static String key(MarkOn on, @Nullable RunsOut out) {
        return switch (on.state()) {
            case HELD -> "beforewego.runsOut.held";
            case OVER -> "beforewego.runsOut.already";
            case RUN_ON -> "beforewego.runsOut.runOn";
            case NOT_KNOWN, WITHIN -> "beforewego.runsOut.notKnown";
            case DUE ->
                out != null && out.after()
                        ? "beforewego.runsOut.after"
                        : out != null && !out.sure() ? "beforewego.runsOut.perhaps" : "beforewego.runsOut.in";
        };
    }
}
