package witnessmark.desktop.photos;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Kept;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.Styles;

/** Draws one photo of a list: its small picture, what it shows, when it was taken. */
final class PhotoCell implements ListCellRenderer<PhotoLine> {
    static final int WIDE = 170;
    static final int HIGH = 166;
    private static final int PICTURE = 114;

    private final SmallPictures pictures;
    private final Cell cell = new Cell();
    private final JLabel title = Lettering.line("", Styles.FIELD_LABEL);
    private final JLabel when = Lettering.line("", Styles.NOTE);

    PhotoCell(SmallPictures pictures) {
        this.pictures = pictures;
        cell.add(title, "wmin 0, gaptop " + (PICTURE + 8) + ", wrap");
        cell.add(when, "wmin 0");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends PhotoLine> list, PhotoLine value, int index, boolean selected, boolean focused) {
        SmallPictures.Small small =
                pictures.of(value.entry().fact(), list::repaint).orElse(null);
        Kept.returns(cell); // a renderer is in no window, so that a change of look passes it by
        title.setText(value.title());
        when.setText(value.when());
        cell.image = small == null ? null : small.image();
        cell.said = small == null ? "" : small.why();
        cell.selected = selected;
        cell.focused = selected && list.isFocusOwner();
        String words = value.title() + ", " + value.when();
        cell.getAccessibleContext().setAccessibleName(words);
        cell.setToolTipText(value.about());
        return cell;
    }

    private static final class Cell extends JPanel {
        private @Nullable BufferedImage image;
        private String said = "";
        private boolean selected;
        private boolean focused;

        Cell() {
            super(new FormLayout("insets 6 8 6 8, gap 0, fillx", "[0::,grow,fill]", ""));
            setOpaque(false);
            Lettering.plain(this);
        }

        /** A renderer is laid out whether or not it stands in a window. */
        @Override
        public void validate() {
            invalidate();
            doLayout();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            int edge = UIScale.scale(4);
            int left = UIScale.scale(8);
            int top = UIScale.scale(6);
            int wide = getWidth() - 2 * left;
            int high = UIScale.scale(PICTURE);
            if (selected) {
                g.setColor((focused ? Palette.MARK : Palette.RULE).colour());
                g.setStroke(new BasicStroke(UIScale.scale(2f)));
                g.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, edge, edge);
            }
            g.setColor(Palette.TRACK.colour());
            g.fillRect(left, top, wide, high);
            BufferedImage shown = image;
            if (shown != null) {
                double by = Math.min((double) wide / shown.getWidth(), (double) high / shown.getHeight());
                int w = Math.max(1, (int) Math.round(shown.getWidth() * by));
                int h = Math.max(1, (int) Math.round(shown.getHeight() * by));
                g.drawImage(shown, left + (wide - w) / 2, top + (high - h) / 2, w, h, null);
            } else if (!said.isEmpty()) {
                g.setColor(Palette.INK2.colour());
                g.setFont(getFont());
                int width = g.getFontMetrics().stringWidth(said);
                g.drawString(said, left + Math.max(2, (wide - width) / 2), top + high / 2);
            }
            g.dispose();
        }
    }
}
