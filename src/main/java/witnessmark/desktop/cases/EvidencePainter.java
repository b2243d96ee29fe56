package witnessmark.desktop.cases;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import witnessmark.desktop.form.Cut;
import witnessmark.desktop.form.Palette;
import witnessmark.domain.CauseState;
import witnessmark.domain.Speaks;
import witnessmark.wording.Texts;

/** Paints findings against causes. */
final class EvidencePainter {
    private final Texts texts;
    private final EvidenceLines lines;
    private final EvidenceGrid grid;
    private final Fonts fonts;
    private final Graphics2D g;

    /**
     * @param text leads and numbers
     * @param strong the same, bolder
     * @param small everything else
     */
    record Fonts(Font text, Font strong, Font small) {}

    EvidencePainter(Texts texts, EvidenceLines lines, EvidenceGrid grid, Fonts fonts, Graphics2D g) {
        this.texts = texts;
        this.lines = lines;
        this.grid = grid;
        this.fonts = fonts;
        this.g = g;
    }

    /**
     * @param row in hand
     * @param column in hand
     * @param focused whether keys go to it
     */
    void paint(double width, int row, int column, boolean focused) {
        washes();
        legend();
        for (int i = 0; i < lines.heads().size(); i++) {
            head(lines.heads().get(i), i);
        }
        for (int i = 0; i < lines.rows().size(); i++) {
            row(lines.rows().get(i), i);
        }
        foot(lines.rows().size());
        rules(width);
        if (row >= 0 && column >= 0 && column < lines.heads().size()) {
            hand(grid.cell(row, column), focused);
        }
    }

    /** What is ruled out steps back; the row of how sure begins what is said of the causes themselves. */
    private void washes() {
        g.setColor(Palette.TRACK.mixedWith(Palette.SHEET, 0.55));
        for (int i = 0; i < lines.heads().size(); i++) {
            if (lines.heads().get(i).state() == CauseState.RULED_OUT) {
                g.fill(new Rectangle2D.Double(grid.left(i), 0, grid.column(), grid.height()));
            }
        }
    }

    private void rules(double width) {
        double line = UIScale.scale(1f);
        g.setStroke(new BasicStroke((float) line));
        for (int i = 0; i <= grid.rows(); i++) {
            double y = i == grid.rows() ? grid.height() - line : grid.top(i);
            boolean strong = i == 0 || i == lines.rows().size();
            g.setColor(strong ? Palette.INK2.colour() : Palette.RULE.colour());
            g.draw(new Line2D.Double(0, y, width, y));
        }
        g.setColor(Palette.RULE.colour());
        for (int i = 0; i < lines.heads().size(); i++) {
            g.draw(new Line2D.Double(grid.left(i), 0, grid.left(i), grid.height()));
        }
    }

    private void legend() {
        double size = EvidenceGrid.shape();
        FontMetrics small = g.getFontMetrics(fonts.small());
        double y = grid.headHeight() - EvidenceGrid.gap() - small.getHeight() * 2;
        double x = legend(Speaks.FOR, "cases.legend.for", size / 2, y);
        x = legend(Speaks.AGAINST, "cases.legend.against", x, y);
        legend(Speaks.NEITHER, "cases.legend.neither", x, y);
        write(
                fonts.small(),
                Palette.INK2.colour(),
                Cut.to(texts.get("cases.legend.twice"), small, grid.names() - EvidenceGrid.gap()),
                0,
                y + small.getHeight());
    }

    private double legend(Speaks speaks, String key, double x, double y) {
        FontMetrics small = g.getFontMetrics(fonts.small());
        String word = texts.get(key);
        double size = EvidenceGrid.shape();
        double end = x + size + small.stringWidth(word);
        if (end > grid.names()) {
            return x;
        }
        WeighShapes.draw(g, speaks, x, y + small.getHeight() / 2.0, size * 0.9);
        write(fonts.small(), Palette.INK2.colour(), word, x + size * 0.8, y);
        return end + size * 1.4;
    }

    private void head(EvidenceLines.Head head, int at) {
        double y = EvidenceGrid.gap();
        double middle = grid.left(at) + grid.column() / 2;
        y = centred(fonts.strong(), Palette.INK.colour(), head.number(), middle, y);
        if (grid.wide()) {
            for (String line : grid.statement(head)) {
                y = centred(fonts.small(), Palette.INK.colour(), line, middle, y);
            }
        }
        FontMetrics small = g.getFontMetrics(fonts.small());
        double bottom = grid.headHeight() - EvidenceGrid.gap() - small.getHeight() * 2;
        double size = EvidenceGrid.shape();
        WeighShapes.draw(g, head.state(), middle, bottom - size / 2 - EvidenceGrid.gap() / 2, size);
        String word = grid.wide() ? head.stateWord() : head.stateShort();
        double next = centred(fonts.small(), Palette.INK.colour(), fitting(word), middle, bottom);
        centred(fonts.small(), Palette.INK2.colour(), fitting(head.share()), middle, next);
    }

    private void row(EvidenceLines.Row row, int at) {
        FontMetrics small = g.getFontMetrics(fonts.small());
        double top = grid.top(at) + EvidenceGrid.gap();
        double y = write(fonts.strong(), Palette.INK.colour(), grid.lead(row), 0, top);
        double right = grid.names() - EvidenceGrid.gap() * 2 - small.stringWidth(row.day());
        FontMetrics strong = g.getFontMetrics(fonts.strong());
        write(fonts.small(), Palette.INK2.colour(), row.day(), right, top + strong.getAscent() - small.getAscent());
        for (String line : grid.words(row)) {
            y = write(fonts.small(), Palette.INK2.colour(), line, 0, y);
        }
        for (int i = 0; i < row.cells().size(); i++) {
            cell(row.cells().get(i), grid.cell(at, i));
        }
    }

    private void cell(EvidenceLines.Cell cell, Rectangle2D box) {
        FontMetrics small = g.getFontMetrics(fonts.small());
        Speaks speaks = cell.speaks();
        if (speaks == null) {
            g.setColor(Palette.INK2.colour());
            double dot = UIScale.scale(2f);
            g.fill(new Rectangle2D.Double(box.getCenterX() - dot / 2, box.getCenterY() - dot / 2, dot, dot));
            return;
        }
        double size = EvidenceGrid.shape();
        double all = size + EvidenceGrid.gap() / 2 + small.getHeight();
        double top = box.getCenterY() - all / 2;
        WeighShapes.draw(g, speaks, box.getCenterX(), top + size / 2, size);
        String word = grid.words() ? cell.word() : cell.word().substring(0, 1);
        double y = top + size + EvidenceGrid.gap() / 2;
        centred(fonts.small(), Palette.INK.colour(), fitting(word), box.getCenterX(), y);
        if (!cell.why().isEmpty()) {
            double half = small.stringWidth(fitting(word)) / 2.0;
            double under = y + small.getAscent() + UIScale.scale(2f);
            g.setColor(Palette.INK2.colour());
            g.setStroke(new BasicStroke(UIScale.scale(1f)));
            g.draw(new Line2D.Double(box.getCenterX() - half, under, box.getCenterX() + half, under));
        }
    }

    /** How sure, and the tests to make. */
    private void foot(int first) {
        foot(first, "cases.evidence.row.sure");
        foot(first + 1, "cases.evidence.row.tests");
        for (int i = 0; i < lines.heads().size(); i++) {
            EvidenceLines.Head head = lines.heads().get(i);
            two(List.of(head.sure(), head.since()), first, i);
            two(List.of(head.tests(), due(head)), first + 1, i);
        }
    }

    private void foot(int row, String key) {
        FontMetrics strong = g.getFontMetrics(fonts.strong());
        double y = grid.cell(row, 0).getCenterY() - strong.getHeight() / 2.0;
        write(fonts.strong(), Palette.INK.colour(), Cut.to(texts.get(key), strong, grid.names()), 0, y);
    }

    private void two(List<String> all, int row, int at) {
        List<String> said = all.stream().filter(each -> !each.isEmpty()).toList();
        FontMetrics small = g.getFontMetrics(fonts.small());
        Rectangle2D box = grid.cell(row, at);
        double y = box.getCenterY() - said.size() * small.getHeight() / 2.0;
        Color ink = Palette.INK.colour();
        for (String each : said) {
            y = centred(fonts.small(), ink, fitting(each), box.getCenterX(), y);
            ink = Palette.INK2.colour();
        }
    }

    private String due(EvidenceLines.Head head) {
        boolean room = g.getFontMetrics(fonts.small()).stringWidth(head.testsDue()) <= grid.column() - UIScale.scale(2);
        return room ? head.testsDue() : head.testsDueShort();
    }

    private String fitting(String word) {
        return Cut.to(word, g.getFontMetrics(fonts.small()), grid.column() - UIScale.scale(2));
    }

    private void hand(Rectangle2D box, boolean focused) {
        float line = UIScale.scale(focused ? 2f : 1f);
        g.setColor(focused ? Palette.MARK.colour() : Palette.INK2.colour());
        g.setStroke(new BasicStroke(line));
        g.draw(new Rectangle2D.Double(
                box.getX() + line / 2, box.getY() + line / 2, box.getWidth() - line, box.getHeight() - line));
    }

    private double centred(Font font, Color ink, String words, double x, double y) {
        return write(font, ink, words, x - g.getFontMetrics(font).stringWidth(words) / 2.0, y);
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
