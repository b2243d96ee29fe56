package witnessmark.desktop.engines;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.swing.UIManager;
import witnessmark.desktop.form.Palette;

/**
 * Paints a line of life: runs above the line as high as they were long, builds as seams across it, works below it, and
 * under that the cars it was in.
 */
final class LineOfLifePainter {
    /** In unscaled pixels. */
    static final int HEIGHT = 124;

    private static final int LABELS = 18;
    private static final int LINE = 72;
    private static final int WORKS = 84;
    private static final int CARS = 92;
    private static final int CAR_HIGH = 13;
    private static final int TICKS = 122;
    private static final int MOST_TICKS = 12;

    /** What is labelled, in the order in which it takes its room. */
    private static final List<LifeMark.Kind> LABELLED = List.of(
            LifeMark.Kind.STOPPED,
            LifeMark.Kind.REBUILD,
            LifeMark.Kind.SKIM,
            LifeMark.Kind.LOST,
            LifeMark.Kind.BUILD,
            LifeMark.Kind.NOTED);

    private final LineOfLifeModel model;
    private final Function<LocalDate, String> days;

    /** @param days how a day reads at a tick */
    LineOfLifePainter(LineOfLifeModel model, Function<LocalDate, String> days) {
        this.model = model;
        this.days = days;
    }

    /** The share of what is seen at a horizontal place. */
    double share(double x, int width) {
        return x / Math.max(1, width);
    }

    void paint(Graphics2D g, int width, int height, boolean focused) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Object hints = UIManager.get("awt.font.desktophints");
        if (hints instanceof Map<?, ?> map) {
            g.addRenderingHints(map);
        } else {
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        }
        Font font = UIManager.getFont("Label.font");
        g.setFont(font.deriveFont(font.getSize2D() * 12 / 13));
        new Drawing(g, width).all();
        if (focused) {
            g.setColor(Palette.MARK.colour());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            float inset = UIScale.scale(1f);
            g.draw(new Rectangle2D.Float(inset, inset, width - 2 * inset, height - 2 * inset));
        }
    }

    /** One drawing at one width. */
    private final class Drawing {
        private final Graphics2D g;
        private final int width;
        private final FontMetrics metrics;

        Drawing(Graphics2D g, int width) {
            this.g = g;
            this.width = width;
            this.metrics = g.getFontMetrics();
        }

        void all() {
            ticks();
            cars();
            for (LifeMark mark : model.marks()) {
                switch (mark.kind()) {
                    case TOLD -> told(mark);
                    case BUILD, REBUILD -> open(mark);
                    default -> {}
                }
            }
            line();
            for (LifeMark mark : model.marks()) {
                mark(mark);
            }
            for (LifeMark mark : model.marks()) {
                incident(mark);
            }
            labels();
            chosen();
        }

        private void mark(LifeMark mark) {
            switch (mark.kind()) {
                case RUN -> run(mark, Palette.WITHIN.colour());
                case OVER_REV -> {
                    run(mark, Palette.WITHIN.colour());
                    overRev(mark);
                }
                case DOUBTFUL -> doubtful(mark);
                case MISSED -> cross(mark);
                case NOTED, LOST, STOPPED -> {} // over all runs
                case SKIM -> chevron(mark);
                case WORK -> tick(mark);
                case BUILD -> seam(mark, 1.5f);
                case REBUILD -> seam(mark, 2.5f);
                case CAR, TOLD -> {}
            }
        }

        private void ticks() {
            g.setStroke(new BasicStroke(unit(1)));
            for (LocalDate day : model.ticks(MOST_TICKS)) {
                double x = x(model.share(day));
                if (x < 0 || x > width) {
                    continue;
                }
                g.setColor(Palette.RULE.colour());
                g.draw(new Line2D.Double(x, unit(LABELS), x, unit(CARS + CAR_HIGH + 3)));
                String words = days.apply(day);
                double left = x - metrics.stringWidth(words) / 2.0;
                if (left >= 0 && left + metrics.stringWidth(words) <= width) {
                    g.setColor(Palette.INK2.colour());
                    g.drawString(words, (float) left, unit(TICKS) - metrics.getDescent());
                }
            }
        }

        private void line() {
            g.setColor(Palette.FIELD_BORDER.colour());
            g.fill(new Rectangle2D.Double(0, unit(LINE) - unit(0.75f), width, unit(1.5f)));
        }

        private void run(LifeMark mark, Color ink) {
            g.setColor(ink);
            g.fill(bar(mark));
        }

        private Rectangle2D bar(LifeMark mark) {
            double high = (LINE - LABELS - 6) * mark.minutes() / Math.max(1, model.longest());
            double left = x(model.share(mark.from()));
            double wide = Math.max(unit(2.5f), x(model.share(mark.to())) - left);
            double tall = Math.max(unit(3), unit((float) high));
            return new Rectangle2D.Double(left, unit(LINE) - tall, wide, tall);
        }

        private void overRev(LifeMark mark) {
            Rectangle2D bar = bar(mark);
            double x = bar.getCenterX();
            Path2D flag = new Path2D.Double();
            flag.moveTo(x - unit(4), bar.getY() - unit(2));
            flag.lineTo(x + unit(4), bar.getY() - unit(2));
            flag.lineTo(x, bar.getY() - unit(9));
            flag.closePath();
            g.setColor(Palette.OVER_FILL.colour());
            g.fill(flag);
        }

        private void doubtful(LifeMark mark) {
            Rectangle2D bar = bar(mark);
            g.setColor(Palette.NOT_KNOWN.colour());
            g.setStroke(dashed());
            g.draw(new Rectangle2D.Double(bar.getX() - unit(1), bar.getY(), bar.getWidth() + unit(2), bar.getHeight()));
        }

        private void told(LifeMark mark) {
            double left = x(model.share(mark.from()));
            double right = x(model.share(mark.to()));
            g.setColor(Palette.NOT_KNOWN.colour());
            g.setStroke(dashed());
            double high = unit(26);
            g.draw(new Rectangle2D.Double(left, unit(LINE) - high, Math.max(unit(3), right - left), high));
            write(mark.label(), Math.max(left, 0) + unit(5), right, unit(LINE) - high + metrics.getAscent());
        }

        /** The time in which the engine was open. */
        private void open(LifeMark mark) {
            double left = x(model.share(mark.from()));
            double right = x(model.share(mark.to()));
            g.setColor(Palette.OVER_WASH.colour());
            g.setColor(Palette.TRACK.colour());
            g.fill(new Rectangle2D.Double(left, unit(LINE - 4), Math.max(unit(2), right - left), unit(8)));
        }

        private void seam(LifeMark mark, float thick) {
            double x = x(model.share(mark.to()));
            g.setColor(Palette.INK.colour());
            float wide = unit(thick);
            g.fill(new Rectangle2D.Double(x - wide / 2, unit(LABELS), wide, unit(WORKS - LABELS)));
        }

        private void chevron(LifeMark mark) {
            double x = x(model.share(mark.from()));
            Path2D path = new Path2D.Double();
            path.moveTo(x, unit(LINE + 2));
            path.lineTo(x + unit(5), unit(LINE + 11));
            path.lineTo(x - unit(5), unit(LINE + 11));
            path.closePath();
            g.setColor(Palette.MARK.colour());
            g.fill(path);
        }

        private void tick(LifeMark mark) {
            double x = x(model.share(mark.from()));
            g.setColor(Palette.INK2.colour());
            g.fill(new Rectangle2D.Double(x - unit(0.75f), unit(LINE + 2), unit(1.5f), unit(7)));
        }

        private void cross(LifeMark mark) {
            double x = x(model.share(mark.from()));
            g.setColor(Palette.INK2.colour());
            g.setStroke(new BasicStroke(unit(1.5f)));
            double y = unit(LINE - 8);
            double half = unit(3.5f);
            g.draw(new Line2D.Double(x - half, y - half, x + half, y + half));
            g.draw(new Line2D.Double(x - half, y + half, x + half, y - half));
        }

        /** A diamond on a stem: hollow for a note, half as bad half filled, else full. */
        private void incident(LifeMark mark) {
            if (!mark.kind().ofIncident()) {
                return;
            }
            double x = x(model.share(mark.from()));
            double y = unit(LABELS + 7);
            g.setColor(Palette.INK.colour());
            g.fill(new Rectangle2D.Double(x - unit(0.5f), y, unit(1), unit(LINE) - y));
            Path2D diamond = new Path2D.Double();
            double half = unit(5);
            diamond.moveTo(x, y - half);
            diamond.lineTo(x + half, y);
            diamond.lineTo(x, y + half);
            diamond.lineTo(x - half, y);
            diamond.closePath();
            g.setColor(Palette.SHEET.colour());
            g.fill(diamond);
            if (mark.kind() == LifeMark.Kind.STOPPED) {
                g.setColor(Palette.OVER_FILL.colour());
                g.fill(diamond);
            } else if (mark.kind() == LifeMark.Kind.LOST) {
                Graphics2D lower = (Graphics2D) g.create();
                lower.clip(new Rectangle2D.Double(x - half, y, 2 * half, half));
                lower.setColor(Palette.DUE_FILL.colour());
                lower.fill(diamond);
                lower.dispose();
            }
            g.setColor(Palette.INK.colour());
            g.setStroke(new BasicStroke(unit(1.25f)));
            g.draw(diamond);
        }

        private void cars() {
            for (LifeMark mark : model.marks()) {
                if (mark.kind() == LifeMark.Kind.CAR) {
                    double left = Math.max(0, x(model.share(mark.from())));
                    double right = Math.min(width, x(model.share(mark.to())));
                    if (right <= left) {
                        continue;
                    }
                    g.setColor(Palette.TRACK.colour());
                    g.fill(new Rectangle2D.Double(left, unit(CARS), right - left, unit(CAR_HIGH)));
                    double baseline = unit(CARS) + (unit(CAR_HIGH) + metrics.getAscent() - metrics.getDescent()) / 2.0;
                    write(mark.label(), left + unit(5), right, baseline);
                }
            }
        }

        /** Labels of builds, skims and incidents along the top, each where there is room. */
        private void labels() {
            List<double[]> taken = new ArrayList<>();
            for (LifeMark.Kind kind : LABELLED) {
                for (LifeMark mark : model.marks()) {
                    if (mark.kind() == kind && !mark.label().isEmpty()) {
                        label(mark, taken);
                    }
                }
            }
        }

        private void label(LifeMark mark, List<double[]> taken) {
            double at = x(model.share(mark.kind() == LifeMark.Kind.SKIM ? mark.from() : mark.to()));
            if (at < -unit(4) || at > width + unit(4)) {
                return;
            }
            double wide = metrics.stringWidth(mark.label());
            double left = Math.max(0, Math.min(at - wide / 2, width - wide));
            double gap = unit(10);
            boolean room = taken.stream().noneMatch(t -> left < t[1] + gap && t[0] < left + wide + gap);
            if (room) {
                taken.add(new double[] {left, left + wide});
                g.setColor(mark.kind() == LifeMark.Kind.SKIM ? Palette.MARK.colour() : Palette.INK.colour());
                g.drawString(mark.label(), (float) left, unit(LABELS - 2) - metrics.getDescent());
            }
        }

        private void chosen() {
            LifeMark mark = model.chosen();
            if (mark == null) {
                return;
            }
            double left = x(model.share(mark.from()));
            double right = Math.max(left, x(model.share(mark.to())));
            g.setColor(Palette.MARK.colour());
            g.setStroke(new BasicStroke(unit(2)));
            boolean car = mark.kind() == LifeMark.Kind.CAR;
            double top = car ? unit(CARS - 2) : unit(LABELS + 1);
            double bottom = car ? unit(CARS + CAR_HIGH + 2) : unit(WORKS + 2);
            g.draw(new Rectangle2D.Double(left - unit(4), top, right - left + unit(8), bottom - top));
        }

        private void write(String words, double left, double right, double baseline) {
            if (metrics.stringWidth(words) <= right - left) {
                g.setColor(Palette.INK.colour());
                g.drawString(words, (float) left, (float) baseline);
            }
        }

        private BasicStroke dashed() {
            return new BasicStroke(
                    unit(1.25f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, new float[] {unit(4), unit(3)}, 0f);
        }

        private double x(double share) {
            return share * width;
        }

        private float unit(float length) {
            return UIScale.scale(length);
        }
    }
}
