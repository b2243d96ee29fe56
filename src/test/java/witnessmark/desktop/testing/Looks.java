package witnessmark.desktop.testing;

import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.Theme;

/** Themes and sizes for tests. */
public final class Looks {
    private Looks() {}

    /** The light theme at normal size, with settings of its own. */
    public static Look light() {
        return look(Theme.LIGHT, 1.0f);
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
