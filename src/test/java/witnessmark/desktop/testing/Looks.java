package witnessmark.desktop.testing;

import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import javax.swing.UIManager;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.Theme;

/** Themes and sizes for tests. */
public final class Looks {
    private Looks() {}

    /** The light theme at normal size, with settings of its own. */
    public static Look light() {
        return look(Theme.LIGHT, 1.0f);
    }

    /** As {@link #light()}, left as it is where it is so already: the look takes its time to read itself in. */
    static void atLeastLight() {
        boolean light = UIManager.getLookAndFeel() instanceof FlatLightLaf
                && UIScale.getZoomFactor() == 1
                && UIManager.getInt("Table.rowHeight") == 24;
        if (!light) {
            light();
        }
    }

    public static Look dark() {
        return look(Theme.DARK, 1.0f);
    }

    /** @param zoom 1.0 for normal, up to 2.0 */
    public static Look look(Theme theme, float zoom) {
        MemorySettings settings = new MemorySettings();
        settings.put("look.theme", theme.name());
        settings.put("look.zoom", Float.toString(zoom));
        Look look = new Look(settings);
        look.install(false);
        return look;
    }
}
