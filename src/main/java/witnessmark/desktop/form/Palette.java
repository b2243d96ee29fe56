package witnessmark.desktop.form;

import java.awt.Color;
import java.util.Objects;
import javax.swing.UIManager;

/** The colours of the theme in force, by role. For painters only: everything else takes a style class. */
public enum Palette {
    SHEET("sheet"),
    BENCH("bench"),
    RAIL("rail"),
    BOARD("board"),
    BOARD_INK("boardInk"),
    BOARD_INK2("boardInk2"),
    INK("ink"),
    INK2("ink2"),
    RULE("rule"),
    SHEET_EDGE("sheetEdge"),
    FIELD_BORDER("fieldBorder"),
    MARK("mark"),
    MARK_INK("markInk"),
    RAIL_SELECTION("railSelection"),
    RAIL_SELECTION_INK("railSelectionInk"),
    RAIL_SEAM("railSeam"),
    WITHIN("within"),
    DUE("due"),
    DUE_FILL("dueFill"),
    OVER("over"),
    OVER_FILL("overFill"),
    OVER_WASH("overWash"),
    NOT_KNOWN("notKnown"),
    TRACK("track"),
    SEAM("seam");

    private final String key;

    Palette(String name) {
        this.key = "Wm." + name;
    }

    /** The key in the look's defaults, {@code Wm.over} for example. */
    public String key() {
        return key;
    }

    /** The colour now. Ask while painting and do not keep it: it changes with the theme. */
    public Color colour() {
        return Objects.requireNonNull(UIManager.getColor(key), key);
    }

    /** The colour now, mixed with another: of this one so large a share, from 0 to 1. */
    public Color mixedWith(Palette other, double share) {
        Color one = colour();
        Color two = other.colour();
        return new Color(
                (int) Math.round(one.getRed() * share + two.getRed() * (1 - share)),
                (int) Math.round(one.getGreen() * share + two.getGreen() * (1 - share)),
                (int) Math.round(one.getBlue() * share + two.getBlue() * (1 - share)));
    }
}
