package witnessmark.desktop.shell;

import java.awt.Desktop;

/** What the system itself can ask of the program, on a Mac from its own menu. Elsewhere there is nothing to install. */
final class SystemManners {
    private SystemManners() {}

    static void install(ShellPane pane, Runnable quit) {
        if (!Desktop.isDesktopSupported()) {
            return;
        }
        Desktop desktop = Desktop.getDesktop();
        if (desktop.isSupported(Desktop.Action.APP_ABOUT)) {
            desktop.setAboutHandler(e -> pane.showAbout());
        }
        if (desktop.isSupported(Desktop.Action.APP_QUIT_HANDLER)) {
            desktop.setQuitHandler((e, response) -> {
                quit.run();
                response.performQuit();
            });
        }
    }
}
