package witnessmark.desktop.faces;

import java.awt.Graphics2D;
import java.util.List;
import java.util.function.Consumer;
import witnessmark.chart.DrawnLifeRows;
import witnessmark.chart.LifeRows;
import witnessmark.desktop.form.ChartLook;
import witnessmark.desktop.form.PaintedRows;
import witnessmark.desktop.form.Palette;

/** Every head and block side by side since its skim, each leading to its face. */
final class StripsView extends PaintedRows {
    private transient LifeRows rows = new LifeRows(1, List.of(), List.of());

    StripsView(String name, Consumer<String> open, Consumer<String> readout) {
        super(name, open, readout);
    }

    /** @param words the whole of it in two sentences */
    void show(LifeRows next, String words) {
        rows = next;
        show(next.rows().stream().map(row -> new Row(row.words(), row.record())).toList(), words);
    }

    @Override
    protected int at(int y) {
        return drawn().at(y);
    }

    @Override
    protected int high() {
        return DrawnLifeRows.height(rows.rows().size());
    }

    @Override
    protected void paint(Graphics2D g, int chosen) {
        drawn().draw(g, chosen);
    }

    private DrawnLifeRows drawn() {
        return new DrawnLifeRows(rows, ChartLook.now(), Palette.WITHIN.colour(), getWidth());
    }
}
