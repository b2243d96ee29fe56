package witnessmark.desktop.shell;

import com.formdev.flatlaf.extras.FlatSVGUtils;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.KeyStroke;
import javax.swing.WindowConstants;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.task.Tasks;

/** The one window: menu bar, what {@link ShellPane} shows, and where it stood last time. */
public final class ShellFrame extends JFrame {
    private final transient MenuLetters letters = new MenuLetters();
    private static final Duration BETWEEN_ASKING = Duration.ofSeconds(2);

    private final transient WindowState state;
    private final transient ShellContext context;
    private final ShellPane pane;
    private final transient HelpFirst helpFirst;
    private final transient EarlyKeys early;
    private transient Instant asked = Instant.EPOCH;

    /** @throws java.awt.HeadlessException where there is no display */
    public ShellFrame(ShellContext context, List<Place> places, List<Command> more, List<Findable> sources) {
        super(context.texts().get("shell.program"));
        this.context = context;
        this.state = new WindowState(context.settings());
        this.pane = new ShellPane(context, places, more, sources);
        this.helpFirst = new HelpFirst(pane::closeHelp);
        this.early = new EarlyKeys(this, context.tasks(), pane::sayOfEarlyKeys);
        setIconImages(FlatSVGUtils.createWindowIconImages("/icons/app.svg"));
        setJMenuBar(pane.menuBar());
        setContentPane(pane);
        setMinimumSize(WindowState.SMALLEST);
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        bindMoreKeys();
        SystemManners.install(pane, context.quit());
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent e) {
                pane.focusPage();
                early.opened();
            }

            @Override
            public void windowClosing(WindowEvent e) {
                context.quit().run();
            }

            @Override
            public void windowActivated(WindowEvent e) {
                askSystem();
            }
        });
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(letters);
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(helpFirst);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(letters);
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(helpFirst);
        early.end();
        super.removeNotify();
    }

    /** Says what takes files that are dropped on the window. */
    public void onFiles(Consumer<List<Path>> taken) {
        getRootPane().setTransferHandler(new FilesDropped(taken));
    }

    public ShellPane pane() {
        return pane;
    }

    /** Shows the window where it stood, on the page it showed; on the given place the first time. */
    public void open(PlaceId first) {
        state.restore(this);
        pane.go(state.page().map(page -> new Visit(page, null)).orElse(Visit.to(first)));
        if (pane.current().isEmpty()) {
            pane.go(Visit.to(first));
        }
        pane.recountElsewhere();
        early.begin();
        setVisible(true);
    }

    /** Remembers where the window stands. To be called before the program ends. */
    public void keepState() {
        state.save(this, pane.current().map(Visit::page).orElse(""));
    }

    private void askSystem() {
        Tasks tasks = context.tasks();
        Instant now = Instant.now();
        if (Duration.between(asked, now).compareTo(BETWEEN_ASKING) >= 0) {
            asked = now;
            Look look = context.look();
            tasks.run(
                    context.texts().get("shell.look.asking"),
                    () -> new SystemTheme().isDark(),
                    look::systemIsDark,
                    failure -> look.systemIsDark(false));
        }
    }

    /** Keys that do the same as a command on other keyboards: the number pad, and plus without Shift. */
    private void bindMoreKeys() {
        Look look = context.look();
        bind(Keys.menu(KeyEvent.VK_EQUALS), "wm-larger", look::larger);
        bind(Keys.menuShift(KeyEvent.VK_EQUALS), "wm-larger", look::larger);
        bind(Keys.menu(KeyEvent.VK_ADD), "wm-larger", look::larger);
        bind(Keys.menu(KeyEvent.VK_SUBTRACT), "wm-smaller", look::smaller);
        bind(Keys.menu(KeyEvent.VK_NUMPAD0), "wm-normal", () -> look.zoom(1.0f));
    }

    private void bind(KeyStroke key, String name, Runnable work) {
        FormKeys.bindInWindow(getRootPane(), key, name, work);
    }
}
