package witnessmark.desktop.form;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JComponent;

/** The style classes that the themes define. They follow a change of theme and of size; colours and fonts set do not. */
public final class Styles {
    /** Small, second ink. */
    public static final String NOTE = "note";
    /** Small, full ink: what the program understood. */
    public static final String ECHO = "echo";
    /** Small, in the colour of a doubt. */
    public static final String QUERY = "query";
    /** Small, in the colour of a stop. */
    public static final String STOP = "stop";

    public static final String FIELD_LABEL = "fieldLabel";
    /** Body size, bolder. */
    public static final String STRONG = "strong";
    /** The first line of a row of a list that is not a table. */
    public static final String ROW_TITLE = "rowTitle";
    /** The head of a part of a page. */
    public static final String SECTION = "section";
    /** What is read from the other side of an engine: its name. */
    public static final String FAR_NAME = "farName";
    /** The same, very large: its figure. */
    public static final String FAR = "far";
    /** The head of a page. */
    public static final String TITLE = "title";

    public static final String APP_NAME = "appName";
    public static final String RAIL_GROUP = "railGroup";
    /** Body size, second ink. */
    public static final String QUIET_INK = "quietInk";

    public static final String SHEET = "sheet";
    public static final String BENCH = "bench";
    public static final String RAIL = "rail";
    public static final String BOARD = "board";
    public static final String BOARD_TITLE = "boardTitle";
    public static final String BOARD_FIGURE = "boardFigure";
    public static final String BOARD_NOTE = "boardNote";
    public static final String NOTICE = "notice";
    /** A scroll pane that stands for a field: with a field's border. */
    public static final String FIELD = "field";
    /** A field that finds or filters. */
    public static final String FIND = "find";
    /** The one main button of a page. */
    public static final String MAIN = "main";

    public static final String LINK = "link";

    private Styles() {}

    /** Gives the component its style class and returns it. */
    public static <C extends JComponent> C as(String style, C component) {
        component.putClientProperty(FlatClientProperties.STYLE_CLASS, style);
        return component;
    }
}
