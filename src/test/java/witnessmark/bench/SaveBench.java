package witnessmark.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import witnessmark.domain.Car;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;

/**
 * What one durable save of a run costs, from the run sheet's own save to the moment the file is synced, on the sample
 * season.
 *
 * <p>{@code mvn -q -o test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=witnessmark.bench.SaveBench}
 */
public final class SaveBench {
    private static final int WARM_UP = 200;
    private static final int SAVES = 1000;

    private SaveBench() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("save-bench");
        Desk desk = new SampleBooks(folder).open();
        RunSheet sheet = new RunSheet(desk, SampleBooks.ids(), FieldUnits.metric(DayOrder.DAY_FIRST));
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(
                desk.view().facts().of(Car.class).named("41").orElseThrow().id()));
        double[] millis = new double[SAVES];
        for (int i = -WARM_UP; i < SAVES; i++) {
            typed.put(RunField.DATE, "2026-07-08");
            typed.put(RunField.OUT_AT, "14:00");
            typed.put(RunField.RUNNING, "27:30");
            long start = System.nanoTime();
            sheet.save(typed, "bench").orThrow();
            if (i >= 0) {
                millis[i] = (System.nanoTime() - start) / 1e6;
            }
            desk.undo().orThrow();
        }
        desk.logbook().close();
        Arrays.sort(millis);
        System.out.printf(
                "durable save of a run, %d times: median %.2f ms, 95 %% %.2f ms, 99 %% %.2f ms, most %.2f ms%n",
                SAVES, millis[SAVES / 2], millis[SAVES * 95 / 100], millis[SAVES * 99 / 100], millis[SAVES - 1]);
    }
}
