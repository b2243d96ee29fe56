package witnessmark.desktop.shell;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.InputMap;
import javax.swing.KeyStroke;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;
import witnessmark.logbook.port.Settings;

/** Theme and size: set up before the first window, changed while it is open, remembered. */
public final class Look {
    private static final String THEME = "look.theme";
    private static final String ZOOM = "look.zoom";
    private static final String ROWS = "look.rows";
    private static final String COMFORTABLE = "comfortable";
    /** Heights of a row of a list, in unscaled pixels: never under 24, so that every row can be hit. */
    private static final int CLOSE_HEIGHT = 24;

    private static final int COMFORTABLE_HEIGHT = 30;
    /** Size of plain text at normal size, in pixels. */
    private static final int BODY = 13;

    private final Settings settings;
    private final List<Runnable> listeners = new ArrayList<>();
    private Theme theme = Theme.SYSTEM;
    private boolean systemDark;
    private int asked = BODY;

    public Look(Settings settings) {
        this.settings = settings;
    }

    /**
     * Fonts, themes, size. To be called once, before any component is made.
     *
     * @param systemIsDark what {@link SystemTheme} found out
     */
    public void install(boolean systemIsDark) {
        systemDark = systemIsDark;
        theme = Theme.named(settings.get(THEME).orElse(""));
        Fonts.install();
        FlatLaf.setGlobalExtraDefaults(null);
        FlatLaf.registerCustomDefaultsSource("themes");
        applyZoom(Zoom.read(settings.get(ZOOM).orElse("")));
        applyRows();
        set();
    }

    public Theme theme() {
        return theme;
    }

    public boolean isDark() {
        return theme == Theme.DARK || (theme == Theme.SYSTEM && systemDark);
    }

    /** Switches at once, all windows open, and remembers it. */
    public void use(Theme wanted) {
        theme = wanted;
        settings.put(THEME, wanted.name());
        switchTo();
    }

    /** The system's theme was asked again. */
    public void systemIsDark(boolean dark) {
        if (dark != systemDark) {
            systemDark = dark;
            switchTo();
        }
    }

    public float zoom() {
        return UIScale.getZoomFactor();
    }

    /** Shows everything at another size, at once, and remembers it. */
    public void zoom(float factor) {
        settings.put(ZOOM, Float.toString(factor));
        applyZoom(factor);
        set();
        FlatLaf.updateUI();
        listeners.forEach(Runnable::run);
    }

    /** Whether rows of lists are higher: for cold hands and gloves. */
    public boolean comfortableRows() {
        return settings.get(ROWS).orElse("").equals(COMFORTABLE);
    }

    /** Makes the rows of every list higher or closer, at once, and remembers it. */
    public void comfortableRows(boolean yes) {
        settings.put(ROWS, yes ? COMFORTABLE : "close");
        applyRows();
        FlatLaf.updateUI();
        listeners.forEach(Runnable::run);
    }

    private void applyRows() {
        UIManager.put("Table.rowHeight", comfortableRows() ? COMFORTABLE_HEIGHT : CLOSE_HEIGHT);
    }

    public void larger() {
        zoom(Zoom.larger(zoom()));
    }

    public void smaller() {
        zoom(Zoom.smaller(zoom()));
    }

    /** Told after theme or size changed: charts take their colours again. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void switchTo() {
        boolean isNow = FlatLaf.isLafDark();
        if (isNow != isDark()) {
            set();
            FlatLaf.updateUI();
        }
        listeners.forEach(Runnable::run);
    }

    private void set() {
        try {
            UIManager.setLookAndFeel(laf());
            holdBodySize();
            pressWithEnter();
        } catch (UnsupportedLookAndFeelException e) {
            throw new IllegalStateException("the bundled look is supported everywhere", e);
        }
    }

    /** MigLayout follows by itself: it asks the look for its scale. */
    private static void applyZoom(float factor) {
        UIScale.setZoomFactor(factor);
    }

    /**
     * Nothing is shown smaller than the body size. The look takes its size from the system's own font, and a system
     * without a desktop names a very small one: then a size is asked for that makes up for it.
     */
    private void holdBodySize() throws UnsupportedLookAndFeelException {
        Font font = UIManager.getFont("defaultFont");
        int unzoomed = UIManager.getInt("defaultFont.unzoomedSize");
        int size = unzoomed > 0 ? unzoomed : font.getSize();
        if (size < BODY && asked == BODY) {
            asked = Math.round((float) BODY * BODY / size);
            FlatLaf.setGlobalExtraDefaults(Map.of("defaultFont", Integer.toString(asked)));
            UIManager.setLookAndFeel(laf());
        }
    }

    /** The button in hand is pressed with Enter as well as with Space, as people expect of it. */
    private static void pressWithEnter() {
        InputMap keys = Objects.requireNonNull(
                (InputMap) UIManager.getLookAndFeelDefaults().get("Button.focusInputMap"));
        keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, false), "pressed");
        keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
    }

    private LookAndFeel laf() {
        return isDark() ? new FlatDarkLaf() : new FlatLightLaf();
    }
}
