package witnessmark.desktop.form;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Dot;
import witnessmark.chart.DrawnChart;
import witnessmark.chart.DrawnChart.Place;

/** Which point of a chart is in hand, and how keys move it. */
final class ChartPointer {
    private final DrawnChart drawn;
    private @Nullable Place place;

    ChartPointer(DrawnChart drawn) {
        this.drawn = drawn;
    }

    Optional<Place> place() {
        return Optional.ofNullable(place);
    }

    /** The readout of the point in hand, empty when there is none. */
    String words() {
        return place == null ? "" : drawn.dot(place).words();
    }

    /** The point in hand, when it stands for a record. */
    Optional<Dot> recorded() {
        return place().map(drawn::dot).filter(dot -> dot.record() != null);
    }

    void to(Place next) {
        place = next;
        drawn.bringIntoView(drawn.dot(next).across());
    }

    /** To the next point of the line, or the one before. */
    void along(int by) {
        if (place == null) {
            to(new Place(0, by > 0 ? 0 : dots(0).size() - 1));
            return;
        }
        int last = dots(place.line()).size() - 1;
        to(new Place(place.line(), Math.max(0, Math.min(last, place.dot() + by))));
    }

    /** To the first or the last point of the line. */
    void end(boolean last) {
        int line = place == null ? 0 : place.line();
        to(new Place(line, last ? dots(line).size() - 1 : 0));
    }

    /** To another line, at the point of it nearest across. */
    void across(int by) {
        int lines = drawn.chart().lines().size();
        int from = place == null ? 0 : place.line();
        int line = Math.floorMod(from + by, lines);
        double at = place == null ? drawn.from() : drawn.dot(place).across();
        List<Dot> dots = dots(line);
        int best = 0;
        for (int i = 1; i < dots.size(); i++) {
            boolean nearer = Math.abs(dots.get(i).across() - at)
                    < Math.abs(dots.get(best).across() - at);
            best = nearer ? i : best;
        }
        to(new Place(line, best));
    }

    private List<Dot> dots(int line) {
        return drawn.chart().lines().get(line).dots();
    }
}
