package witnessmark.desktop.strip;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import witnessmark.desktop.form.Cut;
import witnessmark.desktop.form.Palette;

/** Paints the table of a strip: places down, positions across. */
final class StripPainter {
    private final StripLines lines;
    private final StripGrid grid;
    private final Font strong;
    private final Font small;
    private final Graphics2D g;

    StripPainter(StripLines lines, StripGrid grid, Font strong, Font small, Graphics2D g) {
        this.lines = lines;
        this.grid = grid;
        this.strong = strong;
        this.small = small;
        this.g = g;
    }

    /**
     * @param top from where it is in view: its head stays there
     * @param row in hand
     * @param column in hand
     * @param focused whether keys go to it
     */
    void paint(double width, double top, int row, int column, boolean focused) {
        for (int i = 0; i < lines.rows().size(); i++) {
            row(lines.rows().get(i), i, width);
        }
        rule(grid.height() - UIScale.scale(1f), width, Palette.RULE.colour());
        if (row < lines.rows().size() && column < lines.rows().get(row).cells().size()) {
            hand(grid.cell(row, column), focused);
        }
        head(width, top);
    }

    private void head(double width, double top) {
        if (top > 0) {
            g.setColor(Palette.SHEET.colour());
            g.fill(new Rectangle2D.Double(0, top, width, grid.headHeight()));
            rule(top + grid.headHeight(), width, Palette.RULE.colour());
        }
        for (int i = 0; i < lines.heads().size(); i++) {
            centred(
                    strong,
                    Palette.INK2.colour(),
                    lines.heads().get(i),
                    grid.left(i) + grid.column() / 2,
                    top + StripGrid.gap());
        }
    }

    private void row(StripLines.Row row, int at, double width) {
        double top = grid.top(at);
        if (!row.area().isEmpty()) {
            write(strong, Palette.INK2.colour(), row.area(), 0, top - grid.areaHeight(row) + 2 * StripGrid.gap());
        }
        rule(top, width, row.area().isEmpty() ? Palette.RULE.colour() : Palette.INK2.colour());
        double room = grid.names() - 2 * StripGrid.gap();
        boolean fits = g.getFontMetrics(strong).stringWidth(row.title().name()) <= room;
        StripLines.Title title = fits ? row.title() : row.narrow();
        double y = write(
                strong,
                Palette.INK.colour(),
                Cut.to(title.name(), g.getFontMetrics(strong), room),
                0,
                top + StripGrid.gap());
        write(small, Palette.INK2.colour(), Cut.to(title.note(), g.getFontMetrics(small), room), 0, y);
        for (int i = 0; i < row.cells().size(); i++) {
            cell(row.cells().get(i), grid.cell(at, i), i == 0 && row.cells().size() > 1);
        }
    }

    private void cell(StripLines.Cell cell, Rectangle2D box, boolean whole) {
        StripLines.Seen worst = cell.worst().orElse(null);
        if (worst == null) {
            if (!whole) {
                g.setColor(Palette.INK2.colour());
                double dot = UIScale.scale(2f);
                g.fill(new Rectangle2D.Double(box.getCenterX() - dot / 2, box.getCenterY() - dot / 2, dot, dot));
            }
            return;
        }
        double size = StripGrid.shape();
        double y = box.getY() + StripGrid.gap() + size / 2 + UIScale.scale(1f);
        HowShapes.draw(g, worst.how(), box.getCenterX(), y, size);
        if (cell.worse()) {
            HowShapes.worse(g, box.getCenterX() + size * 1.4, y, size);
        }
        if (cell.found().size() > 1) {
            write(
                    small,
                    Palette.INK2.colour(),
                    "×" + cell.found().size(),
                    box.getCenterX() - size * 2.4,
                    y - size * 0.7);
        }
        FontMetrics metrics = g.getFontMetrics(small);
        centred(
                small,
                Palette.INK.colour(),
                Cut.to(worst.word(), metrics, box.getWidth() - UIScale.scale(4)),
                box.getCenterX(),
                box.getMaxY() - StripGrid.gap() - metrics.getHeight());
    }

    private void rule(double y, double width, Color ink) {
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        g.setColor(ink);
        g.draw(new Line2D.Double(0, y, width, y));
    }

    private void hand(Rectangle2D box, boolean focused) {
        float line = UIScale.scale(focused ? 2f : 1f);
        g.setColor(focused ? Palette.MARK.colour() : Palette.INK2.colour());
        g.setStroke(new BasicStroke(line));
        g.draw(new Rectangle2D.Double(
                box.getX() + line / 2, box.getY() + line / 2, box.getWidth() - line, box.getHeight() - line));
    }

    private void centred(Font font, Color ink, String words, double x, double y) {
        write(font, ink, words, x - g.getFontMetrics(font).stringWidth(words) / 2.0, y);
    }

    /** @return where the next line begins */
    private double write(Font font, Color ink, String words, double x, double y) {
        FontMetrics metrics = g.getFontMetrics(font);
        g.setFont(font);
        g.setColor(ink);
        g.drawString(words, (float) x, (float) (y + metrics.getAscent()));
        return y + metrics.getHeight();
    }
}
