package witnessmark.desktop.shell;

import java.awt.Dimension;
import java.awt.Frame;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import witnessmark.logbook.port.Settings;

/** Where the window stood and what it showed, from one start to the next. */
final class WindowState {
    static final Dimension SMALLEST = new Dimension(960, 600);

    private static final Dimension FIRST = new Dimension(1366, 768);
    private static final int TITLE_BAR = 30;
    private static final int ENOUGH = 80;
    private static final String BOUNDS = "window.bounds";
    private static final String MAXIMISED = "window.maximised";
    private static final String PLACE = "window.place";

    private final Settings settings;

    WindowState(Settings settings) {
        this.settings = settings;
    }

    void restore(JFrame frame) {
        frame.setBounds(place(settings.get(BOUNDS).flatMap(WindowState::read), screens()));
        if (settings.get(MAXIMISED).orElse("").equals("true")) {
            frame.setExtendedState(Frame.MAXIMIZED_BOTH);
        }
    }

    Optional<String> page() {
        return settings.get(PLACE);
    }

    void save(JFrame frame, String page) {
        boolean maximised = (frame.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
        settings.put(MAXIMISED, Boolean.toString(maximised));
        if (!maximised) {
            Rectangle at = frame.getBounds();
            settings.put(BOUNDS, at.x + "," + at.y + "," + at.width + "," + at.height);
        }
        settings.put(PLACE, page);
    }

    /**
     * Where the window is to stand: where it stood, if enough of its title bar is on some screen to be seized there;
     * otherwise in the middle of the first screen, no larger than that.
     */
    static Rectangle place(Optional<Rectangle> wanted, List<Rectangle> screens) {
        if (wanted.isPresent()) {
            Rectangle at = wanted.get();
            Rectangle bar = new Rectangle(at.x, at.y, at.width, TITLE_BAR);
            for (Rectangle screen : screens) {
                Rectangle seen = bar.intersection(screen);
                if (seen.width >= ENOUGH && seen.height >= TITLE_BAR / 2) {
                    return at;
                }
            }
        }
        Dimension size = wanted.map(Rectangle::getSize).orElse(FIRST);
        Rectangle main = screens.isEmpty() ? new Rectangle(FIRST) : screens.get(0);
        int width = Math.min(Math.max(size.width, SMALLEST.width), main.width);
        int height = Math.min(Math.max(size.height, SMALLEST.height), main.height);
        return new Rectangle(main.x + (main.width - width) / 2, main.y + (main.height - height) / 2, width, height);
    }

    /** Bounds as written by {@link #save}; nothing for anything else. */
    static Optional<Rectangle> read(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 4) {
            return Optional.empty();
        }
        try {
            Rectangle at = new Rectangle(
                    Integer.parseInt(parts[0]),
                    Integer.parseInt(parts[1]),
                    Integer.parseInt(parts[2]),
                    Integer.parseInt(parts[3]));
            return at.width < 1 || at.height < 1 ? Optional.empty() : Optional.of(at);
        } catch (NumberFormatException unreadable) {
            return Optional.empty();
        }
    }

    private static List<Rectangle> screens() {
        GraphicsEnvironment environment = GraphicsEnvironment.getLocalGraphicsEnvironment();
        List<Rectangle> all = new ArrayList<>();
        all.add(environment.getDefaultScreenDevice().getDefaultConfiguration().getBounds());
        for (GraphicsDevice device : environment.getScreenDevices()) {
            GraphicsConfiguration configuration = device.getDefaultConfiguration();
            all.add(configuration.getBounds());
        }
        return all;
    }
}
