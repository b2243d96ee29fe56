package witnessmark.desktop.beforewego;

import java.util.List;
import witnessmark.desktop.form.SeamState;

/**
 * Where it runs out, run by run: a column for each run of the coming event, a row for each car.
 *
 * @param runs the runs in order: "Sat, Practice 1", "Practice 2" …
 * @param cars a row for each car
 */
public record RunsOutLines(List<String> runs, List<Row> cars) {
    /**
     * One car.
     *
     * @param car its name as said: "Car 41"
     * @param cells what stands under each run, as many as there are runs
     */
    public record Row(String car, List<List<Cell>> cells) {
        public Row {
            cells = cells.stream().map(List::copyOf).toList();
        }
    }

    /**
     * One mark where it runs out.
     *
     * @param state the mark
     * @param words what, and when: "valve springs, already over"
     */
    public record Cell(SeamState state, String words) {}

    public RunsOutLines {
        runs = List.copyOf(runs);
        cars = List.copyOf(cars);
    }

    /** Whether there is something to show. */
    public boolean any() {
        return cars.stream().anyMatch(car -> car.cells().stream().anyMatch(cell -> !cell.isEmpty()));
    }
}
