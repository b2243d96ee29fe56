package witnessmark.desktop.form;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Arrays;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;

/**
 * A row that leads somewhere: Enter, Space or a click opens it, Up and Down go to the row before and after. What is in
 * it is only to be looked at; the row itself speaks for all of it.
 */
public final class OpenRow extends JButton {
    /** How far the wash and the ring stand out at the sides of what is in the row. */
    public static final int BLEED = 8;

    /** Constrains a list of rows so that what is in them lines up with the rest of the sheet. */
    public static final String LIST = "growx, pad 0 -" + BLEED + " 0 " + BLEED;

    /** Constrains a line between rows. */
    public static final String BETWEEN = "growx, gapleft " + BLEED + ", gapright " + BLEED;

    /**
     * @param columns MigLayout column constraints
     * @param about the whole row for screen readers
     */
    public OpenRow(String columns, String about, Runnable open) {
        super(new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                open.run();
            }
        });
        Lettering.plain(this);
        setText("");
        putClientProperty(Lettering.MAY_BE_CUT, true);
        setLayout(new FormLayout("insets 8 " + BLEED + " 8 " + BLEED + ", fillx, gap 0", columns, "[]1[]"));
        setBorder(BorderFactory.createEmptyBorder());
        setContentAreaFilled(false);
        setBorderPainted(false);
        setRolloverEnabled(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        getAccessibleContext().setAccessibleName(about);
        bind(KeyEvent.VK_ENTER, "open", this::doClick);
        bind(KeyEvent.VK_DOWN, "next", () -> toRow(1));
        bind(KeyEvent.VK_UP, "previous", () -> toRow(-1));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                requestFocusInWindow();
            }
        });
    }

    /** Puts words in the row. They may be cut: the whole is in the row's tooltip, since a label's own would catch clicks. */
    public void say(String words, String style, String constraints) {
        JLabel label = Lettering.line(words, style);
        label.putClientProperty(Lettering.MAY_BE_CUT, true);
        add(label, "wmin 0, " + constraints);
    }

    @Override
    public Dimension getPreferredSize() {
        return getLayout() == null ? super.getPreferredSize() : getLayout().preferredLayoutSize(this);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics g) {
        if (getModel().isRollover() || isFocusOwner()) {
            g.setColor(Palette.BENCH.colour());
            g.fillRect(0, 0, getWidth(), getHeight());
        }
        FocusRing.paint(this, g);
    }

    private void toRow(int step) {
        Component[] all = getParent().getComponents();
        int at = Arrays.asList(all).indexOf(this) + step;
        while (at >= 0 && at < all.length) {
            if (all[at] instanceof OpenRow row && row.isVisible()) {
                row.requestFocusInWindow();
                row.scrollRectToVisible(new Rectangle(0, 0, row.getWidth(), row.getHeight()));
                return;
            }
            at += step;
        }
    }

    /** Lets a key do something else with the row. */
    public void bind(int key, String name, Runnable work) {
        FormKeys.bind(this, Keys.plain(key), name, work);
    }
}
